using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts.Frames;

/// <summary>Slanted lines over an area, so that it stands out in grey too.</summary>
internal sealed class HatchLayer(SKPoint[] outline, SKColor color, float apart) : IPlottable
{
    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    public void Render(RenderPack rp)
    {
        using var clip = new SKPath();
        clip.AddPoly(outline, close: true);
        using var paint = new SKPaint { Color = color, IsAntialias = true, StrokeWidth = 1.6f, Style = SKPaintStyle.Stroke };
        SKRect area = clip.Bounds;
        rp.Canvas.Save();
        rp.Canvas.ClipPath(clip, SKClipOperation.Intersect, antialias: true);
        for (float x = area.Left - area.Height; x < area.Right; x += apart)
        {
            rp.Canvas.DrawLine(x, area.Bottom, x + area.Height, area.Top, paint);
        }

        rp.Canvas.Restore();
    }
}
