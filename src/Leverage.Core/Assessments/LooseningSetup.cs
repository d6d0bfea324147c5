using Leverage.BreakLoose;
using Leverage.Corners;
using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Probability;
using Leverage.Requests;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What turns the nut, resolved.</summary>
/// <param name="Kind">Socket, spanner or key.</param>
/// <param name="Drive">Drive square in inches; null where there is none or it is not known.</param>
/// <param name="Adapters">Drive squares of adapters in between.</param>
public sealed record ToolHead(ToolKind Kind, string? Drive, IReadOnlyList<string> Adapters)
{
    /// <summary>Drive square of an extension between bar and socket, in inches; null with none.</summary>
    public string? Extension { get; init; }

    /// <summary>Its marked size where that is not the nut's; null for the nut's.</summary>
    public Length? Size { get; init; }
}

/// <summary>The person at the lever, resolved.</summary>
/// <param name="Stance">How they stand.</param>
/// <param name="Person">Column of the stance table.</param>
/// <param name="Body">Body mass.</param>
/// <param name="Measured">Force they measured, in place of the table's.</param>
/// <param name="Two">Whether a second person like them pulls too.</param>
public sealed record Hands(Stance Stance, Person Person, Mass Body, Force? Measured, bool Two = false)
{
    /// <summary>Spread of the force, N, and the most it can be.</summary>
    public (Spread Force, double CapN) Force => Two
        ? (One.Force with { Median = HandForce.Together(One.Force.Median) }, HandForce.TwoOverOne * One.CapN)
        : One;

    private (Spread Force, double CapN) One => Measured is { } measured
        ? (new Spread(measured.Newtons, Levers.Stance.MeasuredSigma), Stance.CapN(Body.Kilograms))
        : Stance.Force(Person, Body.Kilograms);
}

/// <summary>What you have: a nut, a lever and what holds the other end, every blank filled and every filling told.</summary>
public sealed record LooseningSetup
{
    /// <summary>The nut or bolt.</summary>
    public required Fastener Fastener { get; init; }

    /// <summary>What turns it.</summary>
    public required ToolHead Tool { get; init; }

    /// <summary>The person.</summary>
    public required Hands Hands { get; init; }

    /// <summary>The bar; null to be told how long one is needed.</summary>
    public Bar? Bar { get; init; }

    /// <summary>Whether the bar's diameter was taken from the table by drive.</summary>
    public bool BarAssumed { get; init; }

    /// <summary>Whether the bar's yield was assumed.</summary>
    public bool BarYieldAssumed { get; init; }

    /// <summary>The tube, if one is on.</summary>
    public Tube? Tube { get; init; }

    /// <summary>How far it goes on.</summary>
    public Length Overlap { get; init; }

    /// <summary>The surface of the bar that a tube sits on.</summary>
    public required HandleSurface Surface { get; init; }

    /// <summary>Where the pull begins, past square in the direction it moves.</summary>
    public Angle StartPastSquare { get; init; }

    /// <summary>Where the swing ends, past square in the direction it moves.</summary>
    public required Angle PastSquare { get; init; }

    /// <summary>Turn of the nut from where the pull begins to where the swing ends, rad.</summary>
    public double TurnRad => Math.Max(0, (PastSquare - StartPastSquare).Radians);

    /// <summary>Where the fastener sits; null where nobody said.</summary>
    public Place? Place { get; init; }

    /// <summary>What it was tightened to, as far as anybody knows.</summary>
    public required StartTorque Start { get; init; }

    /// <summary>Whether its thread was judged by its hexagon.</summary>
    public bool ThreadBySight { get; init; }

    /// <summary>How the tool holds the hexagon; null where its corners cannot be judged.</summary>
    public CornerGrip? Corners { get; init; }

    /// <summary>A key in a worn recess: how well it still holds has no figure.</summary>
    public bool RecessWorn { get; init; }

    /// <summary>How many alike there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Lever's plane to the nut's, extension and all, if said.</summary>
    public Length? StandOff { get; init; }

    /// <summary>Longest lever there is room for, nut to its end; null where there is no limit.</summary>
    public Length? Room { get; init; }

    /// <summary>How the wheel is held, if that is to be judged.</summary>
    public Hold? Hold { get; init; }

    /// <summary>Everything taken for granted.</summary>
    public required IReadOnlyList<Assumption> Assumed { get; init; }

    /// <summary>Nut to the end of bar or tube; null with no bar.</summary>
    public Length? LeverLength => Bar is not { } bar ? null : Tube is { } tube ? bar.Length + tube.Length - Overlap : bar.Length;

    /// <summary>The lever's lengths; null with no bar.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left to hold.</exception>
    public LeverGeometry? Geometry => Bar is not { } bar
        ? null
        : Tube is { } tube
            ? LeverGeometry.WithTube(
                bar.Length.Millimeters, tube.Length.Millimeters, Overlap.Millimeters, Hands.Stance.GripOffsetMm)
            : LeverGeometry.Bare(bar.Length.Millimeters, Hands.Stance.GripOffsetMm);

    /// <summary>The shortest and the longest overlap that leave room for hands and straight handle; null with no tube.</summary>
    public (Length Least, Length Most)? Overlaps => this is { Bar: { Diameter: not null } bar, Tube: { } tube }
        && TubeAssessor.Range(bar, tube, Hands.Stance.GripOffsetMm) is var (least, most)
            ? (Length.FromMillimeters(least), Length.FromMillimeters(most))
            : null;
}
