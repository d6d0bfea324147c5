using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>A label that wants a place beside its curve.</summary>
/// <param name="Text">The words.</param>
/// <param name="Look">Their looks.</param>
/// <param name="Path">The curve, pixels; also a single point.</param>
internal sealed record LabelWish(string Text, TextLook Look, IReadOnlyList<SKPoint> Path)
{
    /// <summary>Where along the curve it would rather stand: 0 at the start, 1 at the end.</summary>
    public double Along { get; init; } = 0.75;

    /// <summary>Where a line from a label that found no place beside the curve ends; the nearest point of the curve when left out.</summary>
    public SKPoint? Target { get; init; }

    /// <summary>Width past which it is broken into lines.</summary>
    public float Widest { get; init; } = float.PositiveInfinity;

    /// <summary>How much it minds lying over lines: a cell of ink under it costs so much.</summary>
    public double MindsInk { get; init; } = 6;

    /// <summary>Whether it stands on its path, as the name of an area, instead of beside it.</summary>
    public bool Inside { get; init; }
}
