using Leverage.Charts;

namespace Leverage.Page.Answering;

/// <summary>Charts that stand in one page together.</summary>
internal static class Inline
{
    /// <summary>A chart as SVG whose names start with a letter of its own, so that they do not meet another chart's.</summary>
    internal static string Svg(Chart chart, string letter) => chart.Svg()
        .Replace("id=\"p", $"id=\"{letter}", StringComparison.Ordinal)
        .Replace("#p", $"#{letter}", StringComparison.Ordinal);
}
