using Leverage.BreakLoose;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Probability;
using Leverage.Requests;
using Leverage.Threads;
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
        var (grade, _, _, joint) = JointAssessor.Basis(setup);
        JointAssessment result = JointAssessor.Of(setup, setup.Quoted);
        bool unfit = setup.Request.Then is null && result.Quote is { } quote && quote != TorqueVerdict.Fits;
        return new CheckingAssessment
        {
            Setup = setup,
            Result = result,
            Usual = JointAssessor.ToSet(setup, UsualValues.YieldShare).Torque,
            YieldsBelowFriction = FrictionAtYield(joint, setup.Quoted.NewtonMillimeters),
            ReadsBetterAs = unfit ? BetterUnit(setup) : null,
            UsualFor = unfit ? [.. LargeNut.All.Where(row => row.Fits(setup.Thread) && row.IsSetTo(setup.Quoted))] : [],
            SuitsGrades = [.. GradeCatalog.BoltsFor(setup.Thread).Where(other => Fits(setup, setup.Thread, other))],
            SuitsThreads = [.. ThreadCatalog.Family(setup.Thread.Family).Where(other => Suits(setup, other, grade))],
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
            ? Root.Between(TighteningRule.LeastFriction, TighteningRule.MostFriction, Excess)
            : null;
    }

    private static TorqueUnit? BetterUnit(JointSetup setup)
    {
        Torque quoted = setup.Quoted;
        foreach (TorqueUnit unit in Readings)
        {
            if (unit != quoted.Unit && JointAssessor.Of(setup, Torque.From(quoted.Value, unit)).Quote == TorqueVerdict.Fits)
            {
                return unit;
            }
        }

        return null;
    }

    private static bool Suits(JointSetup setup, ScrewThread thread, Grade grade) =>
        GradeCatalog.BoltsFor(thread).FirstOrDefault(other => other.Name == grade.Name) is { } same && Fits(setup, thread, same);

    /// <summary>Whether the torque alone fits another bolt in the same place.</summary>
    private static bool Fits(JointSetup setup, ScrewThread thread, Grade grade) => JointAssessor.Of(
        setup with
        {
            Request = new TighteningRequest(),
            Thread = thread,
            Grade = grade,
            Face = thread == setup.Thread ? setup.Face : null,
        },
        setup.Quoted).Quote == TorqueVerdict.Fits;
}
