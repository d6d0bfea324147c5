using Leverage.Threads;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using UnitsNet;

namespace Leverage.Workshop.Sheets;

/// <summary>Sizes of fasteners and of what turns them, in words.</summary>
internal static class SizePhrases
{
    /// <summary>What it is: "M10, 17 mm hex".</summary>
    internal static string Kind(JobFastener fastener, UnitStyle units)
    {
        return string.Join(", ", ((string[])[fastener.Thread?.Printed ?? "", Hex(fastener, units)]).Where(words => words.Length > 0));
    }

    /// <summary>Its hexagon: "17 mm hex"; empty where it is not said.</summary>
    internal static string Hex(JobFastener fastener, UnitStyle units) =>
        fastener.AcrossFlats is { } flats ? $"{Width(fastener, units).Length(flats)} hex" : "";

    /// <summary>A width across flats is told as its thread is: a 36 mm socket is no 1.417 in one.</summary>
    internal static UnitStyle Width(JobFastener fastener, UnitStyle units) => fastener.Thread?.Family switch
    {
        null => units,
        ThreadFamily.Unified => UnitStyle.Us,
        _ => UnitStyle.Metric,
    };

    /// <summary>Sizes of tools, in millimetres or inches as each is: "13, 16, 18 mm, 1-1/8 in".</summary>
    internal static string Several(IReadOnlyList<Length> sizes) => string.Join(", ", sizes.ToLookup(IsInch).OrderBy(group => group.Key)
        .Select(group => string.Join(", ", group.Select(size => PartWords.Flats(size, group.Key ? UnitStyle.Us : UnitStyle.Metric)[..^3])) + (group.Key ? " in" : " mm")));

    /// <summary>Whether a width is a fraction of an inch, and no whole millimetre.</summary>
    private static bool IsInch(Length size) => Math.Abs(size.Millimeters - Math.Round(size.Millimeters)) > 0.05
        && PartWords.Flats(size, UnitStyle.Us).EndsWith("in", StringComparison.Ordinal);
}
