using Leverage.Levers;
using UnitsNet;

namespace Leverage.Holding;

/// <summary>One restraint and the torque it holds at the wheel.</summary>
/// <param name="Restraint">Which.</param>
/// <param name="CapacityNmm">What it holds, N·mm.</param>
public readonly record struct RestraintCapacity(Restraint Restraint, double CapacityNmm);

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
        foreach (Restraint restraint in hold.By.Distinct())
        {
            double capacity = Alone(restraint, hold, load, grip);
            parts.Add(new RestraintCapacity(restraint, capacity));
            switch (restraint)
            {
                case Restraint.Brake or Restraint.OldBrake or Restraint.Helper:
                    brake = Math.Max(brake, capacity);
                    break;
                case Restraint.Bar:
                    bar += capacity;
                    break;
                default:
                    ground += capacity;
                    break;
            }
        }

        bool twoContacts = parts.Exists(part => part is { Restraint: Restraint.Gear, CapacityNmm: > 0 });
        return new HoldCapacity(parts, brake + bar + Math.Min(ground, (twoContacts ? 2 : 1) * grip), grip);
    }

    private static double Alone(Restraint restraint, Hold hold, double loadN, double gripNmm)
    {
        double radius = hold.TyreRadius.Millimeters;
        return restraint switch
        {
            Restraint.Brake => ParkingBrake.WheelTorque(hold.VehicleMass.Kilograms, radius, 2),
            Restraint.OldBrake => OldBrakeShare * ParkingBrake.WheelTorque(hold.VehicleMass.Kilograms, radius, 2),
            Restraint.Gear => hold.HalfShafts == HalfShafts.Both
                ? OpenDifferential.Torque(hold.GroundFriction, loadN, radius)
                : 0,
            Restraint.Chock => Math.Min(
                gripNmm, SoftTyreShare * WheelChock.Torque(loadN, radius, hold.ChockHeight.Millimeters)),
            Restraint.Bar => StudBarYieldMpa * RoundBar.ElasticModulus(hold.StudBarDiameter.Millimeters),
            _ => gripNmm,
        };
    }
}
