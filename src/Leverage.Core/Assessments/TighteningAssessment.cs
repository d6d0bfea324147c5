using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What torque a thread takes, and what preload it buys.</summary>
public sealed record TighteningAssessment
{
    /// <summary>What was asked.</summary>
    public required TighteningSetup Setup { get; init; }

    /// <summary>The grade it was worked out for.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The friction it was worked out for.</summary>
    public required FrictionRange Friction { get; init; }

    /// <summary>Db, mean diameter of the bearing face, and where it comes from.</summary>
    public required BearingBasis Bearing { get; init; }

    /// <summary>Preload at the wanted share of yield.</summary>
    public required Force Preload { get; init; }

    /// <summary>Torque that buys it at the likely friction.</summary>
    public required Torque Torque { get; init; }

    /// <summary>Torque that buys the same preload at the low friction.</summary>
    public required Torque TorqueLow { get; init; }

    /// <summary>Torque that buys the same preload at the high friction.</summary>
    public required Torque TorqueHigh { get; init; }

    /// <summary>Where the torque goes.</summary>
    public required TorqueSplit Split { get; init; }

    /// <summary>K = T/(F·d).</summary>
    public required double NutFactor { get; init; }

    /// <summary>Share of yield if this torque meets the low friction: above 1 the bolt has yielded.</summary>
    public required double YieldShareAtLowFriction { get; init; }

    /// <summary>Torque that undoes it at the same preload and friction.</summary>
    public required Torque Loosening { get; init; }

    /// <summary>Preload and share of yield of the torque asked about, if one was.</summary>
    public InverseTightening? Inverse { get; init; }

    /// <summary>Where to hang the mass, if one was given.</summary>
    public Length? HangAt { get; init; }

    /// <summary>What to set on the wrench, if an adapter was given.</summary>
    public Torque? AdapterSetting { get; init; }

    /// <summary>Whether the tapped hole stands it, if one was given.</summary>
    public StripAssessment? Strip { get; init; }

    /// <summary>The torque that hung weight and adapter aim at: the one asked about, else the one worked out.</summary>
    public Torque Target => Setup.Torque ?? Torque;

    /// <summary>As, stress area.</summary>
    public Area StressArea => Area.FromSquareMillimeters(Setup.Thread.StressAreaMm2);

    /// <summary>d2, pitch diameter.</summary>
    public Length PitchDiameter => Length.FromMillimeters(Setup.Thread.PitchDiameterMm);

    /// <summary>Preload aimed at: of the torque asked about at likely friction, else the one worked out.</summary>
    public Force Aim => Inverse?.PreloadLikely ?? Preload;

    /// <summary>
    /// Stop when the torque asked about yields the bolt at likely friction, or the thread strips under the preload aimed
    /// at; care when that torque yields it at low friction, or the thread strips before the bolt breaks.
    /// </summary>
    public Verdict Verdict =>
        Inverse is { YieldShare.Likely: > 1 } || Strip is { Safety: < 1 } ? Verdict.Stop
        : Inverse is { YieldShare.High: > 1 } || Strip is { } strip && strip.StripLoad < strip.BreakLoad ? Verdict.Care
        : Verdict.Go;
}

/// <summary>Where a tightening torque goes.</summary>
/// <param name="Pitch">What stretches the bolt, F·P/2π.</param>
/// <param name="Thread">Friction in the thread.</param>
/// <param name="Face">Friction under the head or nut.</param>
public sealed record TorqueSplit(Torque Pitch, Torque Thread, Torque Face);

/// <summary>What a torque buys; low is at high friction, high at low friction.</summary>
/// <param name="Torque">The torque.</param>
/// <param name="PreloadLow">Preload at the high friction.</param>
/// <param name="PreloadLikely">Preload at the likely friction.</param>
/// <param name="PreloadHigh">Preload at the low friction.</param>
/// <param name="YieldShare">Shares of yield in the same order.</param>
public sealed record InverseTightening(
    Torque Torque, Force PreloadLow, Force PreloadLikely, Force PreloadHigh, ShareRange YieldShare);

/// <summary>A share of yield by the size of the share: low is at high friction, high at low friction.</summary>
/// <param name="Low">At the high friction.</param>
/// <param name="Likely">At the likely friction.</param>
/// <param name="High">At the low friction.</param>
public readonly record struct ShareRange(double Low, double Likely, double High);

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
