using Leverage.Assessments;
using Leverage.Corners;
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

    /// <summary>The tools that go on a nut: those of its size, else those of another measure one size near.</summary>
    internal static IEnumerable<NutTool> OnNut(IEnumerable<NutTool> tools, ToolKind? wanted, Length acrossFlats)
    {
        NutTool[] near = [.. tools.Where(tool => IsKind(tool.Kind, wanted) && SizeOn(tool, acrossFlats) is not null)];
        NutTool[] own = [.. near.Where(tool => IsSame(SizeOn(tool, acrossFlats)!.Value, acrossFlats))];
        return own.Length > 0 ? own : near;
    }

    /// <summary>The size of a tool that goes on a nut; null for none.</summary>
    internal static Length? SizeOn(NutTool tool, Length acrossFlats) => tool.Sizes
        .Where(size => ToolFit.IsNear(acrossFlats.Millimeters, size.Millimeters))
        .OrderBy(size => Math.Abs((size - acrossFlats).Millimeters))
        .Select(size => (Length?)size)
        .FirstOrDefault();

    /// <summary>Whether a size is the nut's own: a 19 mm socket on 3/4 in.</summary>
    internal static bool IsSame(Length size, Length acrossFlats) => Math.Abs((size - acrossFlats).Millimeters) < ToolFit.SameMm;

    /// <summary>Whether a tube goes over a bar: never over a ratchet or another tool made for one hand (common practice).</summary>
    internal static bool OverBar(ChestTube tube, Bar bar) =>
        bar.Length.Millimeters >= Stance.OneHandBelowMm && bar.Diameter is { } diameter && Bore(tube.Tube) >= diameter;

    /// <summary>Whether hands have room at the end of a lever: their middle stands half their breadth from it.</summary>
    internal static bool HasRoom(double leverMm, Stance stance) => leverMm >= 2 * stance.GripOffsetMm;

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
