using SkiaSharp;

namespace Leverage.Charts;

/// <summary>Small shapes that several drawings use.</summary>
internal static class Shapes
{
    /// <summary>A dot with a white rim.</summary>
    internal static void Dot(SKCanvas canvas, SKPoint at, float radius, SKColor color)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = SKColors.White };
        canvas.DrawCircle(at, radius + 2, paint);
        paint.Color = color;
        canvas.DrawCircle(at, radius, paint);
    }

    /// <summary>A diamond with a white rim.</summary>
    internal static void Diamond(SKCanvas canvas, SKPoint at, float radius, SKColor color)
    {
        using var paint = new SKPaint { IsAntialias = true };
        foreach (var (half, ink) in new[] { (radius + 3, SKColors.White), (radius, color) })
        {
            using var path = new SKPath();
            path.AddPoly([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], close: true);
            paint.Color = ink;
            canvas.DrawPath(path, paint);
        }
    }

    /// <summary>A thin upright or level line of dashes.</summary>
    internal static void Dashes(SKCanvas canvas, SKPoint from, SKPoint to, SKColor color)
    {
        using var line = new SKPaint { Color = color, IsAntialias = true, StrokeWidth = 1.5f };
        float length = SKPoint.Distance(from, to);
        SKPoint At(float along) => new(from.X + (to.X - from.X) * along / length, from.Y + (to.Y - from.Y) * along / length);
        for (float at = 0; at < length; at += 12)
        {
            canvas.DrawLine(At(at), At(Math.Min(at + 6, length)), line);
        }
    }
}
