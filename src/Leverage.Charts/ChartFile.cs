using Leverage.Reading;

namespace Leverage.Charts;

/// <summary>How a chart is written.</summary>
public enum ChartFormat
{
    /// <summary>Pixels.</summary>
    Png,

    /// <summary>Lines and text, sharp at any size.</summary>
    Svg,
}

/// <summary>What a chart's file name asks for.</summary>
public static class ChartFile
{
    /// <summary>The format of a file by its ending.</summary>
    /// <param name="path">The file's name.</param>
    /// <returns>The format.</returns>
    /// <exception cref="InputException">The ending is neither .png nor .svg.</exception>
    public static ChartFormat FormatOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string ending = Path.GetExtension(path);
        return ending.ToUpperInvariant() switch
        {
            ".PNG" => ChartFormat.Png,
            ".SVG" => ChartFormat.Svg,
            "" => throw new InputException($"'{path}' has no ending, so its format is not known. Write a name that ends in .png or .svg."),
            _ => throw new InputException($"'{path}' ends in '{ending}', which is not drawn. Write a name that ends in .png or .svg."),
        };
    }
}
