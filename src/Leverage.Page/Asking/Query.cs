using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Page.Asking;

/// <summary>The query of an address: every field once, and no field that is not known.</summary>
internal sealed class Query
{
    private const int MostLetters = 200;
    private const string UnitsField = "units";
    private readonly Dictionary<string, string> _texts;
    private readonly IReadOnlyList<string> _names;

    private Query(Dictionary<string, string> texts, IReadOnlyList<string> names) => (_texts, _names) = (texts, names);

    /// <summary>Units of the words.</summary>
    internal UnitStyle Units => Text(UnitsField) switch
    {
        null or "metric" => UnitStyle.Metric,
        "us" => UnitStyle.Us,
        { } other => throw new InputException(UnitsField, $"'{other}' is not accepted here: write metric or us."),
    };

    /// <summary>Reads a query of the fields of a loosening.</summary>
    /// <exception cref="InputException">A field is not known, given twice or far too long.</exception>
    internal static Query Of(string text) => Of(text, LooseningFields.All);

    /// <summary>Reads a query: pairs of name and text, escaped as in an address.</summary>
    /// <param name="text">The query, with or without its question mark.</param>
    /// <param name="fields">The fields there are.</param>
    /// <exception cref="InputException">A field is not known, given twice or far too long.</exception>
    internal static Query Of<T>(string text, IReadOnlyList<Field<T>> fields)
    {
        string[] names = [.. fields.Select(field => field.Name)];
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string pair in text.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries))
        {
            int equals = pair.IndexOf('=', StringComparison.Ordinal);
            string name = Plain(equals < 0 ? pair : pair[..equals]);
            string value = equals < 0 ? "" : Plain(pair[(equals + 1)..]);
            if (name != UnitsField && !names.Contains(name, StringComparer.Ordinal))
            {
                throw Unknown(name, names);
            }

            if (value.Length > MostLetters)
            {
                throw new InputException(name, $"{value.Length} letters is more than any value has: at most {MostLetters}.");
            }

            texts[name] = texts.ContainsKey(name) ? throw new InputException(name, "given more than once: give one.") : value;
        }

        return new Query(texts, names);
    }

    /// <summary>The request of a loosening.</summary>
    /// <exception cref="InputException">A field cannot be read; the error is about it.</exception>
    internal LooseningRequest Loosening() => Read(LooseningFields.All, new LooseningRequest());

    /// <summary>A request with every field that is given put into it.</summary>
    /// <exception cref="InputException">A field cannot be read; the error is about it.</exception>
    internal T Read<T>(IReadOnlyList<Field<T>> fields, T empty) =>
        fields.Aggregate(empty, (request, field) => Text(field.Name) is { } text ? field.Read(request, text) : request);

    /// <summary>The text of a field; null when it was left out or left empty.</summary>
    internal string? Text(string name) => _texts.TryGetValue(name, out string? text) && text.Trim().Length > 0 ? text.Trim() : null;

    /// <summary>The fields that were given, in the order of the table, for the command line that asks the same.</summary>
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
