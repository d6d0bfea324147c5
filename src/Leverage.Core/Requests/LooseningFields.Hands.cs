using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using UnitsNet;
using static System.FormattableString;
using F = Leverage.Requests.Field<Leverage.Requests.LooseningRequest>;

namespace Leverage.Requests;

/// <content>Who pulls, and what holds the other end.</content>
internal static partial class LooseningFields
{
    internal static readonly Field<LooseningRequest, string> Stance = F.Of(
        "stance", Kinds.Row("stances", "a stance", "stand-push"), "how you stand: table stances",
        r => r.Stance, (r, v) => r with { Stance = v }, leftOut: "stand-push");

    internal static readonly Field<LooseningRequest, Person> Person = F.Of(
        "person", Kinds.Choice(("man", Levers.Person.Man), ("woman", Levers.Person.Woman)), "whose strength to take",
        r => r.Person, (r, v) => r with { Person = v }, leftOut: "man");

    internal static readonly Field<LooseningRequest, Mass> Body = F.Of(
        "body", Kinds.Mass("82kg", AcceptedRange.Body), "your mass",
        r => r.Body, (r, v) => r with { Body = v }, leftOut: Invariant($"{Levers.Stance.ReferenceManKg}kg; woman {Levers.Stance.ReferenceWomanKg}kg"));

    internal static readonly Field<LooseningRequest, Force> Force = F.Of(
        "force", Kinds.Force("450N"), "your own push, read off a bathroom scale: 60kg", r => r.Force, (r, v) => r with { Force = v });

    internal static readonly Field<LooseningRequest, int> People = F.Of(
        "people", Kinds.Choice(("1", 1), ("2", 2)), "on the lever together", r => r.People, (r, v) => r with { People = v }, leftOut: "1");

    internal static readonly Field<LooseningRequest, Length> HandsIn = F.Of(
        "hands-in", Kinds.Length("200mm"), "end of the lever to the middle of your hands",
        r => r.HandsIn, (r, v) => r with { HandsIn = v }, leftOut: "95mm; one hand 50mm");

    internal static readonly Field<LooseningRequest, Length> Room = F.Of(
        "room", Kinds.Length("900mm"), "longest lever there is room for", r => r.Room, (r, v) => r with { Room = v }, leftOut: "no limit");

    internal static readonly Field<LooseningRequest, Length> StandOff = F.Of(
        "stand-off", Kinds.Length("80mm", AcceptedRange.LengthOrZero), "how far the bar stands off the nut, without an extension",
        r => r.StandOff, (r, v) => r with { StandOff = v });

    internal static readonly Field<LooseningRequest, Length> Engagement = F.Of(
        "engagement", Kinds.Length("20mm"), "how deep the socket sits on the nut", r => r.Engagement, (r, v) => r with { Engagement = v });

    internal static readonly Field<LooseningRequest, bool> OnStands = F.Flag(
        "on-stands", "the vehicle is on support stands", r => r.OnStands, (r, v) => r with { OnStands = v });

    internal static readonly Field<LooseningRequest, IReadOnlyList<Restraint>> HeldBy = F.Of(
        "held-by", Kinds.HeldBy, "what holds the wheel: brake,old-brake,gear,chock,helper,bar; none", r => r.HeldBy, (r, v) => r with { HeldBy = v });

    internal static readonly Field<LooseningRequest, Mass> VehicleMass = F.Of(
        "mass", Kinds.Mass("1250kg", AcceptedRange.Vehicle), "of the vehicle with its load",
        r => r.VehicleMass, (r, v) => r with { VehicleMass = v }, needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, Force> WheelLoad = F.Of(
        "wheel-load", Kinds.Force("3200N"), "load on that wheel",
        r => r.WheelLoad, (r, v) => r with { WheelLoad = v }, leftOut: "a quarter of mass", needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, Length> TyreRadius = F.Of(
        "tyre-radius", Kinds.Length("300mm"), "middle of the wheel to the ground",
        r => r.TyreRadius, (r, v) => r with { TyreRadius = v }, leftOut: Invariant($"{UsualValues.TyreRadiusMm}mm"), needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, Length> Chock = F.Of(
        "chock", Kinds.Length("100mm"), "height of the chock",
        r => r.ChockHeight, (r, v) => r with { ChockHeight = v }, leftOut: "a third of tyre-radius", needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, string> Ground = F.Of(
        "ground", Kinds.Row("ground", "a ground", "dry-concrete"), "what the wheel stands on: table ground",
        r => r.Ground, (r, v) => r with { Ground = v }, leftOut: "dry-concrete", needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, HalfShafts> HalfShafts = F.Of(
        "half-shafts", Kinds.Choice(("both", Holding.HalfShafts.Both), ("one", Holding.HalfShafts.One)), "half shafts still in",
        r => r.HalfShafts, (r, v) => r with { HalfShafts = v }, leftOut: "both", needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, Length> HoldBar = F.Of(
        "hold-bar", Kinds.Length("30mm"), "diameter of a bar across the wheel studs",
        r => r.StudBarDiameter, (r, v) => r with { StudBarDiameter = v }, needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, Side> Side = F.Of(
        "side", Kinds.Choice(("left", Holding.Side.Left), ("right", Holding.Side.Right)), "of the vehicle, from the driver's seat",
        r => r.Side, (r, v) => r with { Side = v }, needs: [HeldBy, OnStands]);

    internal static readonly Field<LooseningRequest, bool> EngineRunning = F.Flag(
        "engine-running", "its servo helps the foot brake", r => r.EngineRunning, (r, v) => r with { EngineRunning = v });

    internal static readonly Field<LooseningRequest, double> Ratio = F.Of(
        "ratio", Kinds.Number("13", new AcceptedRange(1, 200, "")), "turns of the engine for one turn of the wheels in that gear",
        r => r.Ratio, (r, v) => r with { Ratio = v }, leftOut: Invariant($"{Holding.Hold.UsualRatio}"), needs: [HeldBy]);

    /// <summary>Who pulls.</summary>
    internal static readonly IReadOnlyList<F> Hands = [Stance, Person, Body, Force, People, HandsIn];

    /// <summary>What holds the wheel.</summary>
    internal static readonly IReadOnlyList<F> Hold =
        [HeldBy, VehicleMass, WheelLoad, TyreRadius, Chock, Ground, HalfShafts, EngineRunning, Ratio, HoldBar, Side, OnStands];

    private static IReadOnlyList<DriveStep>? Steps(LooseningRequest request) => request is { Drive: { } drive, Adapters.Count: > 0 }
        ? [.. request.Adapters.Select((to, i) => new DriveStep(i == 0 ? drive : request.Adapters[i - 1], to))]
        : null;

    private static LooseningRequest Stepped(LooseningRequest request, IReadOnlyList<DriveStep> steps) => request.Drive is null || request.Drive == steps[0].From
        ? request with { Drive = steps[0].From, Adapters = [.. steps.Select(step => step.To)] }
        : throw new InputException("adapters", $"the first goes on a {steps[0].From} in square, and the bar's is {request.Drive} in.", new Cure("drive", steps[0].From));
}
