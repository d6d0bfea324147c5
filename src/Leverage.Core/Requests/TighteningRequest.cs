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

    /// <summary>What it is tapped into, a name of the table <c>tapped-materials</c>.</summary>
    public string? Tapped { get; init; }
}
