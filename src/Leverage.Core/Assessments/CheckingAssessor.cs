using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Requests;
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
    public static CheckingAssessment Assess(JointSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var (grade, friction, _, joint) = JointAssessor.Basis(setup);
        JointAssessment result = JointAssessor.Of(setup, setup.Quoted);
        bool unfit = setup.Request.Then is null && result.Quote is { } quote && quote != TorqueVerdict.Fits;
        return new CheckingAssessment
        {
            Setup = setup,
            Result = result,
            Usual = Torque.FromNewtonMeters(TighteningRule.Set(joint, friction, UsualValues.YieldShare).TorqueNmm / 1000),
            YieldsBelowFriction = FrictionAtYield(joint, setup.Quoted.NewtonMillimeters),
            ReadsBetterAs = unfit ? BetterUnit(joint, setup.Quoted, friction) : null,
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
        return Excess(TighteningRule.LeastFriction) > 0 && Excess(TighteningRule.MostFriction) < 0
            ? Brent.FindRoot(Excess, TighteningRule.LeastFriction, TighteningRule.MostFriction, 1e-9)
            : null;
    }

    private static TorqueUnit? BetterUnit(BoltedJoint joint, Torque quoted, FrictionRange friction)
    {
        foreach (TorqueUnit unit in Readings)
        {
            Torque read = Torque.From(quoted.Value, unit);
            if (unit != quoted.Unit && TighteningRule.Judge(Shares(joint, read, friction)) == TorqueVerdict.Fits)
            {
                return unit;
            }
        }

        return null;
    }

    private static bool Suits(JointSetup setup, ScrewThread thread, Grade grade, FrictionRange friction) =>
        GradeCatalog.BoltsFor(thread).FirstOrDefault(other => other.Name == grade.Name) is { } same
            && Fits(setup, thread, same, friction);

    private static bool Fits(JointSetup setup, ScrewThread thread, Grade grade, FrictionRange friction)
    {
        FaceRing? face = thread == setup.Thread ? setup.Face : null;
        var joint = BoltedJoint.Of(thread, JointAssessor.Bearing(thread, face).Diameter.Millimeters, grade.YieldMpa);
        return TighteningRule.Judge(Shares(joint, setup.Quoted, friction)) == TorqueVerdict.Fits;
    }

    private static ShareRange Shares(BoltedJoint joint, Torque torque, FrictionRange friction) =>
        JointAssessor.Preloads(joint, torque, friction).YieldShare;
}
