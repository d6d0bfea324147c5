using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Levers;
using Leverage.Tubes;
using Kind = Leverage.Assessments.AssumptionKind;

namespace Leverage.Wording;

/// <summary>Words of what was taken for granted.</summary>
internal static class AssumedWords
{
    /// <summary>Each assumption as a phrase.</summary>
    internal static IReadOnlyList<string> Of(IReadOnlyList<Assumption> assumed, UnitStyle style) =>
        [.. assumed.Select(one => Why(one) is { } why ? $"{Marked(one, style)} ({why})" : Marked(one, style))];

    /// <summary>The same in short, without the why, for a terminal.</summary>
    internal static string Brief(IReadOnlyList<Assumption> assumed, UnitStyle style) =>
        string.Join("; ", assumed.Select(one => Marked(one, style)));

    /// <summary>What was assumed and its value: "tube yield 195 MPa".</summary>
    internal static string Plain(Assumption one, UnitStyle style) => one.Value is { } value ? $"{What(one)} {style.Any(value)}" : What(one);

    private static string Marked(Assumption one, UnitStyle style) => Plain(one, style) + UnconfirmedWords.MarkOf(one.Status);

    private static string What(Assumption one) => one.Kind switch
    {
        Kind.RightHandThread => "right-hand thread",
        Kind.AssemblyFriction => $"friction {UnitStyle.Friction(one.Friction!.Value.Likely)} at assembly",
        Kind.Condition => $"condition {one.Name}",
        Kind.TorqueSplit => "the common torque split",
        Kind.BearingFace => $"bearing face {UnitStyle.Trim(one.Share!.Value, 2)} × diameter",
        Kind.ClampedLength => "clamped length",
        Kind.Grade => $"grade {one.Name}",
        Kind.StartAsOthers => "tightened as others of its kind",
        Kind.StartByThread => "tightened by the size of its thread",
        Kind.AcrossFlats => "across flats",
        Kind.HexagonNotJudged => "hexagon not judged",
        Kind.CornerWear => one.Words!,
        Kind.HexagonSteel => "an old nut's steel",
        Kind.DriveNotJudged => "drive square not judged",
        Kind.Stance => one.Words!,
        Kind.Man => "a man",
        Kind.BodyMass => "body mass",
        Kind.LeverWeight => "lever's own weight left out",
        Kind.BarDiameter => "bar",
        Kind.BarNotJudged => "bar bending not judged",
        Kind.BarYield => "bar yield",
        Kind.TubeYield => "tube yield",
        Kind.JackHandle => "jack handle carries at its end",
        Kind.DentNotJudged => "denting not judged",
        Kind.Overlap => "tube pushed on",
        Kind.StraightHandle => "straight handle",
        Kind.SwingEnd => "end of the swing, past square",
        Kind.Surface => $"surface {one.Name}",
        Kind.TorqueLeft => $"{UnitStyle.Trim(one.Share!.Value, 2)} of the torque is left once the nut turns",
        Kind.HoldNotJudged => "hold not judged",
        Kind.Ground => one.Name!.Replace('-', ' '),
        Kind.VehicleMass => "vehicle",
        Kind.WheelLoad => "wheel load",
        Kind.TyreRadius => "tyre radius",
        Kind.Chock => "chock",
        Kind.ThreadBySight => $"thread {one.Name}",
        Kind.BearingMean => "mean bearing face",
        Kind.ClampsSteel => "clamping steel",
        Kind.Torsion => one.Share == Preload.TensionAndTorsion.Plastic ? "torsion plastic" : "torsion elastic",
        Kind.ShareOfStrip => $"set to {UnitStyle.Percent(one.Share!.Value)} of what strips the thread",
        Kind.TwoPull => "two pull four thirds of what one does",
        _ => "both half shafts in, both wheels down",
    };

    private static string? Why(Assumption one) => one.Kind switch
    {
        Kind.AssemblyFriction => $"{UnitStyle.Friction(one.Friction!.Value.Low)} to {UnitStyle.Friction(one.Friction.Value.High)}",
        Kind.Condition => one.Words ?? "usual there",
        Kind.TorqueSplit => $"no thread given: {UnitStyle.Percent(JointAssembly.CommonPitchPart)} pitch, "
            + $"{UnitStyle.Percent(JointAssembly.CommonThreadPart)} thread, {UnitStyle.Percent(JointAssembly.CommonFacePart)} face",
        Kind.BearingFace => "not in the tables for this size",
        Kind.ClampedLength => $"{UnitStyle.Trim(one.Share!.Value, 1)} diameters",
        Kind.AcrossFlats => "standard nut of this thread",
        Kind.HexagonNotJudged => "its width is not given",
        Kind.DriveNotJudged => "its size is not given",
        Kind.BodyMass => "survey median",
        Kind.LeverWeight => one.Name switch
        {
            nameof(Push.Down) => "it helps a push down a little",
            nameof(Push.Up) => "it hinders a lift a little",
            _ => "it neither helps nor hinders much",
        },
        Kind.BarDiameter => $"usual for a {one.Name} in drive; measure it",
        Kind.BarNotJudged => "its diameter is not given",
        Kind.TubeYield => "the weakest tube steel",
        Kind.JackHandle => Tube.JackHandleStandard,
        Kind.DentNotJudged => "the wall of a jack handle is not known",
        Kind.Overlap => "all the bar's straight handle",
        Kind.StraightHandle => "usual share of the bar",
        Kind.Surface => $"friction {UnitStyle.Fixed(one.Friction!.Value.Low, 2)} in the check",
        Kind.TorqueLeft => $"condition {one.Name}",
        Kind.HoldNotJudged => "nothing is said to hold it",
        Kind.VehicleMass => "its mass is not given",
        Kind.WheelLoad => "a quarter of the vehicle",
        Kind.TyreRadius => "usual car tyre",
        Kind.Chock => "a third of the wheel's radius; measure it",
        Kind.ThreadBySight => "the one with this hexagon",
        Kind.BearingMean => "ISO 4014 head, ISO 273 hole",
        Kind.Torsion => one.Share == Preload.TensionAndTorsion.Plastic ? "VDI 2230 since 2001" : "older tables",
        _ => null,
    };
}
