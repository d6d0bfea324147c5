using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.BreakLoose;
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

    /// <summary>Friction of tube on bar.</summary>
    public required FrictionRange GripFriction { get; init; }

    /// <summary>State of the handle in words.</summary>
    public required string GripWords { get; init; }

    /// <summary>State of the joint, which says what torque is left as it breaks loose.</summary>
    public required Condition Condition { get; init; }

    /// <summary>q, torque once moving over torque to start.</summary>
    public double RunningShare => Condition.RunningShare;

    /// <summary>Lowest angle of the swing, below level.</summary>
    public required Angle PastSquare { get; init; }

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
/// <param name="Checked">Angles at the handle's low friction.</param>
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
    /// <summary>Lowest force of the hands at which the tube gives, N.</summary>
    public double GivesAtN => Math.Min(BendsAtN, Math.Min(TipDentsAtN, MouthDentsAtN));
}

/// <summary>Last safe angle against overlap for one state of the handle.</summary>
/// <param name="State">Name of the state: dry, oily, greasy.</param>
/// <param name="Friction">Friction the check uses.</param>
/// <param name="HeldRad">Last safe angle at each overlap, rad.</param>
public sealed record SlipCurve(string State, double Friction, IReadOnlyList<double> HeldRad);

/// <summary>When a slipped-over extension comes off, and why.</summary>
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

    /// <summary>The likely force of the hands, N.</summary>
    public required double HandN { get; init; }

    /// <summary>Rows over overlaps, short to long.</summary>
    public required IReadOnlyList<SlipRow> Rows { get; init; }

    /// <summary>Curves over the same overlaps for dry, oily and greasy handles.</summary>
    public required IReadOnlyList<SlipCurve> Curves { get; init; }

    /// <summary>The overlap of widest safe angle among those the tube stands at the strong pull.</summary>
    public required SlipRow Best { get; init; }

    /// <summary>Stand-off over engagement of the socket; null where not said.</summary>
    public double? TippingRatio { get; init; }

    /// <summary>Pull along the tube that a close-fitting straight bar of the same lengths holds, N.</summary>
    /// <param name="squareN">Force of the hands square to the tube, N.</param>
    /// <returns>The pull, N.</returns>
    public double SnugHoldsN(double squareN) => squareN * Math.Tan(SnugRad);

    /// <summary>Whether it walks off under a perfectly square pull: a prediction, not yet tested.</summary>
    public bool WalksOff => Here.Checked.Tangent < 0;

    /// <summary>Whether it slides at the lowest angle of the swing while the nut holds.</summary>
    public bool SlidesWhileHeld => Here.Checked.HeldRad < Setup.PastSquare.Radians;

    /// <summary>Whether it slides at the lowest angle of the swing at break-loose.</summary>
    public bool SlidesAtRelease => Here.Checked.ReleaseRad < Setup.PastSquare.Radians;
}
