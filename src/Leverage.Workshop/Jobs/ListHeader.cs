using System.Text.RegularExpressions;
using Leverage.Reading;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>A column of a list.</summary>
/// <param name="Key">The key it holds.</param>
/// <param name="Unit">The unit its name gives, for numbers without one; null where it gives none.</param>
/// <param name="Place">Where its name stands.</param>
internal sealed record ListColumn(FastenerKey Key, string? Unit, FilePlace Place);

/// <summary>Reads the names of a list's columns: letter case, spaces and hyphens do not count, and a unit may stand behind.</summary>
/// <remarks>Names are short, so no time limit is set: a machine that is held up would break it.</remarks>
internal static partial class ListHeader
{
    /// <summary>Letters a column's name has at most.</summary>
    private const int Longest = 200;

    /// <summary>The column of a name; null where it has none.</summary>
    /// <param name="text">The name: <c>Hex [mm]</c>.</param>
    /// <param name="place">Where it stands.</param>
    /// <returns>The column.</returns>
    /// <exception cref="InputException">No fastener has such a key, or the unit is none of its kind.</exception>
    internal static ListColumn? Column(string text, FilePlace place)
    {
        if (text.Length > Longest)
        {
            throw place.Error("this is too long for the name of a column. Put a separator between the names.");
        }

        Match parts = Parts().Match(text.Trim());
        string name = Spaces().Replace(parts.Groups["name"].Value.Trim().ToLowerInvariant(), "_");
        string unit = parts.Groups["unit"].Value.Trim();
        if (name.Length == 0)
        {
            return null;
        }

        FastenerKey key = FastenerKey.Named(name) ?? throw Unknown(text, name, place);
        return new ListColumn(key, unit.Length > 0 ? Checked(key, unit, place) : null, place);
    }

    private static InputException Unknown(string text, string name, FilePlace place)
    {
        IReadOnlyList<string> near = NearestNames.Of(name, FastenerKey.All.Select(key => key.Name), 1);
        string cure = near.Count > 0 ? $"Nearest: {near[0]}. " : "";
        return place.Error(text.Trim(), $"is no key known in fasteners. {cure}Known: {string.Join(", ", FastenerKey.All.Select(key => key.Name))}.");
    }

    private static string Checked(FastenerKey key, string unit, FilePlace place)
    {
        if (key.Unit is null)
        {
            throw place.Error(key.Name, $"the column's name gives a unit, {unit}, and it has none. Take it out.");
        }

        try
        {
            _ = key.Unit == "Nm" ? QuantityReader.Torque("1" + unit).NewtonMeters : QuantityReader.Length("1" + unit).Meters;
            return unit;
        }
        catch (InputException)
        {
            throw place.Error(key.Name, $"the column's name gives a unit, {unit}, and it is none of this kind. Write: {key.Name} [{key.Unit}]");
        }
    }

    [GeneratedRegex(@"^(?<name>[^\[\](){}/,]*?)(?:\s*(?:[\[({/,]|\bin\b(?=\s+\S))\s*(?<unit>[^\])}]*)[\])}]?)?$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex Parts();

    [GeneratedRegex(@"[\s\-_]+", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex Spaces();
}
