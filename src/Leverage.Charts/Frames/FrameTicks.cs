using Leverage.Charts.Labels;
using ScottPlot.TickGenerators;
using SkiaSharp;

namespace Leverage.Charts.Frames;

/// <summary>Ticks: the plot draws the strokes, the words are ours, checked against everything else on the chart.</summary>
internal static class FrameTicks
{
    /// <summary>Strokes without words.</summary>
    internal static NumericManual Silent(Scale scale)
    {
        var ticks = new NumericManual();
        foreach (double tick in scale.Ticks())
        {
            ticks.AddMajor(tick, string.Empty);
        }

        return ticks;
    }

    /// <summary>Words below, at the left, and at the right where there is a second axis.</summary>
    internal static IEnumerable<ChartText> Words(LabelBox area, float size, Scale across, Scale up, Scale? right)
    {
        var look = new TextLook(size, false, Ink.Quiet);
        foreach (double tick in across.Ticks())
        {
            var at = new SKPoint((float)(area.Left + across.Share(tick) * area.Width), area.Bottom + 14);
            yield return ChartText.Held(across.Words(tick), at, 0.5f, 0, look);
        }

        foreach (double tick in up.Ticks())
        {
            yield return ChartText.Held(up.Words(tick), new SKPoint(area.Left - 8, Height(area, up, tick)), 1, 0.5f, look);
        }

        foreach (double tick in right?.Ticks() ?? [])
        {
            yield return ChartText.Held(right!.Words(tick), new SKPoint(area.Right + 8, Height(area, right, tick)), 0, 0.5f, look);
        }
    }

    private static float Height(LabelBox area, Scale scale, double tick) =>
        (float)(area.Bottom - scale.Share(tick) * area.Height);
}
