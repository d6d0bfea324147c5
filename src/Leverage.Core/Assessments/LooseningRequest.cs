using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.BreakLoose;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What turns the nut.</summary>
public enum ToolKind
{
    /// <summary>A socket on a bar.</summary>
    Socket,

    /// <summary>A ring spanner.</summary>
    Ring,

    /// <summary>An open spanner.</summary>
    Open,

    /// <summary>A hexagon key.</summary>
    Key,
}

/// <summary>A tube as a person describes it: a tube by outside and wall, or a jack handle by its bore.</summary>
/// <param name="Length">Whole length.</param>
/// <param name="Outside">Outside diameter; null for a jack handle.</param>
/// <param name="Wall">Wall; null for a jack handle.</param>
/// <param name="Bore">Measured bore; null to work it out from outside and wall.</param>
public sealed record TubeText(Length Length, Length? Outside = null, Length? Wall = null, Length? Bore = null);

/// <summary>What a person says of a nut and of what they have to undo it; whatever is null is assumed, and said.</summary>
public sealed record LooseningRequest
{
    /// <summary>What it was tightened to.</summary>
    public Torque? BookTorque { get; init; }

    /// <summary>Its thread.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Property class or grade.</summary>
    public string? Grade { get; init; }

    /// <summary>Friction at assembly.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>State of the joint now, a name of the table <c>conditions</c>.</summary>
    public string? Condition { get; init; }

    /// <summary>A locknut's own grip.</summary>
    public Torque? Prevailing { get; init; }

    /// <summary>Left-hand thread.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Soaked in penetrant for a day.</summary>
    public bool Soaked { get; init; }

    /// <summary>Heat put into it.</summary>
    public Heating? Heating { get; init; }

    /// <summary>Width across flats.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>What turns it.</summary>
    public ToolKind Tool { get; init; } = ToolKind.Socket;

    /// <summary>Drive square, in inches as the trade says it.</summary>
    public string? Drive { get; init; }

    /// <summary>Drive squares of adapters between bar and socket.</summary>
    public IReadOnlyList<string> Adapters { get; init; } = [];

    /// <summary>Bar, square to end; a spanner's or key's length.</summary>
    public Length? Bar { get; init; }

    /// <summary>Diameter of its handle.</summary>
    public Length? BarDiameter { get; init; }

    /// <summary>Yield of its steel.</summary>
    public Pressure? BarYield { get; init; }

    /// <summary>How far a tube can go on it.</summary>
    public Length? StraightHandle { get; init; }

    /// <summary>Taper of its handle towards the end.</summary>
    public Angle? Taper { get; init; }

    /// <summary>The pin of a flex head.</summary>
    public FlexPin? Pin { get; init; }

    /// <summary>The tube.</summary>
    public TubeText? Tube { get; init; }

    /// <summary>Yield of the tube's steel.</summary>
    public Pressure? TubeYield { get; init; }

    /// <summary>How far the tube goes on.</summary>
    public Length? Overlap { get; init; }

    /// <summary>State of the handle, a name of the table <c>handle-friction</c>.</summary>
    public string? Handle { get; init; }

    /// <summary>Friction of tube on bar, in place of a state.</summary>
    public double? GripFriction { get; init; }

    /// <summary>Lowest angle of the swing, below level.</summary>
    public Angle? BelowLevel { get; init; }

    /// <summary>How the person stands, a name of the table <c>stances</c>.</summary>
    public string? Stance { get; init; }

    /// <summary>Which column of the stance table.</summary>
    public Person? Person { get; init; }

    /// <summary>Body mass.</summary>
    public Mass? Body { get; init; }

    /// <summary>Force the person measured.</summary>
    public Force? Force { get; init; }

    /// <summary>Lever's plane to the nut's: socket depth, extension, flex head.</summary>
    public Length? StandOff { get; init; }

    /// <summary>How the wheel is held; null when that is not to be judged.</summary>
    public HoldRequest? Hold { get; init; }
}
