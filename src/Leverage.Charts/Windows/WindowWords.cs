using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Windows;

/// <summary>What a window says in words.</summary>
internal static class WindowWords
{
    private const string Bands = "Bands: one case in ten lies below, one in ten above.";
    private const string Dashes = " Dashed: not confirmed.";

    /// <summary>The answer in a line.</summary>
    internal static string Answer(ForceWindow window, UnitStyle units)
    {
        if (window.NoLengthHelps is { } link)
        {
            return $"No length helps: the {PartWords.Fails(link, units)} before the nut is likely to turn.";
        }

        if (window.Works is not { } works)
        {
            return "No length on this chart is likely to work: the hands or a part are too weak.";
        }

        return $"Likely to work {Stretch(window, works, units)}{Yours(window, works, units)}.{Overpowered(window, units)}";
    }

    private static string Stretch(ForceWindow window, (double FromMm, double ToMm) works, UnitStyle units)
    {
        string from = units.Any(Length.FromMillimeters(works.FromMm));
        bool open = works.ToMm >= window.ReachMm[^1];
        return open && works.FromMm <= window.ReachMm[0]
            ? "at any reach shown"
            : open ? $"with a reach from {from} up" : $"with a reach from {from} to {units.Any(Length.FromMillimeters(works.ToMm))}";
    }

    /// <summary>Whether the answer is that it will not work as it stands.</summary>
    internal static bool Warns(ForceWindow window) =>
        window.NoLengthHelps is not null || window.Works is not { } works || !Within(window.YourReachMm, works)
        || Weaker(window) is not null;

    /// <summary>Notes below the chart.</summary>
    internal static List<string> Notes(ForceWindow window, WindowScale scale, UnitStyle units)
    {
        var notes = new List<string>();
        if (scale.HandsAbove)
        {
            notes.Add($"Your force, {Span(window.HandLowN, window.HandHighN, units)}, is far above this chart: watch the limits.");
        }

        notes.Add(string.Concat(Bands, scale.Shown.Any(i => !window.Limits[i].Link.Confirmed) ? Dashes : string.Empty));
        if (scale.Above.Count > 0)
        {
            notes.Add($"Above this chart: {string.Join(", ", scale.Above.Select(i => PartWords.Name(window.Limits[i].Link, units)))}.");
        }

        if (window.NotJudged.Count > 0)
        {
            notes.Add($"Not judged: {string.Join(", ", window.NotJudged.Select(PartWords.Name))}.");
        }

        return notes;
    }

    /// <summary>Two forces with one unit.</summary>
    internal static string Span(double fromN, double toN, UnitStyle units) =>
        $"{UnitStyle.Figures(units.ForceValue(Force.FromNewtons(fromN)))} to {units.Force(Force.FromNewtons(toN))}";

    private static bool Within(double? reachMm, (double FromMm, double ToMm) works) =>
        reachMm is not { } reach || (reach >= works.FromMm && reach <= works.ToMm);

    /// <summary>A warning where the likely force of the hands is more than a part stands at this set-up's length.</summary>
    private static string Overpowered(ForceWindow window, UnitStyle units) => Weaker(window) is { } weaker
        ? $" At your likely force there the {PartWords.Fails(weaker.Link, units)}."
        : string.Empty;

    private static LimitCurve? Weaker(ForceWindow window)
    {
        if (window.YourReachMm is not { } reach)
        {
            return null;
        }

        int at = Enumerable.Range(0, window.ReachMm.Count).MinBy(i => Math.Abs(window.ReachMm[i] - reach));
        return window.Limits.Where(limit => limit.ForceN[at] < window.HandLikelyN).MinBy(limit => limit.ForceN[at]);
    }

    private static string Yours(ForceWindow window, (double FromMm, double ToMm) works, UnitStyle units)
    {
        if (window.YourReachMm is not { } reach)
        {
            return string.Empty;
        }

        string yours = units.Any(Length.FromMillimeters(reach));
        return Within(reach, works)
            ? $"; yours is {yours}"
            : $"; yours, {yours}, is too {(reach < works.FromMm ? "short" : "long")}";
    }
}
