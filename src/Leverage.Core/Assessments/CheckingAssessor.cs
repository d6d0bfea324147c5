using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Assessments;

/// <summary>Works out a <see cref="CheckingAssessment"/>.</summary>
public static class CheckingAssessor
{
    private static readonly TorqueUnit[] Readings =
        [TorqueUnit.NewtonMeter, TorqueUnit.PoundForceFoot, TorqueUnit.KilogramForceMeter];

    /// <summary>Checks a quoted torque.</summary>
    /// <param name="setup">The torque and its joint.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">The usual grade has no figures at this size.</exception>
    public static CheckingAssessment Assess(CheckingSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        Grade grade = setup.Grade ?? TighteningSetup.UsualGrade(setup.Thread);
        FrictionRange friction = setup.Friction ?? FrictionRange.About(FrictionRange.Default);
        BearingBasis bearing = TighteningAssessor.Bearing(setup.Thread, setup.Face);
        var joint = BoltedJoint.Of(setup.Thread, bearing.Diameter.Millimeters, grade.YieldMpa);
        InverseTightening buys = TighteningAssessor.Inverse(joint, setup.Quoted, friction);
        QuoteVerdict quote = QuoteRule.Judge(buys.YieldShare);
        double usualNmm = joint.AtYieldShare(TighteningSetup.UsualYieldShare, friction.Likely).TorqueNmm;
        return new CheckingAssessment
        {
            Setup = setup,
            Grade = grade,
            Friction = friction,
            Bearing = bearing,
            Buys = buys,
            Quote = quote,
            Usual = Torque.FromNewtonMeters(usualNmm / 1000),
            YieldsBelowFriction = FrictionAtYield(joint, setup.Quoted.NewtonMillimeters),
            ReadsBetterAs = quote == QuoteVerdict.Fits ? null : BetterUnit(joint, setup.Quoted, friction),
            SuitsGrades = [.. GradeCatalog.BoltsFor(setup.Thread).Where(other => Fits(setup, setup.Thread, other, friction))],
            SuitsThreads = [.. ThreadCatalog.Family(setup.Thread.Family).Where(other => Suits(setup, other, grade, friction))],
        };
    }

    /// <summary>Friction at which a torque just yields the bolt: above it, it holds.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="torqueNmm">T, N·mm.</param>
    /// <returns>The friction, or null where none in the range looked at yields it, or where all do.</returns>
    private static double? FrictionAtYield(BoltedJoint joint, double torqueNmm)
    {
        double Excess(double friction) => joint.AtTorque(torqueNmm, friction).YieldShare - 1;
        return Excess(QuoteRule.LeastFriction) > 0 && Excess(QuoteRule.MostFriction) < 0
            ? Brent.FindRoot(Excess, QuoteRule.LeastFriction, QuoteRule.MostFriction, 1e-9)
            : null;
    }

    private static TorqueUnit? BetterUnit(BoltedJoint joint, Torque quoted, FrictionRange friction)
    {
        foreach (TorqueUnit unit in Readings)
        {
            Torque read = Torque.From(quoted.Value, unit);
            if (unit != quoted.Unit && QuoteRule.Judge(Shares(joint, read, friction)) == QuoteVerdict.Fits)
            {
                return unit;
            }
        }

        return null;
    }

    private static bool Suits(CheckingSetup setup, ScrewThread thread, Grade grade, FrictionRange friction) =>
        GradeCatalog.BoltsFor(thread).FirstOrDefault(other => other.Name == grade.Name) is { } same
            && Fits(setup, thread, same, friction);

    private static bool Fits(CheckingSetup setup, ScrewThread thread, Grade grade, FrictionRange friction)
    {
        FaceRing? face = thread == setup.Thread ? setup.Face : null;
        var joint = BoltedJoint.Of(thread, TighteningAssessor.Bearing(thread, face).Diameter.Millimeters, grade.YieldMpa);
        return QuoteRule.Judge(Shares(joint, setup.Quoted, friction)) == QuoteVerdict.Fits;
    }

    private static ShareRange Shares(BoltedJoint joint, Torque torque, FrictionRange friction) =>
        TighteningAssessor.Inverse(joint, torque, friction).YieldShare;
}
