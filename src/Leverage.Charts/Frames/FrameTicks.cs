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

    /// <summary>Words below the x axis.</summary>
    internal static IEnumerable<ChartText> Below(LabelBox area, float size, Scale scale)
    {
        var look = new TextLook(size, false, Ink.Quiet);
        foreach (double tick in scale.Ticks())
        {
            var at = new SKPoint((float)(area.Left + scale.Share(tick) * area.Width), area.Bottom + 0.65f * size);
            yield return ChartText.Held(scale.Words(tick), at, 0.5f, 0, look);
        }
    }

    /// <summary>Words at the left of the y axis.</summary>
    internal static IEnumerable<ChartText> Left(LabelBox area, float size, Scale scale)
    {
        var look = new TextLook(size, false, Ink.Quiet);
        foreach (double tick in scale.Ticks())
        {
            var at = new SKPoint(area.Left - 8, (float)(area.Bottom - scale.Share(tick) * area.Height));
            yield return ChartText.Held(scale.Words(tick), at, 1, 0.5f, look);
        }
    }
}
