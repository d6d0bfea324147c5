using UnitsNet;

namespace Leverage.Reading;

/// <summary>Reads a tube as people write it: outside × wall × length, or a jack handle by its length.</summary>
internal static class TubeReader
{
    /// <summary>A bore smaller than this is none: 2.2cm and twice 11mm differ by rounding alone.</summary>
    internal const double LeastBoreMm = 1e-3;

    private const string Jack = "jack:";
    private const string Cure = "Write outside × wall × length, such as 33.7x3.2x1200mm, or jack:1100mm for a jack handle.";

    /// <summary>A tube: <c>33.7x3.2x1200mm</c>, <c>1.66x0.14x48in</c>, <c>33.7mm x 3.2mm x 1.2m</c>, <c>jack:1100mm</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The tube, its bore not yet measured.</returns>
    /// <exception cref="InputException">Not three lengths, or one of them cannot be read.</exception>
    internal static TubeText Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        if (trimmed.StartsWith(Jack, StringComparison.OrdinalIgnoreCase))
        {
            return new TubeText(QuantityReader.Length(trimmed[Jack.Length..]));
        }

        string[] parts = trimmed.Replace('×', 'x').Replace('X', 'x').Split('x', StringSplitOptions.TrimEntries);
        if (parts.Length != 3)
        {
            throw new InputException($"cannot read '{text}' as a tube. {Cure}");
        }

        string unit = Unit(parts[2]);
        if (unit.Length == 0 && Unit(parts[0]).Length == 0)
        {
            throw new InputException($"cannot read '{text}': it has no unit. Write {trimmed}mm, or {trimmed}in.");
        }

        Length outside = QuantityReader.Length(WithUnit(parts[0], unit));
        Length wall = QuantityReader.Length(WithUnit(parts[1], unit));
        Length length = QuantityReader.Length(parts[2]);
        return outside.Millimeters - 2 * wall.Millimeters > LeastBoreMm
            ? new TubeText(length, outside, wall)
            : throw new InputException($"cannot use '{text}': the wall leaves no bore. {Cure}");
    }

    private static string Unit(string part) => NumberText.Split(part).Unit;

    /// <summary>The last length's unit serves all three; of a length in metres or feet, outside and wall are in mm or inches.</summary>
    private static string WithUnit(string part, string unit) => Unit(part).Length > 0 ? part : unit switch
    {
        "m" or "cm" => part + "mm",
        "ft" or "'" or "foot" or "feet" => part + "in",
        _ => part + unit,
    };

    /// <summary>The tube as <see cref="Read"/> takes it, its bore left out.</summary>
    internal static string Text(TubeText tube) => tube is { Outside: { } outside, Wall: { } wall }
        ? $"{QuantityWriter.Text(outside)}x{QuantityWriter.Text(wall)}x{QuantityWriter.Text(tube.Length)}"
        : Jack + QuantityWriter.Text(tube.Length);
}
