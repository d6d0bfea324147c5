namespace Leverage.Charts;

/// <summary>Size of a drawing and of its type, in pixels: large enough to read at the width of a phone.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="TitleSize">Type of the title.</param>
/// <param name="TextSize">Type of labels and axes.</param>
/// <param name="SmallSize">Type of notes.</param>
public sealed record ChartPage(int Width, int Height, float TitleSize, float TextSize, float SmallSize)
{
    /// <summary>For a screen or a sheet of paper.</summary>
    public static ChartPage Landscape { get; } = new(1000, 720, 30, 24, 21);

    /// <summary>For a phone held upright.</summary>
    public static ChartPage Portrait { get; } = new(800, 1000, 32, 27, 24);

    /// <summary>Empty rim on all sides.</summary>
    internal static float Rim => 16;

    /// <summary>Height of a line of type over its size.</summary>
    internal static float LineHeight => 1.25f;

    /// <summary>Width of a curve.</summary>
    internal static float CurveWidth => 3;
}
