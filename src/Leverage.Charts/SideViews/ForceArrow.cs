using SkiaSharp;

namespace Leverage.Charts.SideViews;

/// <summary>A force drawn as an arrow.</summary>
/// <param name="Words">What it is and how large.</param>
/// <param name="From">Its tail.</param>
/// <param name="To">Its head.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Dashed">Whether it is a part of another force.</param>
internal sealed record ForceArrow(string Words, SKPoint From, SKPoint To, SKColor Color, bool Dashed)
{
    private const float Head = 17;
    private const float HeadHalf = 9;

    /// <summary>Its shaft and the two edges of its head, to keep labels off them.</summary>
    internal IEnumerable<SKPoint[]> Outlines()
    {
        var (along, neck) = Neck();
        var side = new SKPoint(along.Y, -along.X);
        return
        [
            [From, To],
            [SketchGeometry.Moved(neck, side, HeadHalf), To, SketchGeometry.Moved(neck, side, -HeadHalf)],
        ];
    }

    private (SKPoint Along, SKPoint Neck) Neck()
    {
        SKPoint run = To - From;
        float length = Math.Max(1, run.Length);
        var along = new SKPoint(run.X / length, run.Y / length);
        return (along, SketchGeometry.Moved(To, along, -Math.Min(Head, length)));
    }

    /// <summary>Draws it.</summary>
    internal void Draw(SKCanvas canvas)
    {
        using var paint = new SKPaint { Color = Color, IsAntialias = true, StrokeWidth = 5, Style = SKPaintStyle.Stroke };
        var (along, neck) = Neck();
        if (Dashed)
        {
            Dash(canvas, neck, along, paint);
        }
        else
        {
            canvas.DrawLine(From, neck, paint);
        }

        using var path = new SKPath();
        var side = new SKPoint(along.Y, -along.X);
        path.AddPoly([To, SketchGeometry.Moved(neck, side, HeadHalf), SketchGeometry.Moved(neck, side, -HeadHalf)], close: true);
        paint.Style = SKPaintStyle.Fill;
        canvas.DrawPath(path, paint);
    }

    private void Dash(SKCanvas canvas, SKPoint neck, SKPoint along, SKPaint paint)
    {
        float length = SKPoint.Distance(From, neck);
        for (float at = 0; at < length; at += 14)
        {
            canvas.DrawLine(
                SketchGeometry.Moved(From, along, at), SketchGeometry.Moved(From, along, Math.Min(at + 9, length)), paint);
        }
    }
}
