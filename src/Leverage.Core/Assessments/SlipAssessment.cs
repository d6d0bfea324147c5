using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What the question "when does it come off" is asked of.</summary>
public sealed record SlipSetup
{
    /// <summary>The bar, its diameter known.</summary>
    public required Bar Bar { get; init; }

    /// <summary>The tube.</summary>
    public required Tube Tube { get; init; }

    /// <summary>How far it goes on.</summary>
    public required Length Overlap { get; init; }

    /// <summary>The person, for the grip and the force.</summary>
    public required Hands Hands { get; init; }

    /// <summary>The surface of the bar that the tube sits on.</summary>
    public required HandleSurface Surface { get; init; }

    /// <summary>State of the joint, which says what torque is left once the nut turns.</summary>
    public required Condition Condition { get; init; }

    /// <summary>The nut it pulls on; null where nothing is said of it.</summary>
    public Fastener? Fastener { get; init; }

    /// <summary>Where the pull begins, past square in the direction it moves.</summary>
    public Angle StartPastSquare { get; init; }

    /// <summary>Where the swing ends, past square in the direction it moves.</summary>
    public required Angle PastSquare { get; init; }

    /// <summary>Turn of the nut from where the pull begins to where the swing ends, rad.</summary>
    public double TurnRad => Math.Max(0, (PastSquare - StartPastSquare).Radians);

    /// <summary>Lever's plane to the nut's, if said.</summary>
    public Length? StandOff { get; init; }

    /// <summary>How deep the socket sits on the nut, if said.</summary>
    public Length? Engagement { get; init; }

    /// <summary>Everything taken for granted.</summary>
    public required IReadOnlyList<Assumption> Assumed { get; init; }
}

/// <summary>One overlap of the table: how it jams and what it does to the tube.</summary>
/// <param name="OverlapMm">c, mm.</param>
/// <param name="HandToTipMm">a, mm.</param>
/// <param name="TiltRad">δ, rad.</param>
/// <param name="Checked">Angles at the surface's low friction.</param>
/// <param name="JamRatio">(2a + c)/c: force of the two contacts over the hands'.</param>
/// <param name="BendsAtN">Force of the hands at which the tube bends at the tip, N.</param>
/// <param name="TipDentsAtN">Force of the hands at which the tip dents it, N; infinite where the wall is not known.</param>
/// <param name="MouthDentsAtN">Force of the hands at which the mouth dents, N; infinite where the wall is not known.</param>
public readonly record struct SlipRow(
    double OverlapMm,
    double HandToTipMm,
    double TiltRad,
    SlipAngles Checked,
    double JamRatio,
    double BendsAtN,
    double TipDentsAtN,
    double MouthDentsAtN)
{
    /// <summary>Nut's axis to middle of the hands, mm.</summary>
    public required double ReachMm { get; init; }

    /// <summary>Whether the tube takes what the nut or the hands ask of it at most there.</summary>
    public required bool TakesStrongPull { get; init; }

    /// <summary>Lowest force of the hands at which the tube breaks, N.</summary>
    public double GivesAtN => Math.Min(BendsAtN, Math.Min(TipDentsAtN, MouthDentsAtN));
}

/// <summary>Last safe angle against overlap for one state of the surface.</summary>
/// <param name="State">Name of the state: dry, oily, greasy.</param>
/// <param name="Friction">Friction the check uses.</param>
/// <param name="HeldRad">Last safe angle at each overlap, rad.</param>
public sealed record SlipCurve(string State, double Friction, IReadOnlyList<double> HeldRad);

/// <summary>When a slipped-over tube comes off, and why.</summary>
public sealed record SlipAssessment
{
    /// <summary>What was asked of.</summary>
    public required SlipSetup Setup { get; init; }

    /// <summary>The row of the given overlap.</summary>
    public required SlipRow Here { get; init; }

    /// <summary>Angles at the given overlap and typical friction.</summary>
    public required SlipAngles Typical { get; init; }

    /// <summary>Last safe angle of a close-fitting straight bar of the same lengths, rad: what the fit costs.</summary>
    public required double SnugRad { get; init; }

    /// <summary>Play over the bar's diameter.</summary>
    public required double PlayShare { get; init; }

    /// <summary>What the hands give.</summary>
    public required HandFigures Hand { get; init; }

    /// <summary>The likely force of the hands, N.</summary>
    public double HandN => Hand.Quantile(0.5);

    /// <summary>The strong pull, N: 1 in 10 is stronger, before the nut turns where the nut is known.</summary>
    public required double StrongN { get; init; }

    /// <summary>Share of the torque that is left at the end of the swing.</summary>
    public required double EndShare { get; init; }

    /// <summary>Turn after which all clamp is gone, rad; null where the nut is not known.</summary>
    public double? ClampGoneRad { get; init; }

    /// <summary>Chance that it slides off as the pull begins.</summary>
    public required double SlidesOff { get; init; }

    /// <summary>Of the other pulls, the share in which it slides off by the end of the swing as the nut turns.</summary>
    public required double SlidesAsItTurns { get; init; }

    /// <summary>The verdict and what it rests on; the tools and the nut are not judged here.</summary>
    public required Ruling Ruling { get; init; }

    /// <summary>Whether to pull on this tube.</summary>
    public Verdict Verdict => Ruling.Verdict;

    /// <summary>Rows over overlaps, short to long.</summary>
    public required IReadOnlyList<SlipRow> Rows { get; init; }

    /// <summary>Curves over the same overlaps for dry, oily and greasy handles.</summary>
    public required IReadOnlyList<SlipCurve> Curves { get; init; }

    /// <summary>The overlap of widest safe angle among those the tube stands at the strong pull.</summary>
    public required SlipRow Best { get; init; }

    /// <summary>The shortest overlap at which the tube takes a strong pull and stays on where the pull begins; null where none does.</summary>
    public SlipRow? Least { get; init; }

    /// <summary>Stand-off over engagement of the socket; null where not said.</summary>
    public double? TippingRatio { get; init; }

    /// <summary>Pull along the tube that a close-fitting straight bar of the same lengths holds, N.</summary>
    /// <param name="squareN">Force of the hands square to the tube, N.</param>
    /// <returns>The pull, N.</returns>
    public double SnugHoldsN(double squareN) => squareN * Math.Tan(SnugRad);

    /// <summary>Whether it slides off even at a square pull: a prediction, not yet tested.</summary>
    public bool SlidesAtSquare => Here.Checked.HeldRad <= 0;

    /// <summary>Whether all clamp is gone before the swing ends: then only rust holds the nut, and only the grip the tube.</summary>
    public bool ClampGone => ClampGoneRad <= Setup.TurnRad;

    /// <summary>The part of the tube that breaks first at an overlap, and its limit as torque at the nut.</summary>
    /// <param name="row">The overlap.</param>
    /// <returns>The part.</returns>
    public LinkLimit WeakestAt(SlipRow row)
    {
        TubeLimits limits = TubeLimits.Of(Setup.Tube);
        LinkKind kind = row.GivesAtN == row.BendsAtN ? LinkKind.TubeBending
            : row.GivesAtN == row.TipDentsAtN ? LinkKind.TubeDentTip : LinkKind.TubeDentMouth;
        return LinkLimit.Likely(kind, row.GivesAtN * row.ReachMm, limits.Source, !limits.Least);
    }
}
