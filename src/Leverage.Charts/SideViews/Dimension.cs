using SkiaSharp;

namespace Leverage.Charts.SideViews;

/// <summary>A length drawn beside the lever, between two thin lines from its ends.</summary>
/// <param name="Words">Its name and value.</param>
/// <param name="From">Point it starts from.</param>
/// <param name="To">Point it ends at.</param>
/// <param name="Below">Direction away from the lever, length 1.</param>
/// <param name="Offset">Distance of the dimension line from the first point, pixels.</param>
internal sealed record Dimension(string Words, SKPoint From, SKPoint To, SKPoint Below, float Offset)
{
    private SKPoint Run => new(-Below.Y, Below.X);

    /// <summary>Left end of the dimension line.</summary>
    internal SKPoint Start => SketchGeometry.Moved(From, Below, Offset);

    /// <summary>Right end: level with the left one.</summary>
    internal SKPoint Stop
    {
        get
        {
            SKPoint between = To - From;
            float along = between.X * Run.X + between.Y * Run.Y;
            return SketchGeometry.Moved(Start, Run, along);
        }
    }

    /// <summary>Draws it.</summary>
    internal void Draw(SKCanvas canvas)
    {
        using var thin = new SKPaint { Color = Ink.Quiet, IsAntialias = true, StrokeWidth = 1 };
        canvas.DrawLine(From, SketchGeometry.Moved(Start, Below, 6), thin);
        canvas.DrawLine(To, SketchGeometry.Moved(Stop, Below, 6), thin);
        thin.StrokeWidth = 1.6f;
        canvas.DrawLine(Start, Stop, thin);
        foreach (SKPoint end in new[] { Start, Stop })
        {
            SKPoint slash = new((Run.X - Below.X) * 6, (Run.Y - Below.Y) * 6);
            canvas.DrawLine(end - slash, end + slash, thin);
        }
    }
}
