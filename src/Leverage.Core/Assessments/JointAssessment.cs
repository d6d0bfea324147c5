using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What a torque, or a torque and then a turn, makes of a joint: the half that setting and judging share.</summary>
public sealed record JointAssessment
{
    /// <summary>The joint.</summary>
    public required JointSetup Setup { get; init; }

    /// <summary>The grade it was worked out for.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The friction it was worked out for.</summary>
    public required FrictionRange Friction { get; init; }

    /// <summary>Db, mean diameter of the bearing face, and where it comes from.</summary>
    public required BearingBasis Bearing { get; init; }

    /// <summary>The torque; of the first stage where a turn follows.</summary>
    public required Torque Torque { get; init; }

    /// <summary>Preload and share of yield after that torque.</summary>
    public required PreloadFigures FirstStage { get; init; }

    /// <summary>Preload and share of yield at the end; no preload is above what yields the bolt.</summary>
    public required PreloadFigures End { get; init; }

    /// <summary>What the turn does; null for none.</summary>
    public AngleFigures? Angle { get; init; }

    /// <summary>What it is tightened with.</summary>
    public required TighteningMethod Method { get; init; }

    /// <summary>What the way to a castle nut's next slot adds; null for another nut.</summary>
    public CastleFigures? Castle { get; init; }

    /// <summary>Whether the tapped hole stands it, if one was given.</summary>
    public StripAssessment? Strip { get; init; }

    /// <summary>Most preload, at the low friction: past yield what the torque would make, at most what breaks the bolt.</summary>
    public required Force MostPreload { get; init; }

    /// <summary>Strip load over the most preload; below 1 the thread strips; null without a tapped hole.</summary>
    public double? StripMargin => Strip is { } strip ? strip.StripLoad / MostPreload : null;

    /// <summary>Torque that twists the bolt off, at the low and at the likely friction.</summary>
    public required (Torque AtLow, Torque Likely) Breaking { get; init; }

    /// <summary>Whether the turn stretches the bolt until it breaks.</summary>
    public bool TurnBreaks => Angle?.OfBreaking >= 1;

    /// <summary>Whether bolt and thread last at the likely friction: else no preload is left.</summary>
    public bool Holds => Torque < Breaking.Likely && !TurnBreaks && !(Strip?.StripLoad < End.Likely);

    /// <summary>Torque that loosens it again at the same friction.</summary>
    public required Torque Loosening { get; init; }

    /// <summary>How it sits; null for the nut of an adjustable bearing, which is not judged.</summary>
    public TorqueVerdict? Quote { get; init; }

    /// <summary>Everything taken for granted.</summary>
    public required IReadOnlyList<Assumption> Assumed { get; init; }

    /// <summary>Likely preload once the joint has settled: least and most.</summary>
    public (Force Least, Force Most) Settled =>
        (End.Likely * SettledPreload.Left.Least, End.Likely * SettledPreload.Left.Most);

    /// <summary>What wants care though the torque itself fits.</summary>
    public IReadOnlyList<JointCaution> Cautions =>
    [
        .. Method.IsWrench || End.YieldShare.Likely * (1 + Method.High) <= TighteningRule.MostAtLow ? (JointCaution[])[] : [JointCaution.Scatter],
        .. Setup.Request.RoughThread ? (JointCaution[])[JointCaution.RoughThread] : [],
        .. Grade.IsStainless && !(Setup.Request.Lubrication is { } named && FrictionRange.IsPaste(named)) ? (JointCaution[])[JointCaution.Galls] : [],
        .. Castle is { YieldShare: > 1 } ? (JointCaution[])[JointCaution.NextSlot] : [],
    ];

    /// <summary>
    /// Stop when a torque alone yields the bolt at the likely friction, a turn breaks it, or the thread strips under the preload
    /// of the low friction; care when it does not fit, when a turn yields the bolt, when the thread strips before the bolt breaks, or for a caution.
    /// </summary>
    public Verdict Verdict =>
        StripMargin < 1 || Quote == TorqueVerdict.Breaks || TighteningRule.Judge(FirstStage.YieldShare) == TorqueVerdict.Yields && Quote is not null ? Verdict.Stop
        : Quote is null ? Verdict.NotJudged
        : Quote != TorqueVerdict.Fits || Strip is { } strip && strip.StripLoad < strip.BreakLoad || Cautions.Count > 0 ? Verdict.Care
        : Verdict.Go;
}

/// <summary>What wants care though the torque itself fits.</summary>
public enum JointCaution
{
    /// <summary>The scatter of the way of tightening takes the clamp past yield; a torque wrench's is the friction's, judged already.</summary>
    Scatter,

    /// <summary>The thread is dirty, rusty or damaged.</summary>
    RoughThread,

    /// <summary>A stainless thread without paste.</summary>
    Galls,

    /// <summary>The way to a castle nut's next slot can yield the bolt.</summary>
    NextSlot,
}

/// <summary>Preload and share of yield; low is the least preload, at the high friction.</summary>
/// <param name="Low">At the high friction.</param>
/// <param name="Likely">At the likely friction.</param>
/// <param name="High">At the low friction.</param>
/// <param name="YieldShare">Shares of yield in the same order; above 1 the bolt has yielded.</param>
public sealed record PreloadFigures(Force Low, Force Likely, Force High, ShareRange YieldShare);

/// <summary>A share of yield by the size of the share: low is at high friction, high at low friction.</summary>
/// <param name="Low">At the high friction.</param>
/// <param name="Likely">At the likely friction.</param>
/// <param name="High">At the low friction.</param>
public readonly record struct ShareRange(double Low, double Likely, double High);

/// <summary>What the turn after the first torque does, at the likely snug.</summary>
/// <param name="Turn">The whole turn.</param>
/// <param name="Elastic">The part of it before yield.</param>
/// <param name="Preload">Preload at its end.</param>
/// <param name="Yields">Whether the bolt yields.</param>
/// <param name="Stretch">Lasting stretch; 0 while elastic.</param>
/// <param name="StretchShare">That over the length of bolt in the grip.</param>
/// <param name="Grip">The grip it was worked out for.</param>
/// <param name="BreaksAt">Lasting stretch at which a bolt of the grade breaks; null where that is not known.</param>
public sealed record AngleFigures(
    Angle Turn, Angle Elastic, Force Preload, bool Yields, Length Stretch, double StretchShare, Length Grip, StretchLimit? BreaksAt)
{
    /// <summary>Share of the stretch at which it breaks; null where that is not known.</summary>
    public double? OfBreaking => Stretch / BreaksAt?.Stretch;
}

/// <summary>The way from one slot of a castle nut to the next.</summary>
/// <param name="Slots">How many slots.</param>
/// <param name="Step">The turn from one to the next.</param>
/// <param name="Adds">The most preload that way adds.</param>
/// <param name="YieldShare">Largest share of yield at the likely friction with all of it.</param>
public sealed record CastleFigures(int Slots, Angle Step, Force Adds, double YieldShare);

/// <summary>Where the diameter of the bearing face comes from.</summary>
public enum BearingSource
{
    /// <summary>From the washer face and hole of the tables.</summary>
    Tables,

    /// <summary>From the washer face and hole given.</summary>
    Given,

    /// <summary>Taken as 1.25 of the nominal diameter.</summary>
    Assumed,
}

/// <summary>The mean diameter of the bearing face.</summary>
/// <param name="Diameter">Db.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct BearingBasis(Length Diameter, BearingSource Source);
