using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Whether pieces go together, and how far a tube can go on.</summary>
internal static class Fit
{
    /// <summary>Overlaps tried for each tube on each bar.</summary>
    internal const int Overlaps = 10;

    /// <summary>Step overlaps are rounded to, mm: nobody pushes a tube on to the millimetre.</summary>
    private const double StepMm = 5;

    /// <summary>Difference in width a tool still grips well, mm: a 19 mm socket on 3/4 in (judgement).</summary>
    private const double WidthMm = 0.1;

    /// <summary>Longest lever there is room to swing on one's back under a vehicle, where nothing is said of it, mm (judgement).</summary>
    private const double LyingMm = 750;

    /// <summary>Whether a tool goes on a nut of a width across flats.</summary>
    internal static bool OnNut(NutTool tool, ToolKind? wanted, Length acrossFlats) =>
        IsKind(tool.Kind, wanted)
            && tool.Sizes.Any(size => Math.Abs((size - acrossFlats).Millimeters) < WidthMm);

    /// <summary>Whether a tube goes over a bar: never over a ratchet or another tool made for one hand (common practice).</summary>
    internal static bool OverBar(ChestTube tube, Bar bar) =>
        bar.Length.Millimeters >= Stance.OneHandBelowMm && bar.Diameter is { } diameter && Bore(tube.Tube) >= diameter;

    /// <summary>Whether hands have room at the end of a lever: their middle stands half their breadth from it.</summary>
    internal static bool HasRoom(double leverMm, Stance stance) => leverMm >= 2 * stance.GripOffsetMm;

    /// <summary>Room for a lever where nothing is said of it, mm.</summary>
    internal static double RoomMm(Stance stance) => stance.Posture == Posture.Lying ? LyingMm : double.PositiveInfinity;

    /// <summary>
    /// Overlaps worth trying, short to long, mm: from one bar diameter, and no less than the play, to all the straight
    /// handle with room for hands.
    /// </summary>
    internal static double[] OverlapsMm(LooseningSetup setup, Stance stance)
    {
        if (setup is not { Tube: { } tube, Bar: { Diameter: { } diameter } bar } || !HasRoom(tube.Length.Millimeters, stance))
        {
            return [];
        }

        double most = Math.Min(bar.StraightHandle.Millimeters, tube.Length.Millimeters - stance.GripOffsetMm - 1);
        double least = Math.Max(diameter.Millimeters, (tube.Bore - diameter).Millimeters);
        return [.. Enumerable.Range(1, Overlaps)
            .Select(i => Math.Floor(most * i / Overlaps / StepMm) * StepMm)
            .Where(overlap => overlap >= least)
            .Distinct()];
    }

    private static Length Bore(TubeText tube) => tube.Bore ?? tube.Outside!.Value - 2 * tube.Wall!.Value;

    private static bool IsKind(ToolKind kind, ToolKind? wanted) => wanted is { } one ? kind == one : kind != ToolKind.Key;
}
