using Leverage.Holding;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>An end of the vehicle.</summary>
public enum Axle
{
    /// <summary>The front wheels.</summary>
    Front,

    /// <summary>The rear wheels.</summary>
    Rear,
}

/// <summary>A wheel that a fastener's torque turns.</summary>
/// <param name="Axle">Which end.</param>
/// <param name="Side">Which side.</param>
public sealed record Wheel(Axle Axle, Side Side)
{
    /// <summary>The wheel in words, as the job file writes it.</summary>
    public string Words => $"{(Axle == Axle.Front ? "front" : "rear")} {(Side == Side.Left ? "left" : "right")}";
}

/// <summary>The vehicle, as far as it holds its own wheels; whatever is null is assumed, and said.</summary>
public sealed record Vehicle
{
    /// <summary>What it is, for the sheet.</summary>
    public string? Name { get; init; }

    /// <summary>Laden mass.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Load on each front wheel.</summary>
    public Force? FrontWheelLoad { get; init; }

    /// <summary>Load on each rear wheel.</summary>
    public Force? RearWheelLoad { get; init; }

    /// <summary>Axle to ground.</summary>
    public Length? TyreRadius { get; init; }

    /// <summary>What it stands on, a name of the table <c>ground</c>.</summary>
    public string? Ground { get; init; }

    /// <summary>Driven axles; empty where it is not said, and then no gear holds a wheel.</summary>
    public IReadOnlyList<Axle> Driven { get; init; } = [];

    /// <summary>Axle the parking brake acts on.</summary>
    public Axle ParkingBrakeOn { get; init; } = Axle.Rear;
}
