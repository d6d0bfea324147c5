using Leverage.Holding;
using UnitsNet;

namespace Leverage.Requests;

/// <content>What holds the wheel.</content>
public sealed partial record LooseningRequest
{
    /// <summary>What holds the wheel, empty for a free one; null when that is not to be judged.</summary>
    public IReadOnlyList<Restraint>? HeldBy { get; init; }

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

    /// <summary>Side of the vehicle, from the driver's seat.</summary>
    public Side? Side { get; init; }

    /// <summary>On support stands, wheels off the ground.</summary>
    public bool OnStands { get; init; }

    /// <summary>Whether anything is said of what holds the wheel.</summary>
    internal bool IsHoldSaid => HeldBy is not null || OnStands;
}
