using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>A thin line from a label to what it names.</summary>
/// <param name="From">At the label.</param>
/// <param name="To">At what it names.</param>
/// <param name="Dot">Whether it ends in a dot.</param>
internal sealed record Leader(SKPoint From, SKPoint To, bool Dot)
{
    /// <summary>Draws it.</summary>
    internal void Draw(SKCanvas canvas, SKColor color)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = color, StrokeWidth = 1.5f };
        canvas.DrawLine(From, To, paint);
        if (Dot)
        {
            canvas.DrawCircle(To, 4, paint);
        }
    }
}
