using Leverage.Holding;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What a person says of how the wheel is held; whatever is null is assumed, and said.</summary>
public sealed record HoldRequest
{
    /// <summary>The restraints; empty for a free wheel.</summary>
    public IReadOnlyList<Restraint> By { get; init; } = [];

    /// <summary>Laden mass of the vehicle.</summary>
    public Mass? VehicleMass { get; init; }

    /// <summary>Load on the wheel.</summary>
    public Force? WheelLoad { get; init; }

    /// <summary>Loaded radius of the wheel.</summary>
    public Length? TyreRadius { get; init; }

    /// <summary>Height of the chock.</summary>
    public Length? ChockHeight { get; init; }

    /// <summary>Ground, a name of the table <c>ground</c>.</summary>
    public string? Ground { get; init; }

    /// <summary>Half shafts still in.</summary>
    public HalfShafts? HalfShafts { get; init; }

    /// <summary>Diameter of a bar across the studs.</summary>
    public Length? StudBarDiameter { get; init; }

    /// <summary>Side of the vehicle.</summary>
    public Side Side { get; init; }

    /// <summary>On support stands, wheels off the ground.</summary>
    public bool OnStands { get; init; }
}
