using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>How several alike are tightened.</summary>
public enum TighteningPattern
{
    /// <summary>Each on its own, in one go.</summary>
    None,

    /// <summary>On a circle or square: crosswise, or as a star.</summary>
    Circle,

    /// <summary>In a row: from the middle outwards.</summary>
    Row,

    /// <summary>In two rows, as on a cylinder head: from the middle outwards, from one row to the other.</summary>
    TwoRows,
}

/// <summary>One kind of fastener in one place: a single nut, or several alike.</summary>
public sealed record JobFastener
{
    /// <summary>Its name, unlike any other's.</summary>
    public required string Name { get; init; }

    /// <summary>Where it is.</summary>
    public string? Place { get; init; }

    /// <summary>Its thread, if known.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Grade or property class as written, if known.</summary>
    public string? Grade { get; init; }

    /// <summary>Width across flats, if measured.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>Torque the maker's book gives, in the unit it was written in.</summary>
    public Torque? BookTorque { get; init; }

    /// <summary>The turn that follows that torque.</summary>
    public Angle? Then { get; init; }

    /// <summary>Length the bolt clamps, if known.</summary>
    public Length? Grip { get; init; }

    /// <summary>What it clamps, a name of the table <c>clamped-materials</c>.</summary>
    public string? Clamped { get; init; }

    /// <summary>State of the joint now, a name of the table <c>conditions</c>.</summary>
    public string? Condition { get; init; }

    /// <summary>A locknut's own grip.</summary>
    public Torque? Prevailing { get; init; }

    /// <summary>What it is part of, a name of the table <c>places</c>: what is near it leaves some moves out.</summary>
    public string? On { get; init; }

    /// <summary>How many there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>New part to fit on refitting, if one is wanted.</summary>
    public string? NewPart { get; init; }

    /// <summary>How many of the new part; one for each fastener unless it is said otherwise.</summary>
    public int NewPartCount { get; init; }

    /// <summary>Lubricant on refitting, a name of the table <c>friction</c>.</summary>
    public string? Lubricant { get; init; }

    /// <summary>Left-hand thread.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Soaked in penetrant for a day before.</summary>
    public bool Soaked { get; init; }

    /// <summary>What turns it, if only one thing does.</summary>
    public ToolKind? Tool { get; init; }

    /// <summary>State of its corners, a name of the table <c>corner-wear</c>.</summary>
    public string? Worn { get; init; }

    /// <summary>Share of its height that a tool covers; null for the usual one.</summary>
    public double? Engaged { get; init; }

    /// <summary>Steel of its hexagon, a name of the table <c>nut-classes</c>.</summary>
    public string? NutClass { get; init; }

    /// <summary>Ways to stand that there is room for, names of the table <c>stances</c>; empty for any.</summary>
    public IReadOnlyList<string> Stances { get; init; } = [];

    /// <summary>How far it sits back, so that adapters and extensions must be at least that long.</summary>
    public Length Recess { get; init; }

    /// <summary>The wheel its torque turns, so that something must hold it.</summary>
    public Wheel? Wheel { get; init; }

    /// <summary>What holds the other end where that is no wheel, in words.</summary>
    public string? HeldBy { get; init; }

    /// <summary>Torque-wrench square to nut, where only an adapter gets there.</summary>
    public Length? Adapter { get; init; }

    /// <summary>How several alike are tightened.</summary>
    public TighteningPattern Pattern { get; init; }

    /// <summary>The longest lever there is room for; null where nothing is in the way.</summary>
    public Length? Room { get; init; }

    /// <summary>A castle nut with a split pin.</summary>
    public bool Castle { get; init; }

    /// <summary>A nut whose collar is staked into a groove.</summary>
    public bool Staked { get; init; }

    /// <summary>Whether it sets the play of a bearing: tightened while the wheel is turned, then backed off as its maker says.</summary>
    public bool Adjustable { get; init; }

    /// <summary>Whether it gets its full torque only with the vehicle on its wheels: rubber bushes, wheel nuts.</summary>
    public bool RideHeight { get; init; }

    /// <summary>When its torque is to be checked again, in words; null for never.</summary>
    public string? RetorqueAfter { get; init; }

    /// <summary>What to remember when it goes back.</summary>
    public string? RefitNote { get; init; }

    /// <summary>Whether it is loose already.</summary>
    public bool Done { get; init; }

    /// <summary>The highest torque it has stood without moving.</summary>
    public Torque? Held { get; init; }

    /// <summary>The torques it, or some of several, came loose at.</summary>
    public IReadOnlyList<Torque> CameLoose { get; init; } = [];

    /// <summary>Whether its corners are rounded off.</summary>
    public bool Rounded { get; init; }

    /// <summary>Whether it has twisted off.</summary>
    public bool Sheared { get; init; }

    /// <summary>What to remember when it comes off.</summary>
    public string? Note { get; init; }

    /// <summary>Where it stands in the file.</summary>
    internal Files.FilePlace At { get; init; }
}
