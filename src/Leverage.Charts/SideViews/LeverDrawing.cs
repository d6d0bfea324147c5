using Leverage.LoadPath;
using SkiaSharp;

namespace Leverage.Charts.SideViews;

/// <summary>Draws nut, bar, tube cut open, hands and the angle past square.</summary>
internal sealed class LeverDrawing(SketchGeometry place)
{
    /// <summary>Draws the lever.</summary>
    internal void Draw(SKCanvas canvas)
    {
        Angle(canvas);
        Bar(canvas);
        Tube(canvas);
        Nut(canvas);
        Hands(canvas);
        Torque(canvas);
        Gives(canvas);
    }

    /// <summary>Outlines of bar, tube and angle, to keep labels off them.</summary>
    internal IEnumerable<SKPoint[]> Outlines()
    {
        yield return [place.Nut, SquareEnd];
        yield return Arc;
        yield return [place.Nut, place.OnBar(place.Sketch.BarMm, 0)];
        yield return [place.OnBar(0, place.BarHalf), place.OnBar(place.Sketch.BarMm, place.BarHalf)];
        yield return [place.OnBar(0, -place.BarHalf), place.OnBar(place.Sketch.BarMm, -place.BarHalf)];
        if (place.Sketch.Gives is { } part)
        {
            yield return [.. Ring(part.Kind)];
        }

        if (place.Sketch.Tube is { } tube)
        {
            foreach (float side in new[] { -place.TubeHalf, 0, place.TubeHalf })
            {
                yield return [place.OnTube(0, side), place.OnTube(tube.LengthMm, side)];
            }
        }
    }

    /// <summary>Radius of the angle's arc, pixels.</summary>
    internal float ArcRadius => 0.42f * SKPoint.Distance(place.Nut, place.Hands);

    /// <summary>A point of the angle's arc.</summary>
    internal SKPoint OnArc(double pastRad) => SketchGeometry.Moved(place.Nut, place.Direction(pastRad), ArcRadius);

    private SKPoint[] Arc => [.. Enumerable.Range(0, 41).Select(i => OnArc(place.Sketch.PastSquareRad * i / 40))];

    private SKPoint SquareEnd => SketchGeometry.Moved(place.Nut, place.Square, 1.15f * ArcRadius);

    private void Angle(SKCanvas canvas)
    {
        Shapes.Dashes(canvas, place.Nut, SquareEnd, Ink.Quiet);
        using var thin = new SKPaint { Color = Ink.Quiet, IsAntialias = true, StrokeWidth = 1.6f, Style = SKPaintStyle.Stroke };
        using var path = new SKPath();
        path.AddPoly(Arc, close: false);
        canvas.DrawPath(path, thin);
    }

    private void Bar(SKCanvas canvas)
    {
        float half = place.BarHalf;
        double length = place.Sketch.BarMm;
        Fill(canvas, Ink.Steel, [place.OnBar(0, half), place.OnBar(length, half), place.OnBar(length, -half), place.OnBar(0, -half)]);
    }

    private void Tube(SKCanvas canvas)
    {
        if (place.Sketch.Tube is not { } tube)
        {
            return;
        }

        float bore = place.BoreHalf;
        float outside = place.TubeHalf;
        double end = tube.LengthMm;
        SKPoint[] Strip(float upper, float lower) =>
            [place.OnTube(0, upper), place.OnTube(end, upper), place.OnTube(end, lower), place.OnTube(0, lower)];
        Fill(canvas, Ink.Steel.WithAlpha(70), Strip(outside, -outside));
        Fill(canvas, Ink.Quiet, Strip(outside, bore));
        Fill(canvas, Ink.Quiet, Strip(-bore, -outside));
    }

    private void Nut(SKCanvas canvas)
    {
        float across = place.NutHalf;
        using var head = new SKPaint { Color = Ink.Steel, IsAntialias = true };
        canvas.DrawCircle(place.Nut, 1.6f * across, head);
        head.Style = SKPaintStyle.Stroke;
        head.Color = Ink.Text;
        head.StrokeWidth = 1.5f;
        canvas.DrawCircle(place.Nut, 1.6f * across, head);
        float corner = across / MathF.Cos(MathF.PI / 6);
        Fill(canvas, Ink.Quiet, [.. Enumerable.Range(0, 6).Select(i =>
            new SKPoint(place.Nut.X + corner * MathF.Cos(i * MathF.PI / 3), place.Nut.Y + corner * MathF.Sin(i * MathF.PI / 3)))]);
    }

    private void Hands(SKCanvas canvas)
    {
        float thick = place.HandsHalf + 5;
        SKPoint along = place.TubeAlong;
        SKPoint up = place.Above(along);
        float half = place.Grip;
        (float From, float To)[] hands = place.TwoHands && place.HandsFit
            ? [(-half, -0.05f * half), (0.05f * half, half)]
            : [(-place.InnerGrip, half)];
        foreach (var (from, to) in hands)
        {
            SKPoint start = SketchGeometry.Moved(place.Hands, along, from);
            SKPoint end = SketchGeometry.Moved(place.Hands, along, to);
            Fill(canvas, Ink.Skin, [
                SketchGeometry.Moved(start, up, thick), SketchGeometry.Moved(end, up, thick),
                SketchGeometry.Moved(end, up, -thick), SketchGeometry.Moved(start, up, -thick)]);
        }
    }

    /// <summary>The turn at the nut: the way the hands turn it.</summary>
    private void Torque(SKCanvas canvas)
    {
        float radius = TorqueRadius;
        float square = 180 * MathF.Atan2(place.Square.Y, place.Square.X) / MathF.PI;
        using var paint = new SKPaint { Color = Ink.Need, IsAntialias = true, StrokeWidth = 4, Style = SKPaintStyle.Stroke };
        canvas.DrawArc(
            new SKRect(place.Nut.X - radius, place.Nut.Y - radius, place.Nut.X + radius, place.Nut.Y + radius),
            square + place.Turn * 130, place.Turn * 170, false, paint);
        float angle = MathF.PI * (square + place.Turn * 300) / 180;
        var head = new SKPoint(place.Nut.X + radius * MathF.Cos(angle), place.Nut.Y + radius * MathF.Sin(angle));
        var along = new SKPoint(-place.Turn * MathF.Sin(angle), place.Turn * MathF.Cos(angle));
        var side = new SKPoint(along.Y, -along.X);
        using var path = new SKPath();
        path.AddPoly(
            [SketchGeometry.Moved(head, along, 14), SketchGeometry.Moved(head, side, 8), SketchGeometry.Moved(head, side, -8)], close: true);
        paint.Style = SKPaintStyle.Fill;
        canvas.DrawPath(path, paint);
    }

    /// <summary>A ring round what breaks.</summary>
    private void Gives(SKCanvas canvas)
    {
        if (place.Sketch.Gives is { } part)
        {
            using var paint = new SKPaint { Color = Ink.Stop, IsAntialias = true, StrokeWidth = 4, Style = SKPaintStyle.Stroke };
            canvas.DrawCircle(place.GivesAt(part.Kind), GivesRadius, paint);
        }
    }

    /// <summary>Points of the ring round what breaks.</summary>
    internal IEnumerable<SKPoint> Ring(LinkKind part) => Enumerable.Range(0, 25).Select(i => new SKPoint(
        place.GivesAt(part).X + GivesRadius * MathF.Cos(i * MathF.PI / 12), place.GivesAt(part).Y + GivesRadius * MathF.Sin(i * MathF.PI / 12)));

    private float GivesRadius => 1.6f * place.NutHalf + 8;

    /// <summary>Radius of the arrow round the nut, pixels.</summary>
    internal float TorqueRadius => Math.Max(34, GivesRadius + 16);

    private static void Fill(SKCanvas canvas, SKColor color, SKPoint[] outline)
    {
        using var path = new SKPath();
        path.AddPoly(outline, close: true);
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        canvas.DrawPath(path, paint);
        paint.Style = SKPaintStyle.Stroke;
        paint.Color = Ink.Text;
        paint.StrokeWidth = 1;
        canvas.DrawPath(path, paint);
    }
}
