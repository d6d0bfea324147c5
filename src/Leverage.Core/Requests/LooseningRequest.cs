using Leverage.BreakLoose;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Requests;

/// <summary>What a person says of a nut, of what they have to loosen it, and of what holds the wheel; whatever is null is assumed, and said.</summary>
/// <remarks>Each property is a field of <see cref="LooseningFields"/>: its range, its choices and what it depends on stand there.</remarks>
public sealed partial record LooseningRequest
{
    /// <summary>What it was tightened to.</summary>
    public Torque? BookTorque { get; init; }

    /// <summary>The turn that followed it.</summary>
    public Angle? Then { get; init; }

    /// <summary>Where it sits, a name of the table <c>places</c>.</summary>
    public string? On { get; init; }

    /// <summary>What this nut has stood and not moved.</summary>
    public Torque? Held { get; init; }

    /// <summary>What like nuts of this machine came loose at.</summary>
    public IReadOnlyList<Torque> Came { get; init; } = [];

    /// <summary>How many alike there are.</summary>
    public int? Count { get; init; }

    /// <summary>Points of socket or ring: 6 or 12.</summary>
    public int? Points { get; init; }

    /// <summary>State of the corners, a name of the table <c>corner-wear</c>.</summary>
    public string? Worn { get; init; }

    /// <summary>Share of the hexagon's height that the tool covers.</summary>
    public double? Engaged { get; init; }

    /// <summary>Steel of the hexagon, a name of the table <c>nut-classes</c>.</summary>
    public string? NutClass { get; init; }

    /// <summary>Length the bolt clamps.</summary>
    public Length? Grip { get; init; }

    /// <summary>What it clamps.</summary>
    public string? Clamped { get; init; }

    /// <summary>Where the pull begins, past square.</summary>
    public Angle? StartPastSquare { get; init; }

    /// <summary>The engine runs: its servo helps the foot brake.</summary>
    public bool EngineRunning { get; init; }

    /// <summary>Turns of the engine for one of the wheels in the gear engaged.</summary>
    public double? Ratio { get; init; }

    /// <summary>Its thread.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Property class or grade.</summary>
    public string? Grade { get; init; }

    /// <summary>Friction at assembly.</summary>
    public double? Friction { get; init; }

    /// <summary>State of the joint now, a name of the table <c>conditions</c>.</summary>
    public string? Condition { get; init; }

    /// <summary>A locknut's own grip.</summary>
    public Torque? Prevailing { get; init; }

    /// <summary>What is special about the joint.</summary>
    public IReadOnlyList<SpecialJoint> Joints { get; init; } = [];

    /// <summary>Left-hand thread.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Soaked in penetrant for a day.</summary>
    public bool Soaked { get; init; }

    /// <summary>The part that is heated.</summary>
    public HeatedPart? Heat { get; init; }

    /// <summary>How much hotter than the rest it is.</summary>
    public TemperatureDelta? HeatedBy { get; init; }

    /// <summary>Width across flats.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>What turns it; a socket where it is not said.</summary>
    public ToolKind? Tool { get; init; }

    /// <summary>Marked size of the tool; the nut's where it is not said.</summary>
    public Length? ToolSize { get; init; }

    /// <summary>Drive square, in inches as the trade says it.</summary>
    public string? Drive { get; init; }

    /// <summary>Drive squares of adapters between bar and socket, on the socket's side, the bar's first.</summary>
    public IReadOnlyList<string> Adapters { get; init; } = [];

    /// <summary>Length of an extension between bar and socket.</summary>
    public Length? Extension { get; init; }

    /// <summary>Longest lever there is room for, nut to its end.</summary>
    public Length? Room { get; init; }

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

    /// <summary>Diameter of the pin of a flex head.</summary>
    public Length? BarPin { get; init; }

    /// <summary>Thickness of the tang that pin runs through: how far its two shear planes are apart.</summary>
    public Length? BarPinPlanes { get; init; }

    /// <summary>The tube.</summary>
    public TubeText? Tube { get; init; }

    /// <summary>Yield of the tube's steel.</summary>
    public Pressure? TubeYield { get; init; }

    /// <summary>How far the tube goes on.</summary>
    public Length? Overlap { get; init; }

    /// <summary>State of the bar's surface, a name of the table <c>handle-friction</c>.</summary>
    public string? Surface { get; init; }

    /// <summary>Friction of tube on bar, in place of a state.</summary>
    public double? SurfaceFriction { get; init; }

    /// <summary>Where the swing ends, past square in the direction of the pull.</summary>
    public Angle? PastSquare { get; init; }

    /// <summary>How the person stands, a name of the table <c>stances</c>.</summary>
    public string? Stance { get; init; }

    /// <summary>Which column of the stance table.</summary>
    public Person? Person { get; init; }

    /// <summary>Body mass.</summary>
    public Mass? Body { get; init; }

    /// <summary>Force the person measured.</summary>
    public Force? Force { get; init; }

    /// <summary>How many pull together on the lever: 1 or 2.</summary>
    public int? People { get; init; }

    /// <summary>End of the lever to the middle of the hands.</summary>
    public Length? HandsIn { get; init; }

    /// <summary>Lever's plane to the nut's: socket depth, extension, flex head.</summary>
    public Length? StandOff { get; init; }

    /// <summary>How deep the socket sits on the nut.</summary>
    public Length? Engagement { get; init; }
}
