using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Assessments;

/// <summary>Whether a quoted torque is believable.</summary>
public sealed record CheckingAssessment
{
    /// <summary>What was asked.</summary>
    public required JointSetup Setup { get; init; }

    /// <summary>What the quoted torque, and the turn after it, make of the joint.</summary>
    public required JointAssessment Result { get; init; }

    /// <summary>The torque that would be set here, by the same rule.</summary>
    public required Torque Usual { get; init; }

    /// <summary>Friction below which the torque yields the bolt; null where none of <see cref="TighteningRule"/>'s range does.</summary>
    public required double? YieldsBelowFriction { get; init; }

    /// <summary>The unit in which the same number fits where the quoted one does not; null where none.</summary>
    public required TorqueUnit? ReadsBetterAs { get; init; }

    /// <summary>What is set to about such a torque on this thread though it does not fit the bolt: a hub nut, a plug; none where it fits.</summary>
    public required IReadOnlyList<LargeNut> UsualFor { get; init; }

    /// <summary>Grades at this thread that the torque fits.</summary>
    public required IReadOnlyList<Grade> SuitsGrades { get; init; }

    /// <summary>Threads of this grade that the torque fits.</summary>
    public required IReadOnlyList<ScrewThread> SuitsThreads { get; init; }

    /// <summary>The grade it was checked for.</summary>
    public Grade Grade => Result.Grade;

    /// <summary>The friction it was checked for.</summary>
    public FrictionRange Friction => Result.Friction;

    /// <summary>The bearing face it was checked for.</summary>
    public BearingBasis Bearing => Result.Bearing;

    /// <summary>Preload and share of yield at the end.</summary>
    public PreloadFigures End => Result.End;

    /// <summary>How it sits; null for the nut of an adjustable bearing.</summary>
    public TorqueVerdict? Quote => Result.Quote;

    /// <summary>Whether to use it.</summary>
    public Verdict Verdict => Result.Verdict;
}
