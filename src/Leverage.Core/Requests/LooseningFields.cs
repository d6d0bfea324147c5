using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;
using static System.FormattableString;
using F = Leverage.Requests.Field<Leverage.Requests.LooseningRequest>;

namespace Leverage.Requests;

/// <summary>Every question about a nut and what loosens it, each defined once; every door is made of these.</summary>
internal static partial class LooseningFields
{
    internal static readonly Field<LooseningRequest, TorqueAndTurn> Torque = F.Of(
        "torque", Kinds.TorqueAndTurn("460Nm"), "what the nut was tightened to: 460Nm, '100Nm + 90deg'",
        r => r.BookTorque is { } torque ? new TorqueAndTurn(torque, r.Then) : null,
        (r, v) => r with { BookTorque = v.Torque, Then = v.Turn }, leftOut: "a guess by what you can see", inPlace: true);

    internal static readonly Field<LooseningRequest, ScrewThread> Thread = F.Of(
        "thread", Kinds.Thread, "size: M24x1.5, M24 (coarse), 1/2-20", r => r.Thread, (r, v) => r with { Thread = v });

    internal static readonly Field<LooseningRequest, string> Grade = F.Of(
        "grade", Kinds.Grade, "of bolt or stud: 8.8, SAE 5",
        r => r.Grade, (r, v) => r with { Grade = v }, leftOut: $"{Kinds.UsualGrade}; on a wheel 10.9, inch SAE 8", needs: [Thread]);

    internal static readonly Field<LooseningRequest, double> Friction = F.Of(
        "friction", Kinds.Number("0.14", AcceptedRange.JointFriction), "of the thread when it was tightened",
        r => r.Friction, (r, v) => r with { Friction = v }, leftOut: Invariant($"{FrictionRange.Default}, from {FrictionRange.Unknown.Low:0.00} to {FrictionRange.Unknown.High:0.00}"));

    internal static readonly Field<LooseningRequest, string> Condition = F.Of(
        "condition", Kinds.Row("conditions", "a condition", "rusted"), "clean, used, rusted, salted, … : table conditions",
        r => r.Condition, (r, v) => r with { Condition = v }, leftOut: $"{BreakLoose.Condition.Usual}; road wheel rusted, exhaust heat-rusted");

    internal static readonly Field<LooseningRequest, Torque> Prevailing = F.Of(
        "prevailing", Kinds.Torque("15Nm"), "torque a locknut takes to turn with nothing clamped", r => r.Prevailing, (r, v) => r with { Prevailing = v });

    internal static readonly Field<LooseningRequest, bool> LeftHand = F.Flag(
        "left-hand", "left-hand thread: turn clockwise to loosen", r => r.LeftHand, (r, v) => r with { LeftHand = v });

    internal static readonly Field<LooseningRequest, IReadOnlyList<SpecialJoint>> Joint = F.Of(
        "joint", Kinds.Joints, "castle,through-bolt,ball-joint: what to do before any pull",
        r => r.Joints.Count > 0 ? r.Joints : null, (r, v) => r with { Joints = v });

    internal static readonly Field<LooseningRequest, bool> Soaked = F.Flag(
        "soaked", "soaked in penetrant for a day", r => r.Soaked, (r, v) => r with { Soaked = v });

    internal static readonly Field<LooseningRequest, HeatedPart> Heat = F.Of(
        "heat", Kinds.Choice(("stud", HeatedPart.Stud), ("nut", HeatedPart.Nut), ("housing", HeatedPart.Housing)), "part you heat",
        r => r.Heat, (r, v) => r with { Heat = v }, needs: [Thread]);

    internal static readonly Field<LooseningRequest, TemperatureDelta> By = F.Of(
        "by", Kinds.TemperatureDifference("150C"), "how much hotter that part is than the rest: 150C",
        r => r.HeatedBy, (r, v) => r with { HeatedBy = v }, needs: [Heat]);

    internal static readonly Field<LooseningRequest, Length> Hex = F.Of(
        "hex", Kinds.AcrossFlats, "width across flats: 36mm, 15/16",
        r => r.AcrossFlats, (r, v) => r with { AcrossFlats = v }, leftOut: "standard nut of the thread");

    internal static readonly Field<LooseningRequest, ToolKind> Tool = F.Of(
        "tool", Kinds.Choice(("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key)),
        "what turns it", r => r.Tool, (r, v) => r with { Tool = v }, leftOut: "socket");

    internal static readonly Field<LooseningRequest, Length> ToolSize = F.Of(
        "tool-size", Kinds.AcrossFlats, "its marked size where that is not the nut's: 24mm on 15/16",
        r => r.ToolSize, (r, v) => r with { ToolSize = v }, leftOut: "the nut's", needs: [Hex]);

    internal static readonly Field<LooseningRequest, string> On = F.Of(
        "on", Kinds.Place, "where it sits: hub, wheel, crank, … : table places", r => r.On, (r, v) => r with { On = v });

    internal static readonly Field<LooseningRequest, Torque> Held = F.Of(
        "held", Kinds.Torque("300Nm"), "torque at which this nut stayed tight", r => r.Held, (r, v) => r with { Held = v });

    internal static readonly Field<LooseningRequest, IReadOnlyList<Torque>> Came = F.Of(
        "came", Kinds.Torques, "torques at which nuts like it came loose, commas between",
        r => r.Came.Count > 0 ? r.Came : null, (r, v) => r with { Came = v });

    internal static readonly Field<LooseningRequest, int> Count = F.Of(
        "count", Kinds.Count("5", new AcceptedRange(1, 1000, "")), "how many alike", r => r.Count, (r, v) => r with { Count = v }, leftOut: "1");

    internal static readonly Field<LooseningRequest, int> Points = F.Of(
        "points", Kinds.Choice(("6", 6), ("12", 12)), "points of socket or ring", r => r.Points, (r, v) => r with { Points = v }, leftOut: "6");

    internal static readonly Field<LooseningRequest, string> Worn = F.Of(
        "worn", Kinds.Row("corner-wear", "a wear of corners", "worn"), "corners: new, worn, rounded",
        r => r.Worn, (r, v) => r with { Worn = v }, leftOut: "worn where rusted, else new");

    internal static readonly Field<LooseningRequest, double> Engaged = F.Of(
        "engaged", Kinds.Share("40%"), "share of the hexagon's height the tool covers", r => r.Engaged, (r, v) => r with { Engaged = v }, leftOut: Invariant($"{100 * UsualValues.Engaged}%"));

    internal static readonly Field<LooseningRequest, string> NutClass = F.Of(
        "nut-class", Kinds.Row("nut-classes", "a class of nut", "8"), "class stamped on the nut: 5 6 8 10 12; head for a bolt",
        r => r.NutClass, (r, v) => r with { NutClass = v }, leftOut: $"{Corners.NutClass.Unknown}, weak steel");

    internal static readonly Field<LooseningRequest, Length> ClampedLength = F.Of(
        "grip", Kinds.Length("45mm"), "length the bolt clamps", r => r.Grip, (r, v) => r with { Grip = v }, leftOut: Kinds.UsualGrip, needs: [Thread]);

    internal static readonly Field<LooseningRequest, string> Clamped = F.Of(
        "clamped", Kinds.Row("clamped-materials", "a clamped material", "steel"), "what it clamps", r => r.Clamped, (r, v) => r with { Clamped = v }, leftOut: "steel", needs: [Thread]);

    internal static readonly Field<LooseningRequest, string> Drive = F.Of(
        "drive", Kinds.Drive, "square: 1/4 3/8 1/2 3/4 1 in, 12.5mm", r => r.Drive, (r, v) => r with { Drive = v });

    internal static readonly Field<LooseningRequest, IReadOnlyList<DriveStep>> Adapters = F.Of(
        "adapters", Kinds.Adapters, "between bar and socket, bar side first: 3/4-1/2", Steps, Stepped);

    internal static readonly Field<LooseningRequest, Length> Extension = F.Of(
        "extension", Kinds.Length("125mm"), "length of an extension between bar and socket",
        r => r.Extension, (r, v) => r with { Extension = v }, needs: [Drive]);

    internal static readonly Field<LooseningRequest, Length> Bar = F.Of(
        "bar", Kinds.Length("600mm"), "length of the bar, square to end; of a spanner or key", r => r.Bar, (r, v) => r with { Bar = v });

    internal static readonly Field<LooseningRequest, Length> BarDiameter = F.Of(
        "bar-diameter", Kinds.Length("18mm"), "diameter of the bar's handle",
        r => r.BarDiameter, (r, v) => r with { BarDiameter = v }, leftOut: "usual for the drive", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Pressure> BarYield = F.Of(
        "bar-yield", Kinds.Stress("900MPa"), "yield of its steel",
        r => r.BarYield, (r, v) => r with { BarYield = v }, leftOut: Invariant($"{UsualValues.BarYieldMpa}MPa"), needs: [Bar]);

    internal static readonly Field<LooseningRequest, Length> BarStraight = F.Of(
        "bar-straight", Kinds.Length("450mm"), "how far from its end a tube can go on",
        r => r.StraightHandle, (r, v) => r with { StraightHandle = v }, leftOut: "usual share of its drive", needs: [Bar]);

    internal static readonly Field<LooseningRequest, Angle> BarTaper = F.Of(
        "bar-taper", Kinds.Angle("1deg", 20), "taper of the handle towards its end",
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
            Tube = r.Tube is { } tube ? tube with { Bore = v } : throw new InputException("bore", "is of no use without tube.", Tube!.Cure),
        });

    internal static readonly Field<LooseningRequest, Pressure> TubeYield = F.Of(
        "tube-yield", Kinds.Stress("235MPa"), "yield of its steel",
        r => r.TubeYield, (r, v) => r with { TubeYield = v }, leftOut: Invariant($"{UsualValues.TubeYieldMpa}MPa"), needs: [Tube]);

    internal static readonly Field<LooseningRequest, Length> Overlap = F.Of(
        "overlap", Kinds.Length("250mm"), "how far the tube goes on",
        r => r.Overlap, (r, v) => r with { Overlap = v }, leftOut: "all the straight handle", needs: [Tube]);

    internal static readonly Field<LooseningRequest, string> Surface = F.Of(
        "surface", Kinds.Row("handle-friction", "a state of the surface", "dry"), "of the bar's handle: dry, chrome, rusty, oily, greasy",
        r => r.Surface, (r, v) => r with { Surface = v }, leftOut: HandleSurface.Usual);

    internal static readonly Field<LooseningRequest, double> SurfaceFriction = F.Of(
        "surface-friction", Kinds.Number("0.20", AcceptedRange.SurfaceFriction), "friction of tube on bar, if you know it",
        r => r.SurfaceFriction, (r, v) => r with { SurfaceFriction = v });

    internal static readonly Field<LooseningRequest, Angle> StartPastSquare = F.Of(
        "start-past-square", Kinds.Angle("0deg", 80), "bar's angle where the pull begins; square is level for a push", r => r.StartPastSquare, (r, v) => r with { StartPastSquare = v }, leftOut: "0deg");

    internal static readonly Field<LooseningRequest, Angle> PastSquare = F.Of(
        "past-square", Kinds.Angle("30deg", 80), "bar's angle where the swing ends",
        r => r.PastSquare, (r, v) => r with { PastSquare = v }, leftOut: Invariant($"{UsualValues.PastSquareDeg}deg"));

    /// <summary>The nut.</summary>
    internal static readonly IReadOnlyList<F> Nut =
    [
        Torque, Thread, Grade, On, Friction, Condition, Held, Came, Count, Prevailing, Joint, LeftHand, Soaked, Heat, By, ClampedLength, Clamped,
        Hex, NutClass, Worn, Tool, ToolSize, Points, Engaged,
    ];

    /// <summary>What is known of a bar.</summary>
    internal static readonly IReadOnlyList<F> BarParts = [Bar, BarDiameter, BarYield, BarStraight, BarTaper, BarPin, BarPinPlanes];

    /// <summary>What is known of a tube.</summary>
    internal static readonly IReadOnlyList<F> TubeParts = [Tube, Bore, TubeYield];

    /// <summary>How a tube sits on its bar and how far it swings.</summary>
    internal static readonly IReadOnlyList<F> Grip = [Surface, SurfaceFriction, StartPastSquare, PastSquare];

    /// <summary>Everything, in the order that help and forms show it.</summary>
    internal static IReadOnlyList<F> All => field ??= [.. Nut, Drive, Adapters, Extension, .. BarParts, .. TubeParts, Overlap, .. Grip, .. Hands, Room, StandOff, .. Hold];

    /// <summary>The questions about a tube on a bar.</summary>
    internal static IReadOnlyList<F> Slip => field ??= [Torque, .. BarParts, .. TubeParts, Overlap, .. Grip, .. Hands, Drive, Condition, Thread, Grade, ClampedLength, Clamped, StandOff, Engagement];

    /// <summary>The questions that are the same for every set-up out of a chest.</summary>
    internal static IReadOnlyList<F> Pick => field ??= [.. Nut, .. Hands.Where(hand => hand != Stance && hand != HandsIn), Room, .. Grip, .. Hold];
}
