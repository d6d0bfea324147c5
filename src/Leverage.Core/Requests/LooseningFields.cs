using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;
using F = Leverage.Requests.Field<Leverage.Requests.LooseningRequest>;

namespace Leverage.Requests;

/// <summary>Every question about a nut and what loosens it, each defined once; every door is made of these.</summary>
internal static partial class LooseningFields
{
    internal static readonly Field<LooseningRequest, Torque> Torque = F.Of(
        "torque", Kinds.Torque("460Nm"), "what it was tightened to",
        r => r.BookTorque, (r, v) => r with { BookTorque = v }, leftOut: "75 % of proof load", inPlace: true);

    internal static readonly Field<LooseningRequest, ScrewThread> Thread = F.Of(
        "thread", Kinds.Thread, "size: M24x1.5, M24 (coarse), 1/2-20", r => r.Thread, (r, v) => r with { Thread = v });

    internal static readonly Field<LooseningRequest, string> Grade = F.Of(
        "grade", Kinds.Grade, "of bolt or stud: 8.8, SAE 5",
        r => r.Grade, (r, v) => r with { Grade = v }, leftOut: "8.8; inch SAE 5", needs: [Thread]);

    internal static readonly Field<LooseningRequest, double> Friction = F.Of(
        "friction", Kinds.Number("0.14", AcceptedRange.JointFriction), "at assembly",
        r => r.Friction, (r, v) => r with { Friction = v }, leftOut: "0.14, and 1.4 each way");

    internal static readonly Field<LooseningRequest, string> Condition = F.Of(
        "condition", Kinds.Row("conditions", "a condition", "rusted"), "clean, used, rusted, salted, … : table conditions",
        r => r.Condition, (r, v) => r with { Condition = v }, leftOut: "used");

    internal static readonly Field<LooseningRequest, Torque> Prevailing = F.Of(
        "prevailing", Kinds.Torque("15Nm"), "a locknut's own grip", r => r.Prevailing, (r, v) => r with { Prevailing = v });

    internal static readonly Field<LooseningRequest, bool> LeftHand = F.Flag(
        "left-hand", "left-hand thread: turn clockwise to loosen", r => r.LeftHand, (r, v) => r with { LeftHand = v });

    internal static readonly Field<LooseningRequest, bool> Soaked = F.Flag(
        "soaked", "soaked in penetrant for a day", r => r.Soaked, (r, v) => r with { Soaked = v });

    internal static readonly Field<LooseningRequest, HeatedPart> Heat = F.Of(
        "heat", Kinds.Choice(("stud", HeatedPart.Stud), ("nut", HeatedPart.Nut), ("housing", HeatedPart.Housing)), "part heated",
        r => r.Heat, (r, v) => r with { Heat = v }, needs: [Thread]);

    internal static readonly Field<LooseningRequest, TemperatureDelta> By = F.Of(
        "by", Kinds.Warming("150C"), "how much hotter than the rest: 150C",
        r => r.HeatedBy, (r, v) => r with { HeatedBy = v }, needs: [Heat]);

    internal static readonly Field<LooseningRequest, Length> Hex = F.Of(
        "hex", Kinds.AcrossFlats, "width across flats: 36mm, 15/16",
        r => r.AcrossFlats, (r, v) => r with { AcrossFlats = v }, leftOut: "standard nut of the thread");

    internal static readonly Field<LooseningRequest, ToolKind> Tool = F.Of(
        "tool", Kinds.Choice(("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key)),
        "what turns it", r => r.Tool, (r, v) => r with { Tool = v }, leftOut: "socket");

    internal static readonly Field<LooseningRequest, string> Drive = F.Of(
        "drive", Kinds.Drive, "square: 1/4 3/8 1/2 3/4 1 in, 12.5mm", r => r.Drive, (r, v) => r with { Drive = v });

    internal static readonly Field<LooseningRequest, Length> Bar = F.Of(
        "bar", Kinds.Length("600mm"), "bar, square to end (spanner or key: its length)", r => r.Bar, (r, v) => r with { Bar = v });

    internal static readonly Field<LooseningRequest, Length> BarDiameter = F.Of(
        "bar-diameter", Kinds.Length("18mm"), "of its handle",
        r => r.BarDiameter, (r, v) => r with { BarDiameter = v }, leftOut: "by drive", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Pressure> BarYield = F.Of(
        "bar-yield", Kinds.Stress("900MPa"), "yield of its steel",
        r => r.BarYield, (r, v) => r with { BarYield = v }, leftOut: "900MPa", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Length> BarStraight = F.Of(
        "bar-straight", Kinds.Length("450mm"), "how far from its end a tube can go on",
        r => r.StraightHandle, (r, v) => r with { StraightHandle = v }, leftOut: "usual share of its drive", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Angle> BarTaper = F.Of(
        "bar-taper", Kinds.Angle("1deg", 20), "taper of the handle to its end",
        r => r.Taper, (r, v) => r with { Taper = v }, leftOut: "0deg", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Length> BarPin = F.Of(
        "bar-pin", Kinds.Length("8mm"), "diameter of the pin of a flex head", r => r.BarPin, (r, v) => r with { BarPin = v }, needs: [Bar]);

    internal static readonly Field<LooseningRequest, Length> BarPinPlanes = F.Of(
        "bar-pin-planes", Kinds.Length("14mm"), "thickness of the tang that pin runs through",
        r => r.BarPinPlanes, (r, v) => r with { BarPinPlanes = v }, needs: [BarPin]);

    internal static readonly Field<LooseningRequest, TubeText> Tube = F.Of(
        "tube", Kinds.Tube, "outside x wall x length, 33.7x3.2x1000mm; jack:1100mm",
        r => r.Tube, (r, v) => r with { Tube = v with { Bore = v.Bore ?? r.Tube?.Bore } }, needs: [Bar]);

    internal static readonly Field<LooseningRequest, Length> Bore = F.Of(
        "bore", Kinds.Length("30mm"), "measured bore of tube or jack handle", r => r.Tube?.Bore, (r, v) => r with
        {
            Tube = r.Tube is { } tube ? tube with { Bore = v } : throw new InputException("bore", "says nothing without tube.", Tube!.Cure),
        });

    internal static readonly Field<LooseningRequest, Pressure> TubeYield = F.Of(
        "tube-yield", Kinds.Stress("235MPa"), "yield of its steel",
        r => r.TubeYield, (r, v) => r with { TubeYield = v }, leftOut: "235MPa", needs: [Tube]);

    internal static readonly Field<LooseningRequest, Length> Overlap = F.Of(
        "overlap", Kinds.Length("250mm"), "how far it goes on",
        r => r.Overlap, (r, v) => r with { Overlap = v }, leftOut: "all the straight handle", needs: [Tube]);

    internal static readonly Field<LooseningRequest, string> Surface = F.Of(
        "surface", Kinds.Row("handle-friction", "a state of the surface", "dry"), "of the bar: dry, chrome, rusty, oily, greasy",
        r => r.Surface, (r, v) => r with { Surface = v }, leftOut: "dry");

    internal static readonly Field<LooseningRequest, double> SurfaceFriction = F.Of(
        "surface-friction", Kinds.Number("0.20", AcceptedRange.SurfaceFriction), "of tube on bar, instead of surface",
        r => r.SurfaceFriction, (r, v) => r with { SurfaceFriction = v });

    internal static readonly Field<LooseningRequest, Angle> PastSquare = F.Of(
        "past-square", Kinds.Angle("30deg", 80), "where the swing ends, past square",
        r => r.PastSquare, (r, v) => r with { PastSquare = v }, leftOut: "30deg");

    /// <summary>The nut.</summary>
    internal static readonly IReadOnlyList<F> Nut = [Torque, Thread, Grade, Friction, Condition, Prevailing, LeftHand, Soaked, Heat, By, Hex, Tool];

    /// <summary>What is known of a bar.</summary>
    internal static readonly IReadOnlyList<F> BarParts = [Bar, BarDiameter, BarYield, BarStraight, BarTaper, BarPin, BarPinPlanes];

    /// <summary>What is known of a tube.</summary>
    internal static readonly IReadOnlyList<F> TubeParts = [Tube, Bore, TubeYield];

    /// <summary>How a tube sits on its bar and how far it swings.</summary>
    internal static readonly IReadOnlyList<F> Grip = [Surface, SurfaceFriction, PastSquare];

    /// <summary>Everything, in the order that help and forms show it.</summary>
    internal static IReadOnlyList<F> All => field ??= [.. Nut, Drive, .. BarParts, .. TubeParts, Overlap, .. Grip, .. Hands, StandOff, .. Hold];

    /// <summary>The questions about a tube on a bar.</summary>
    internal static IReadOnlyList<F> Slip => field ??= [.. BarParts, .. TubeParts, Overlap, .. Grip, .. Hands, Drive, Condition, StandOff, Engagement];

    /// <summary>The questions that are the same for every set-up out of a chest.</summary>
    internal static IReadOnlyList<F> Pick => field ??= [.. Nut, .. Hands.Where(hand => hand != Stance), .. Grip, .. Hold];
}
