using Leverage.Holding;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>What holds a wheel at a point of the order, and what does not count there, in words.</summary>
/// <param name="Request">The restraints, for the assessment.</param>
/// <param name="Lost">Restraints that hold nothing now, and why.</param>
/// <param name="Chocked">Whether any wheel is chocked, so that it cannot roll.</param>
public sealed record WheelHold(LooseningRequest Request, IReadOnlyList<string> Lost, bool Chocked = false);

/// <summary>Reads restraints out of the states that hold. States are free words; the usual ones below are understood.</summary>
public sealed class JobStates
{
    /// <summary>The wheels stand on the ground.</summary>
    public const string WheelsDown = "wheels down";

    /// <summary>In gear, gearbox locked.</summary>
    public const string InGear = "in gear";

    /// <summary>The parking brake is on.</summary>
    public const string ParkingBrake = "parking brake";

    /// <summary>A helper stands on the foot brake.</summary>
    public const string FootBrake = "foot brake";

    /// <summary>A chock of the chest is at the wheel.</summary>
    public const string Chocked = "chocked";

    /// <summary>A bar of the chest lies across the wheel studs, its end on the ground.</summary>
    public const string StudBar = "bar across the studs";

    private const string Again = " again";

    /// <summary>The way from gearbox to wheel: in gear holds nothing once one of these has come to an end.</summary>
    private static readonly string[] GearPath =
    [
        "both half shafts in", "other half shaft in", "left half shaft in", "right half shaft in",
        "propshaft in", "gearbox in", "engine in",
    ];

    /// <summary>The states understood for holding a wheel.</summary>
    internal static IReadOnlyList<string> Known { get; } =
        [WheelsDown, InGear, ParkingBrake, FootBrake, Chocked, StudBar, "front wheels down", "rear wheels down", .. GearPath];

    /// <summary>A state as a person reads it: that the wheels are down is told as where the vehicle stands.</summary>
    internal static string Words(string state) => TaskRules.Names.Equals(state, WheelsDown) ? "on the ground" : state;

    private readonly Job _job;
    private readonly HashSet<string> _mentioned;

    /// <summary>The states of a job.</summary>
    public JobStates(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        _job = job;
        _mentioned = new HashSet<string>(
            job.AtStart.Concat(job.Rules.SelectMany(rules => rules.Gives)).Select(Plain), TaskRules.Names);
    }

    /// <summary>What holds a wheel while some states hold.</summary>
    /// <param name="wheel">The wheel.</param>
    /// <param name="states">The states.</param>
    /// <returns>The hold; with the wheel off the ground it says so.</returns>
    public WheelHold Of(Wheel wheel, IEnumerable<string> states)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        var now = new HashSet<string>(states.Select(Plain), TaskRules.Names);
        var by = new List<Restraint>();
        var lost = new List<string>();
        Brake(wheel, now, by, lost);
        Gear(wheel, now, by, lost);
        ChestHold? chock = Thing(Restraint.Chock, Chocked, now, by);
        ChestHold? bar = Thing(Restraint.Bar, StudBar, now, by);
        _ = Thing(Restraint.Helper, FootBrake, now, by);
        Vehicle? vehicle = _job.Vehicle;
        return new WheelHold(
            new LooseningRequest
            {
                HeldBy = by,
                VehicleMass = vehicle?.Mass,
                WheelLoad = wheel.Axle == Axle.Front ? vehicle?.FrontWheelLoad : vehicle?.RearWheelLoad,
                TyreRadius = vehicle?.TyreRadius,
                Ground = vehicle?.Ground,
                ChockHeight = chock?.Height,
                StudBarDiameter = bar?.Diameter,
                HalfShafts = HalfShafts.Both,
                Side = wheel.Side,
                OnStands = IsLifted(wheel, now),
            },
            lost,
            now.Any(state => state.EndsWith(Chocked, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Whether any wheel is off the ground while some states hold.</summary>
    /// <param name="states">The states.</param>
    /// <returns>True where "wheels down" has come to an end.</returns>
    public bool IsLifted(IEnumerable<string> states)
    {
        var now = new HashSet<string>(states.Select(Plain), TaskRules.Names);
        return Enum.GetValues<Axle>().Any(axle => IsLifted(new Wheel(axle, Side.Unknown), now));
    }

    private bool IsLifted(Wheel wheel, HashSet<string> now) =>
        Ended(WheelsDown, now) || Ended(wheel.Axle == Axle.Front ? "front wheels down" : "rear wheels down", now);

    private void Brake(Wheel wheel, HashSet<string> now, List<Restraint> by, List<string> lost)
    {
        if (now.Contains(ParkingBrake) && wheel.Axle == (_job.Vehicle?.ParkingBrakeOn ?? Axle.Rear))
        {
            by.Add(_job.Chest.Holds.Any(hold => hold.Kind == Restraint.OldBrake) ? Restraint.OldBrake : Restraint.Brake);
        }
        else if (Ended(ParkingBrake, now))
        {
            lost.Add("parking brake off");
        }
    }

    private void Gear(Wheel wheel, HashSet<string> now, List<Restraint> by, List<string> lost)
    {
        if (!now.Contains(InGear))
        {
            if (Ended(InGear, now))
            {
                lost.Add("out of gear");
            }

            return;
        }

        if (GearPath.FirstOrDefault(part => Ended(part, now)) is { } gone)
        {
            lost.Add($"in gear holds nothing: no longer {gone}");
        }
        else if (_job.Vehicle?.Driven.Contains(wheel.Axle) == true && !IsLifted(wheel, now))
        {
            by.Add(Restraint.Gear);
        }
    }

    /// <summary>Something in the chest that holds, when its state or its own name holds; of several, the first.</summary>
    private ChestHold? Thing(Restraint kind, string state, HashSet<string> now, List<Restraint> by)
    {
        ChestHold? thing = _job.Chest.Holds.FirstOrDefault(hold => hold.Kind == kind && now.Contains(hold.Name))
            ?? (now.Contains(state) ? _job.Chest.Holds.FirstOrDefault(hold => hold.Kind == kind) : null);
        if (thing is not null || kind == Restraint.Helper && now.Contains(state))
        {
            by.Add(kind);
        }

        return thing;
    }

    private bool Ended(string state, HashSet<string> now) => _mentioned.Contains(state) && !now.Contains(state);

    internal static string Plain(string state) =>
        state.EndsWith(Again, StringComparison.OrdinalIgnoreCase) ? state[..^Again.Length] : state;
}
