using Leverage.Requests;
using Leverage.Wording;
using Leverage.Charts;
using Leverage.Reading;

namespace Leverage.Page.Asking;

/// <summary>What an address says: every field once, and no field that is not known.</summary>
internal sealed class Said
{
    private const int MostLetters = 200;
    private static readonly string[] Own = ["units", "shape"];
    private readonly Dictionary<string, string> _texts;

    private Said(Dictionary<string, string> texts) => _texts = texts;

    /// <summary>Units of the words.</summary>
    internal UnitStyle Units => Text("units") switch
    {
        null or "metric" => UnitStyle.Metric,
        "us" => UnitStyle.Us,
        { } other => throw new InputException("units", $"'{other}' is not accepted here: write metric or us."),
    };

    /// <summary>Size of the charts: for a screen, or for a phone held upright.</summary>
    internal Drawing Drawing => Text("shape") switch
    {
        null or "wide" => Drawing.Wide,
        "tall" => Drawing.Tall,
        { } other => throw new InputException("shape", $"'{other}' is not accepted here: write wide or tall."),
    };

    /// <summary>Reads a query.</summary>
    /// <exception cref="InputException">A field is not known, said twice or far too long.</exception>
    internal static Said Of(IQueryCollection query)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, values) in query)
        {
            if (!Address.Names.Contains(name, StringComparer.Ordinal) && !Own.Contains(name, StringComparer.Ordinal))
            {
                throw Unknown(name);
            }

            string text = values.Count == 1 ? values[0] ?? "" : throw new InputException(name, "given more than once: give one.");
            texts[name] = text.Length <= MostLetters
                ? text
                : throw new InputException(name, $"{text.Length} letters is more than any value has: at most {MostLetters}.");
        }

        return new Said(texts);
    }

    /// <summary>The text of a field; null when it was left out or left empty.</summary>
    internal string? Text(string name) => _texts.TryGetValue(name, out string? text) && text.Trim().Length > 0 ? text.Trim() : null;

    /// <summary>The fields that were said, in the order of the table, for the command line that asks the same.</summary>
    internal IEnumerable<(string Name, string Text)> All() =>
        Address.Names.Where(name => Text(name) is not null).Select(name => (name, Text(name)!));

    private static InputException Unknown(string name)
    {
        string plain = name.Length <= 40 ? name : $"{name[..40]}…";
        IReadOnlyList<string> near = NearestNames.Of(plain, Address.Names, 3);
        string cure = near.Count > 0 ? $" Nearest: {string.Join(", ", near)}." : "";
        return new InputException($"there is no field '{plain}' here.{cure}");
    }
}

/// <summary>Sizes of the two charts.</summary>
/// <param name="Window">Of the window of force against length.</param>
/// <param name="Side">Of the side view.</param>
internal sealed record Drawing(ChartPage Window, ChartPage Side)
{
    /// <summary>For a screen.</summary>
    internal static Drawing Wide { get; } = new(ChartPage.Landscape, ChartPage.Landscape);

    /// <summary>For a phone held upright: larger type, and a side view low enough to keep in sight while sliding.</summary>
    internal static Drawing Tall { get; } = new(ChartPage.Portrait, new ChartPage(800, 780, 30, 27, 24));
}
