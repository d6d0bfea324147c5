using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>Reads rows of the checks files; names and values that come again and again are read once.</summary>
public sealed class CheckReader
{
    private const string Accepted = "name=value[unit]; … with each name once and known units";

    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _names =
        new HashSet<string>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    private readonly Dictionary<string, (double Value, string Unit)>.AlternateLookup<ReadOnlySpan<char>> _values =
        new Dictionary<string, (double Value, string Unit)>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Reads one row.</summary>
    /// <param name="row">A row of a checks file.</param>
    /// <returns>The row.</returns>
    /// <exception cref="TableFormatException">Something in the row cannot be read.</exception>
    public CheckRow Read(TableRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var formula = CheckedFormulas.Find(row.Text("formula"))
            ?? throw row.Error("formula", "a formula of CheckedFormulas");
        string expected = row.Text("expected");
        double printed = row.Number("expected");
        return new CheckRow(
            row.Key, formula, Inputs(row), expected, printed, Unit(row), CheckTolerance.Of(row, printed),
            row.Source, row.Status, row.OptionalText("note") ?? string.Empty);
    }

    private static string Unit(TableRow row)
    {
        string unit = row.OptionalText("unit") ?? string.Empty;
        try
        {
            _ = PrintedUnit.Factor(unit);
            return unit;
        }
        catch (ArgumentException)
        {
            throw row.Error("unit", "a unit the prover knows, or nothing");
        }
    }

    private CheckInputs Inputs(TableRow row)
    {
        var text = row.Text("inputs").AsSpan();
        var given = new (string Name, double Value, string Unit)[text.Count(';') + 1];
        int count = 0;
        foreach (var range in text.Split(';'))
        {
            var part = text[range].Trim();
            int sign = part.IndexOf('=');
            if (sign <= 0 || Given(given, part[..sign]))
            {
                throw row.Error("inputs", Accepted);
            }

            var (value, unit) = Value(row, part[(sign + 1)..]);
            given[count++] = (Name(part[..sign]), value, unit);
        }

        return new CheckInputs(given);
    }

    private static bool Given((string Name, double Value, string Unit)[] given, ReadOnlySpan<char> name)
    {
        foreach (var (other, _, _) in given)
        {
            if (name.SequenceEqual(other))
            {
                return true;
            }
        }

        return false;
    }

    private string Name(ReadOnlySpan<char> text)
    {
        if (!_names.TryGetValue(text, out string? name))
        {
            name = text.ToString();
            _names.Set.Add(name);
        }

        return name;
    }

    private (double Value, string Unit) Value(TableRow row, ReadOnlySpan<char> text)
    {
        if (_values.TryGetValue(text, out var known))
        {
            return known;
        }

        try
        {
            string written = text.ToString();
            var (value, unit) = NumberText.Split(written);
            return _values.Dictionary[written] = (value * PrintedUnit.Factor(unit), unit);
        }
        catch (Exception error) when (error is InputException or ArgumentException)
        {
            throw row.Error("inputs", Accepted);
        }
    }
}
