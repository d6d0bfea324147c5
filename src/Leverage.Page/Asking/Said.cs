using Leverage.Reading;
using Leverage.Wording;

namespace Leverage.Page.Asking;

/// <summary>What an address says: every field once, and no field that is not known.</summary>
internal sealed class Said
{
    private const int MostLetters = 200;
    private const string UnitsField = "units";
    private readonly Dictionary<string, string> _texts;
    private readonly IReadOnlyList<string> _names;

    private Said(Dictionary<string, string> texts, IReadOnlyList<string> names) => (_texts, _names) = (texts, names);

    /// <summary>Units of the words.</summary>
    internal UnitStyle Units => Text(UnitsField) switch
    {
        null or "metric" => UnitStyle.Metric,
        "us" => UnitStyle.Us,
        { } other => throw new InputException(UnitsField, $"'{other}' is not accepted here: write metric or us."),
    };

    /// <summary>Reads a query of the fields of a loosening.</summary>
    /// <exception cref="InputException">A field is not known, said twice or far too long.</exception>
    internal static Said Of(string query) => Of(query, Address.Names);

    /// <summary>Reads a query: pairs of name and text, escaped as in an address.</summary>
    /// <param name="query">The query, with or without its question mark.</param>
    /// <param name="names">The fields there are.</param>
    /// <exception cref="InputException">A field is not known, said twice or far too long.</exception>
    internal static Said Of(string query, IReadOnlyList<string> names)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string pair in query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries))
        {
            int equals = pair.IndexOf('=', StringComparison.Ordinal);
            string name = Plain(equals < 0 ? pair : pair[..equals]);
            string text = equals < 0 ? "" : Plain(pair[(equals + 1)..]);
            if (name != UnitsField && !names.Contains(name, StringComparer.Ordinal))
            {
                throw Unknown(name, names);
            }

            if (text.Length > MostLetters)
            {
                throw new InputException(name, $"{text.Length} letters is more than any value has: at most {MostLetters}.");
            }

            texts[name] = texts.ContainsKey(name) ? throw new InputException(name, "given more than once: give one.") : text;
        }

        return new Said(texts, names);
    }

    /// <summary>The text of a field; null when it was left out or left empty.</summary>
    internal string? Text(string name) => _texts.TryGetValue(name, out string? text) && text.Trim().Length > 0 ? text.Trim() : null;

    /// <summary>The fields that were said, in the order of the table, for the command line that asks the same.</summary>
    internal IEnumerable<(string Name, string Text)> All() =>
        _names.Where(name => Text(name) is not null).Select(name => (name, Text(name)!));

    private static string Plain(string text) => Uri.UnescapeDataString(text.Replace('+', ' '));

    private static InputException Unknown(string name, IReadOnlyList<string> names)
    {
        string plain = name.Length <= 40 ? name : $"{name[..40]}…";
        IReadOnlyList<string> near = NearestNames.Of(plain, names, 3);
        string cure = near.Count > 0 ? $" Nearest: {string.Join(", ", near)}." : "";
        return new InputException($"there is no field '{plain}' here.{cure}");
    }
}
