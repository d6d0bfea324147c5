using Leverage.Probability;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using Leverage.Preload;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Assessments;

/// <summary>A torque somebody quotes for a joint.</summary>
public sealed record CheckingSetup
{
    /// <summary>The torque as quoted, in the unit it was quoted in.</summary>
    public required Torque Quoted { get; init; }

    /// <summary>The thread.</summary>
    public required ScrewThread Thread { get; init; }

    /// <summary>Strength of the bolt or stud; null for the usual one.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Friction of thread and face; null for 0.14 with its usual scatter.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>The face the head or nut turns on; null for the tables' face.</summary>
    public FaceRing? Face { get; init; }
}

/// <summary>How a quoted torque sits with a joint.</summary>
public enum QuoteVerdict
{
    /// <summary>It tightens the bolt well and does not yield it.</summary>
    Fits,

    /// <summary>It leaves the bolt loose.</summary>
    Low,

    /// <summary>It takes the bolt near yield or past it, at the latest when friction is low.</summary>
    High,
}

/// <summary>Whether a quoted torque is believable.</summary>
public sealed record CheckingAssessment
{
    /// <summary>What was asked.</summary>
    public required CheckingSetup Setup { get; init; }

    /// <summary>The grade it was checked for.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The friction it was checked for.</summary>
    public required FrictionRange Friction { get; init; }

    /// <summary>The bearing face it was checked for.</summary>
    public required BearingBasis Bearing { get; init; }

    /// <summary>What the torque buys.</summary>
    public required InverseTightening Buys { get; init; }

    /// <summary>How it sits.</summary>
    public required QuoteVerdict Quote { get; init; }

    /// <summary>Torque that tightens this joint to 90 % of yield at the likely friction.</summary>
    public required Torque Usual { get; init; }

    /// <summary>Friction below which the torque yields the bolt; null where none of <see cref="QuoteRule"/>'s range does.</summary>
    public required double? YieldsBelowFriction { get; init; }

    /// <summary>The unit in which the same number fits where the quoted one does not; null where none.</summary>
    public required TorqueUnit? ReadsBetterAs { get; init; }

    /// <summary>Grades at this thread that the torque fits.</summary>
    public required IReadOnlyList<Grade> SuitsGrades { get; init; }

    /// <summary>Threads of this grade that the torque fits.</summary>
    public required IReadOnlyList<ScrewThread> SuitsThreads { get; init; }

    /// <summary>Go when it fits, stop when it yields the bolt at the likely friction, else care.</summary>
    public Verdict Verdict => Quote == QuoteVerdict.Fits ? Verdict.Go
        : Buys.YieldShare.Likely > 1 ? Verdict.Stop : Verdict.Care;
}

/// <summary>The rule a quoted torque is judged by.</summary>
public static class QuoteRule
{
    /// <summary>Least share of yield at likely friction (judgement: less may work loose).</summary>
    public const double LeastShare = 0.45;

    /// <summary>Largest share of yield at likely friction.</summary>
    public const double MostShare = 0.90;

    /// <summary>Lowest friction looked at: the low end of the slipperiest class (VDI 2230 class A).</summary>
    public const double LeastFriction = 0.04;

    /// <summary>Highest friction looked at: past the driest class.</summary>
    public const double MostFriction = 0.5;

    /// <summary>Judges shares of yield: fits from 0.45 to 0.90 likely, and not past yield at the low friction.</summary>
    /// <param name="share">Shares of yield.</param>
    /// <returns>The verdict.</returns>
    public static QuoteVerdict Judge(ShareRange share) =>
        share.Likely > MostShare || share.High > 1 ? QuoteVerdict.High
        : share.Likely < LeastShare ? QuoteVerdict.Low
        : QuoteVerdict.Fits;
}
