using Leverage.Threads;
using UnitsNet;

namespace Leverage.Requests;

/// <summary>What a person says of a joint that is tightened, and what they ask of it; whatever is null is assumed, and said.</summary>
/// <remarks>Each property is a field of <see cref="TighteningFields"/>: its range, its choices and what it depends on stand there.</remarks>
public sealed record TighteningRequest
{
    /// <summary>The thread.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Property class or grade of the bolt.</summary>
    public string? Grade { get; init; }

    /// <summary>Friction of thread and face.</summary>
    public double? Friction { get; init; }

    /// <summary>How it is lubricated, a name of the table <c>friction</c>.</summary>
    public string? Lubrication { get; init; }

    /// <summary>dw, outer diameter of the washer face.</summary>
    public Length? WasherFace { get; init; }

    /// <summary>dh, the clearance hole.</summary>
    public Length? Hole { get; init; }

    /// <summary>Share of yield to tighten to.</summary>
    public double? YieldShare { get; init; }

    /// <summary>How torsion counts: 1.5 taken plastic, 2 elastic.</summary>
    public double? Torsion { get; init; }

    /// <summary>A torque whose preload is asked for, or that is quoted for the joint.</summary>
    public Torque? Torque { get; init; }

    /// <summary>The turn after that torque.</summary>
    public Angle? Then { get; init; }

    /// <summary>That torque is a snug pull by hand.</summary>
    public bool SnugByHand { get; init; }

    /// <summary>What tightens it, a name of the table <c>tightening-scatter</c>.</summary>
    public string? With { get; init; }

    /// <summary>Length the bolt clamps.</summary>
    public Length? Grip { get; init; }

    /// <summary>What it clamps, a name of the table <c>clamped-materials</c>.</summary>
    public string? Clamped { get; init; }

    /// <summary>Slots of a castle nut.</summary>
    public int? CastleSlots { get; init; }

    /// <summary>Left-hand thread.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Its collar is staked.</summary>
    public bool Staked { get; init; }

    /// <summary>Thread locker goes on it.</summary>
    public bool Locker { get; init; }

    /// <summary>It sets the play of an adjustable bearing.</summary>
    public bool AdjustableBearing { get; init; }

    /// <summary>The thread is dirty, rusty or damaged.</summary>
    public bool RoughThread { get; init; }

    /// <summary>Bolt and nut are new.</summary>
    public bool NewBolt { get; init; }

    /// <summary>A mass to hang on a level bar.</summary>
    public Mass? ByWeight { get; init; }

    /// <summary>An adapter's length, wrench square to nut.</summary>
    public Length? Adapter { get; init; }

    /// <summary>The wrench's length, square to middle of its grip.</summary>
    public Length? Wrench { get; init; }

    /// <summary>Adapter against the wrench: 0 straight out.</summary>
    public Angle? Angle { get; init; }

    /// <summary>Thread engaged in a tapped hole.</summary>
    public Length? Engagement { get; init; }

    /// <summary>What it is tapped into, a name of the table <c>tapped-materials</c>, or plainly aluminium, iron or steel.</summary>
    public string? Tapped { get; init; }
}
