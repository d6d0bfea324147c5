using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>A rectangle on a drawing, pixels, y downward.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public readonly record struct LabelBox(float Left, float Top, float Width, float Height)
{
    /// <summary>Right edge.</summary>
    public float Right => Left + Width;

    /// <summary>Lower edge.</summary>
    public float Bottom => Top + Height;

    /// <summary>Middle.</summary>
    internal SKPoint Middle => new(Left + Width / 2, Top + Height / 2);

    /// <summary>Whether two boxes share any area.</summary>
    /// <param name="other">The other box.</param>
    /// <returns>True if they do.</returns>
    public bool Intersects(LabelBox other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether a box lies wholly in this one.</summary>
    /// <param name="inner">The other box.</param>
    /// <returns>True if it does.</returns>
    public bool Contains(LabelBox inner) =>
        inner.Left >= Left && inner.Right <= Right && inner.Top >= Top && inner.Bottom <= Bottom;

    /// <summary>The box with a rim around it.</summary>
    /// <param name="by">Width of the rim.</param>
    /// <returns>The wider box.</returns>
    public LabelBox Grown(float by) => new(Left - by, Top - by, Width + 2 * by, Height + 2 * by);

    /// <summary>Whether a line from one point to another passes through the box.</summary>
    internal bool Crosses(SKPoint from, SKPoint to)
    {
        double enter = 0;
        double leave = 1;
        return Clip(from.X, to.X - from.X, Left, Right, ref enter, ref leave)
            && Clip(from.Y, to.Y - from.Y, Top, Bottom, ref enter, ref leave);
    }

    private static bool Clip(double start, double run, double least, double most, ref double enter, ref double leave)
    {
        if (Math.Abs(run) < 1e-9)
        {
            return start >= least && start <= most;
        }

        double first = (least - start) / run;
        double last = (most - start) / run;
        enter = Math.Max(enter, Math.Min(first, last));
        leave = Math.Min(leave, Math.Max(first, last));
        return enter <= leave;
    }
}
