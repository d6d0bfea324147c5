using System.Globalization;
using Leverage.Proof;

namespace Leverage.Cli.Output;

/// <summary>The states of a joint beside what was measured of them, in words.</summary>
internal static class EvidenceWords
{
    /// <summary>Lays out one line a state that has figures.</summary>
    internal static void Write(TextPage page, IReadOnlyList<ConditionEvidence> evidence)
    {
        if (evidence.Count == 0)
        {
            return;
        }

        page.Space();
        page.Line("Measured loosening torques beside their state; so many in 100 take less:");
        foreach (ConditionEvidence state in evidence.Where(one => one.Finding != EvidenceFinding.None))
        {
            string figures = string.Join("; ", state.Ratios.Select(Figure));
            page.Entry("·", $"{state.Condition} {Finding(state)}: {figures}");
        }
    }

    private static string Finding(ConditionEvidence state) => state.Finding switch
    {
        EvidenceFinding.TooLow => $"looks too low{Times(state)}",
        EvidenceFinding.TooHigh => $"looks too high{Times(state)}",
        _ => "fits",
    };

    private static string Times(ConditionEvidence state) =>
        state.OverMedian is { } times ? string.Create(CultureInfo.InvariantCulture, $", figures {times:0.0} × its median") : "";

    private static string Figure(MeasuredRatio ratio) => $"{ratio.Key} {Percentiles(ratio)}";

    private static string Percentiles(MeasuredRatio ratio)
    {
        string[] places = [.. new[] { ratio.Low, ratio.Typical, ratio.High }.Where(figure => figure is not null).Select(figure => Place(ratio, figure))];
        return string.Join(", ", places);
    }

    private static string Place(MeasuredRatio ratio, double? figure) => ratio.ShareBelow(figure) is { } share
        ? string.Create(CultureInfo.InvariantCulture, $"{figure} × ({Math.Clamp(100 * share, 0.1, 99.9):0.#} in 100)")
        : string.Create(CultureInfo.InvariantCulture, $"{figure} ×");
}
