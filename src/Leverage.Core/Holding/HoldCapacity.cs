using Leverage.Levers;
using Leverage.Probability;
using Leverage.Tables;

namespace Leverage.Holding;

/// <summary>One restraint and the torque it holds at the wheel.</summary>
/// <param name="Restraint">Which.</param>
/// <param name="CapacityNmm">What it holds, N·mm.</param>
/// <param name="Source">Where the figure comes from.</param>
/// <param name="Status">How far it may be trusted.</param>
public readonly record struct RestraintCapacity(Restraint Restraint, double CapacityNmm, HoldSource Source, ValueStatus Status);

/// <summary>Where the torque of a restraint comes from.</summary>
public enum HoldSource
{
    /// <summary>Type approval of parking brakes.</summary>
    ParkingBrakeApproval,

    /// <summary>The share of it an old cable holds.</summary>
    OldCable,

    /// <summary>Type approval of the foot brake without its servo.</summary>
    FootBrakeApproval,

    /// <summary>Grip of the tyre.</summary>
    TyreGrip,

    /// <summary>Grip of the two tyres of an axle, through an open differential.</summary>
    TwoTyres,

    /// <summary>What a stopped engine resists.</summary>
    StoppedEngine,

    /// <summary>A half shaft is out, or the wheels hang.</summary>
    Nothing,

    /// <summary>The wheel climbs the chock.</summary>
    ChockClimbed,

    /// <summary>The wheel slips against chock and ground.</summary>
    ChockSlips,

    /// <summary>The bar bends.</summary>
    BarBends,
}

/// <summary>What holds the wheel, together.</summary>
/// <param name="Parts">Each restraint alone.</param>
/// <param name="TotalNmm">All of them together, the ground's routes never above what the tyre grips, N·mm.</param>
/// <param name="GripNmm">Tyre grip of this wheel, the ceiling of every route through the ground, N·mm.</param>
public sealed record HoldCapacity(IReadOnlyList<RestraintCapacity> Parts, double TotalNmm, double GripNmm)
{
    /// <summary>Share of a type-approved parking brake that an old cable still holds (judgement).</summary>
    public const double OldBrakeShare = 0.7;

    /// <summary>Share of the rigid-wheel chock torque left with a soft tyre (judgement).</summary>
    public const double SoftTyreShare = 0.8;

    /// <summary>Yield of a bar laid across the studs, MPa: mild steel (EN 10025 S235).</summary>
    public const double StudBarYieldMpa = 235;

    /// <summary>Scatter of what a hold really stands about its capacity, σ of the logarithm (judgement).</summary>
    public const double Scatter = 0.15;

    /// <summary>What it really stands, scattered about the capacity.</summary>
    public Strength Strength => new(TotalNmm, Scatter);

    /// <summary>Capacity of a hold.</summary>
    /// <param name="hold">How the wheel is held.</param>
    /// <param name="liftN">Force the hands take off the wheel by pulling up, N; 0 for any other push.</param>
    /// <returns>The capacities; nothing holds a wheel off the ground but its brake and a bar.</returns>
    public static HoldCapacity Of(Hold hold, double liftN)
    {
        ArgumentNullException.ThrowIfNull(hold);
        double load = hold.OnStands ? 0 : Math.Max(0, hold.WheelLoad.Newtons - liftN);
        double radius = hold.TyreRadius.Millimeters;
        double grip = TyreGrip.Torque(hold.GroundFriction, load, radius);
        var parts = new List<RestraintCapacity>(hold.By.Count);
        double brake = 0;
        double ground = 0;
        double bar = 0;
        double engine = 0;
        foreach (Restraint restraint in hold.By.Distinct())
        {
            var (capacity, source, status) = hold.OnFlange && restraint != Restraint.Bar ? AtFlange(restraint, hold, load, grip) : Alone(restraint, hold, load, grip);
            parts.Add(new RestraintCapacity(restraint, capacity, source, status));
            switch (restraint)
            {
                case Restraint.Brake or Restraint.OldBrake or Restraint.Helper:
                    brake = Math.Max(brake, capacity);
                    break;
                case Restraint.Bar:
                    bar += capacity;
                    break;
                case Restraint.Gear when hold.OnFlange:
                    engine = capacity;
                    break;
                default:
                    ground += capacity;
                    break;
            }
        }

        // Two tyres at most take part, and a chock alone never holds more than the one it stands at.
        return new HoldCapacity(parts, bar + Math.Max(engine, brake + Math.Min(ground, 2 * grip)), grip);
    }

    /// <summary>
    /// What holds a flange: the engine by the gear alone; the wheels, two of them over the final drive, and an open differential lets the
    /// other spin once a half shaft is out. At its other end is one of both: the better one counts, and the answer tells.
    /// </summary>
    private static (double, HoldSource, ValueStatus) AtFlange(Restraint restraint, Hold hold, double loadN, double gripNmm)
    {
        if (restraint == Restraint.Gear)
        {
            return (StoppedEngine.Torque(hold.WholeRatio / Hold.FinalDrive), HoldSource.StoppedEngine, ValueStatus.Judgement);
        }

        var (capacity, source, _) = Alone(restraint, hold, loadN, gripNmm);
        return hold.HalfShafts == HalfShafts.One ? (0, HoldSource.Nothing, ValueStatus.Derived) : (2 * capacity / Hold.FinalDrive, source, ValueStatus.Judgement);
    }

    private static (double CapacityNmm, HoldSource Source, ValueStatus Status) Alone(
        Restraint restraint, Hold hold, double loadN, double gripNmm)
    {
        double radius = hold.TyreRadius.Millimeters;
        double mass = hold.VehicleMass.Kilograms;
        return restraint switch
        {
            Restraint.Brake => (ParkingBrake.WheelTorque(mass, radius, 2), HoldSource.ParkingBrakeApproval, ValueStatus.Memory),
            Restraint.OldBrake => (OldBrakeShare * ParkingBrake.WheelTorque(mass, radius, 2), HoldSource.OldCable, ValueStatus.Judgement),
            Restraint.Gear => Gear(hold, loadN, radius),
            Restraint.Chock => Chock(hold, loadN, radius, gripNmm),
            Restraint.Bar => (
                StudBarYieldMpa * RoundBar.ElasticModulus(hold.StudBarDiameter.Millimeters), HoldSource.BarBends, ValueStatus.Derived),
            _ => Foot(hold, radius, gripNmm),
        };
    }

    /// <summary>With its servo the foot brake holds until the tyre slips; without it, what its approval asks.</summary>
    private static (double, HoldSource, ValueStatus) Foot(Hold hold, double radiusMm, double gripNmm)
    {
        double unaided = FootBrake.WheelTorque(
            hold.VehicleMass.Kilograms, radiusMm, hold.Front ? FootBrake.FrontShare : 1 - FootBrake.FrontShare);
        return hold.EngineRunning && gripNmm > unaided
            ? (gripNmm, HoldSource.TyreGrip, ValueStatus.Derived)
            : (unaided, HoldSource.FootBrakeApproval, ValueStatus.Memory);
    }

    private static (double, HoldSource, ValueStatus) Gear(Hold hold, double loadN, double radiusMm) =>
        hold.HalfShafts == HalfShafts.One || loadN <= 0
            ? (0, HoldSource.Nothing, ValueStatus.Derived)
            : Least(
                (OpenDifferential.Torque(hold.GroundFriction, loadN, radiusMm), HoldSource.TwoTyres, ValueStatus.Derived),
                (StoppedEngine.Torque(hold.WholeRatio), HoldSource.StoppedEngine, ValueStatus.Judgement));

    private static (double, HoldSource, ValueStatus) Chock(Hold hold, double loadN, double radiusMm, double gripNmm)
    {
        double height = hold.ChockHeight.Millimeters;
        return Least(
            (gripNmm, HoldSource.TyreGrip, ValueStatus.Derived),
            Least(
                (SoftTyreShare * WheelChock.Torque(loadN, radiusMm, height), HoldSource.ChockClimbed, ValueStatus.Judgement),
                (WheelChock.SlippingTorque(hold.GroundFriction, loadN, radiusMm, height), HoldSource.ChockSlips, ValueStatus.Derived)));
    }

    private static (double CapacityNmm, HoldSource, ValueStatus) Least(
        (double CapacityNmm, HoldSource, ValueStatus) one, (double CapacityNmm, HoldSource, ValueStatus) other) =>
        one.CapacityNmm <= other.CapacityNmm ? one : other;
}
