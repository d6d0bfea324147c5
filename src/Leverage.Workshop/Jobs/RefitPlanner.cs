using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using Leverage.Preload;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>Plans how each fastener goes back.</summary>
internal sealed class RefitPlanner
{
    /// <summary>Distances from the nut at which a mass can be hung sensibly, mm (judgement).</summary>
    private const double NearestMm = 100;
    private const double FarthestMm = 1500;
    private readonly Job _job;

    internal RefitPlanner(Job job) => _job = job;

    internal PlannedTightening Of(JobFastener fastener)
    {
        FrictionRange friction = fastener.Lubricant is { } lubricant
            ? FrictionRange.Lubricated(lubricant)
            : FrictionRange.About(FrictionRange.Default);
        Torque torque = fastener.BookTorque ?? WorkedOut(fastener.Thread!, GradeOf(fastener), friction.Likely);
        bool group = fastener is { Count: > 1, Pattern: not TighteningPattern.None };
        return new PlannedTightening
        {
            Fastener = fastener,
            Torque = torque,
            Basis = fastener.BookTorque is null ? TorqueBasis.WorkedOut : TorqueBasis.Book,
            Friction = friction,
            Check = Check(fastener, friction),
            Wrench = WrenchFor(torque, fastener.Adapter),
            Hang = Hang(torque),
            Stages = group ? [.. TighteningSequence.Stages.Select(share => torque * share)] : [torque],
            Sequence = group ? TighteningSequence.Of(fastener.Count, fastener.Pattern) : [],
        };
    }

    /// <summary>Torque that buys 75 % of proof load at the likely friction: the share taken for a joint of unknown torque.</summary>
    private static Torque WorkedOut(ScrewThread thread, Grade grade, double friction)
    {
        double preload = LooseningDefaults.ProofShare * ProofLoad.Force(grade.UsableProofMpa, thread.StressAreaMm2);
        double bearing = TighteningAssessor.Bearing(thread, null).Diameter.Millimeters;
        return Torque.FromNewtonMeters(BoltedJoint.Of(thread, bearing, grade.YieldMpa).AtPreload(preload, friction).TorqueNmm / 1000);
    }

    private static Grade GradeOf(JobFastener fastener) => fastener.Grade is { } grade
        ? GradeCatalog.Bolt(grade, fastener.Thread!)
        : TighteningSetup.UsualGrade(fastener.Thread!);

    private static CheckingAssessment? Check(JobFastener fastener, FrictionRange friction) =>
        fastener is { BookTorque: { } book, Thread: { } thread }
            ? CheckingAssessor.Assess(new CheckingSetup
            {
                Quoted = book,
                Thread = thread,
                Grade = GradeOf(fastener),
                Friction = friction,
            })
            : null;

    /// <summary>Of the wrenches in range the smallest: near the top of its range it repeats best.</summary>
    private WrenchChoice? WrenchFor(Torque torque, Length? adapter) => _job.Chest.TorqueWrenches
        .Select(wrench => new WrenchChoice(wrench, Setting(torque, wrench, adapter), torque * wrench.Accuracy))
        .Where(choice => choice.Setting >= choice.Wrench.From && choice.Setting <= choice.Wrench.To)
        .MinBy(choice => choice.Wrench.To.NewtonMeters);

    private static Torque Setting(Torque torque, TorqueWrench wrench, Length? adapter) => adapter is { } length
        ? Torque.FromNewtonMeters(WrenchAdapter.Setting(
            torque.NewtonMillimeters, wrench.Length.Millimeters, length.Millimeters, 0) / 1000)
        : torque;

    /// <summary>The weighed mass, or where it would hang too far out, a person's own.</summary>
    private HungWeight? Hang(Torque torque)
    {
        IEnumerable<(Mass Mass, string? Person)> masses = _job.HungMass is { } weighed ? [(weighed, null)] : [];
        foreach (var (mass, person) in masses.Concat(_job.People.Where(p => p.Body is not null).Select(p => (p.Body!.Value, (string?)p.Name))))
        {
            double distance = HangingWeight.Distance(torque.NewtonMillimeters, mass.Kilograms);
            if (distance is >= NearestMm and <= FarthestMm)
            {
                return new HungWeight(mass, Length.FromMillimeters(distance), person);
            }
        }

        return null;
    }
}
