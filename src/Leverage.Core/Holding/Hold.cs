using UnitsNet;

namespace Leverage.Holding;

/// <summary>What can hold the other end of the torque: the wheel.</summary>
public enum Restraint
{
    /// <summary>Parking brake in order, on that wheel.</summary>
    Brake,

    /// <summary>An old parking brake with a stretched cable.</summary>
    OldBrake,

    /// <summary>In gear, gearbox locked, open differential.</summary>
    Gear,

    /// <summary>A chock at that wheel.</summary>
    Chock,

    /// <summary>A helper on the foot brake.</summary>
    Helper,

    /// <summary>A bar across the wheel studs, its end on the ground.</summary>
    Bar,
}

/// <summary>Half shafts of the axle.</summary>
public enum HalfShafts
{
    /// <summary>Both are in.</summary>
    Both,

    /// <summary>One is out.</summary>
    One,
}

/// <summary>Side of the vehicle, seen from the driver's seat.</summary>
public enum Side
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>How the wheel is held while the nut is pulled.</summary>
public sealed record Hold
{
    /// <summary>Whole ratio of a usual car's lowest gear (judgement).</summary>
    public const double UsualRatio = 13;

    /// <summary>Turns of the flange for one of the wheels: a usual final drive (judgement).</summary>
    public const double FinalDrive = 4;

    /// <summary>The restraints in use; empty for a free wheel.</summary>
    public required IReadOnlyList<Restraint> By { get; init; }

    /// <summary>Laden mass of the vehicle.</summary>
    public Mass VehicleMass { get; init; }

    /// <summary>Load on the wheel.</summary>
    public Force WheelLoad { get; init; }

    /// <summary>Loaded radius of the wheel.</summary>
    public Length TyreRadius { get; init; }

    /// <summary>Height of the chock.</summary>
    public Length ChockHeight { get; init; }

    /// <summary>Friction of the tyre on the ground.</summary>
    public double GroundFriction { get; init; }

    /// <summary>The engine runs, or the servo is still charged: the foot brake then holds what the tyre grips.</summary>
    public bool EngineRunning { get; init; }

    /// <summary>The wheel is on the front axle, which takes more of the braking.</summary>
    public bool Front { get; init; }

    /// <summary>Turns of the engine for one of the wheels in the gear engaged.</summary>
    public double WholeRatio { get; init; } = UsualRatio;

    /// <summary>Half shafts still in.</summary>
    public HalfShafts HalfShafts { get; init; }

    /// <summary>The fastener sits on a flange of the drive line and not on the wheel.</summary>
    public bool OnFlange { get; init; }

    /// <summary>Diameter of the bar across the studs.</summary>
    public Length StudBarDiameter { get; init; }

    /// <summary>Side of the vehicle.</summary>
    public Side Side { get; init; }

    /// <summary>The vehicle stands on support stands, its wheels off the ground.</summary>
    public bool OnStands { get; init; }
}
