using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Levers;
using Leverage.Preload;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Threads;
using Leverage.Workshop.Chest;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Workshop.Jobs;

/// <summary>Plans how each fastener goes back.</summary>
internal sealed class RefitPlanner
{
    /// <summary>Distances from the nut at which a mass can be hung sensibly, mm (judgement).</summary>
    private const double NearestMm = 100;
    private const double FarthestMm = 1500;

    /// <summary>Torque below which a screw is turned home by feel where no wrench goes so low, N·m (judgement).</summary>
    internal const double SmallestNm = 12;

    /// <summary>Torque up to which a group goes up in one round, N·m (judgement).</summary>
    private const double StagedNm = 20;

    private readonly Job _job;

    internal RefitPlanner(Job job) => _job = job;

    internal PlannedTightening Of(JobFastener fastener)
    {
        FrictionRange friction = fastener.Lubricant is { } lubricant
            ? FrictionRange.Lubricated(lubricant)
            : FrictionRange.Unknown;
        Torque torque = fastener.BookTorque ?? WorkedOut(fastener.Thread!, GradeOf(fastener), friction);
        WrenchChoice? wrench = WrenchFor(torque, fastener.Adapter);
        bool group = fastener is { Count: > 1, Pattern: not TighteningPattern.None, Adjustable: false };
        return new PlannedTightening
        {
            Fastener = fastener,
            Torque = torque,
            Basis = fastener.BookTorque is null ? TorqueBasis.WorkedOut : TorqueBasis.Book,
            Friction = friction,
            Check = Check(fastener, friction),
            Wrench = wrench,
            Hang = wrench is null && HasRoomToHang(fastener) ? Hang(torque, fastener.Room) : null,
            Stages = group && torque.NewtonMeters > StagedNm ? Stages(torque, wrench) : [torque],
            Sequence = group ? TighteningSequence.Of(fastener.Count, fastener.Pattern) : [],
        };
    }

    /// <summary>The torque that tighten would set.</summary>
    private static Torque WorkedOut(ScrewThread thread, Grade grade, FrictionRange friction) => TighteningAssessor.Assess(
        new JointSetup(new TighteningRequest(), thread) { Grade = grade, Friction = friction }).Torque;

    private static Grade GradeOf(JobFastener fastener) => GradeCatalog.Bolt(
        fastener.Grade ?? Place.UsualGrade(fastener.On is { } on ? Place.Named(on) : null, fastener.Thread!), fastener.Thread!);

    private static CheckingAssessment? Check(JobFastener fastener, FrictionRange friction) =>
        fastener is { BookTorque: { } book, Thread: { } thread, Adjustable: false }
            ? CheckingAssessor.Assess(new JointSetup(new TighteningRequest { Torque = book, Then = fastener.Then, Grip = fastener.Grip }, thread)
            {
                Clamped = fastener.Clamped is { } clamped ? ClampedMaterial.Named(clamped) : null,
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

    /// <summary>The rounds, each but the last to a mark the wrench has and within its range.</summary>
    private static Torque[] Stages(Torque torque, WrenchChoice? wrench)
    {
        TorqueUnit unit = (wrench?.Wrench.From ?? torque).Unit;
        double full = torque.As(unit);
        double least = wrench is { } choice ? choice.Wrench.From.As(unit) * full / choice.Setting.As(unit) : 0;
        return
        [
            .. TighteningSequence.Stages.SkipLast(1).Select(share => Marked(full * share)).Where(stage => stage >= least)
                .Select(stage => Torque.From(stage, unit)),
            torque,
        ];
    }

    /// <summary>The nearest mark of a wrench's scale: fives above fifty, ones below (judgement).</summary>
    private static double Marked(double value) => value >= 50 ? 5 * Math.Round(value / 5) : Math.Round(value);

    /// <summary>A weight hangs on a level bar one can stand or kneel beside.</summary>
    private static bool HasRoomToHang(JobFastener fastener) => fastener.Stances.Count == 0
        || fastener.Stances.Any(stance => !Stance.Named(stance).IsCramped);

    /// <summary>The weighed mass, or where it would hang too far out, a person's own.</summary>
    private HungWeight? Hang(Torque torque, Length? room)
    {
        IEnumerable<(Mass Mass, string? Person)> masses = _job.HungMass is { } weighed ? [(weighed, null)] : [];
        foreach (var (mass, person) in masses.Concat(_job.People.Where(p => p.Body is not null).Select(p => (p.Body!.Value, (string?)p.Name))))
        {
            double distance = HangingWeight.Distance(torque.NewtonMillimeters, mass.Kilograms);
            if (distance >= NearestMm && distance <= Math.Min(FarthestMm, room?.Millimeters ?? FarthestMm))
            {
                return new HungWeight(mass, Length.FromMillimeters(distance), person);
            }
        }

        return null;
    }
}
