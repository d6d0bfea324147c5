using Leverage.Charts.Labels;
using SkiaSharp;

namespace Leverage.Charts.Windows;

/// <summary>This set-up on the chart: an upright line at its length, a bar from the easy to the hard need, a dot at the likely.</summary>
internal sealed class SetupMark
{
    private const float Half = 9;
    private readonly LabelBox _area;
    private readonly float _low;
    private readonly float _high;
    private readonly bool _above;

    /// <summary>The mark between the pixels of the easy and the hard need, held inside the area.</summary>
    internal SetupMark(SKPoint low, SKPoint likely, SKPoint high, LabelBox area)
    {
        _area = area;
        X = likely.X;
        _above = likely.Y < area.Top + Half;
        _low = Math.Clamp(low.Y, area.Top, area.Bottom);
        _high = Math.Clamp(high.Y, area.Top, area.Bottom);
        Dot = new SKPoint(X, Math.Clamp(likely.Y, area.Top + Half, area.Bottom - 1));
    }

    /// <summary>Where the length lies.</summary>
    internal float X { get; }

    /// <summary>Where the likely need lies; at the upper edge where it is beyond it.</summary>
    internal SKPoint Dot { get; }

    /// <summary>The upright line, from the bottom.</summary>
    internal SKPoint[] Upright => [.. Enumerable.Range(0, 41).Select(i => new SKPoint(X, _area.Bottom - i * _area.Height / 40))];

    /// <summary>What the dot and bar cover.</summary>
    internal LabelBox Box => new(X - Half, Math.Min(_high, Dot.Y - Half), 2 * Half, Math.Max(_low, Dot.Y + Half) - Math.Min(_high, Dot.Y - Half));

    /// <summary>Draws it.</summary>
    internal void Draw(SKCanvas canvas)
    {
        Shapes.Dashes(canvas, new SKPoint(X, _area.Top), new SKPoint(X, _area.Bottom), Ink.Text);
        using var line = new SKPaint { Color = Ink.Text, IsAntialias = true, StrokeWidth = 4 };
        canvas.DrawLine(X, _low, X, _high, line);
        canvas.DrawLine(X - Half, _low, X + Half, _low, line);
        canvas.DrawLine(X - Half, _high, X + Half, _high, line);
        if (_above)
        {
            Arrow(canvas, Half + 2, SKColors.White);
            Arrow(canvas, Half - 1, Ink.Text);
        }
        else
        {
            Shapes.Dot(canvas, Dot, Half - 1, Ink.Text);
        }
    }

    /// <summary>An arrow upward where the need lies beyond the chart.</summary>
    private void Arrow(SKCanvas canvas, float radius, SKColor color)
    {
        using var path = new SKPath();
        path.AddPoly([new(X, Dot.Y - radius), new(X + radius, Dot.Y + radius), new(X - radius, Dot.Y + radius)], close: true);
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        canvas.DrawPath(path, paint);
    }
}
