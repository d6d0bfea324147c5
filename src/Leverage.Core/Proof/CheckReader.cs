using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>Reads rows of the checks files; names and units that come again and again are read once.</summary>
public sealed class CheckReader
{
    private const string Accepted = "name=value[unit]; … with each name once and known units";

    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _names =
        new HashSet<string>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    private readonly Dictionary<string, (string Name, double Factor)>.AlternateLookup<ReadOnlySpan<char>> _units =
        new Dictionary<string, (string Name, double Factor)>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    private CheckColumns? _columns;

    /// <summary>Reads one row.</summary>
    /// <param name="row">A row of a checks file.</param>
    /// <returns>The row.</returns>
    /// <exception cref="TableFormatException">Something in the row cannot be read.</exception>
    public CheckRow Read(TableRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (_columns?.Table != row.Table)
        {
            _columns = CheckColumns.Of(row.Table);
        }

        var formula = CheckedFormulas.Find(row.Part(_columns.Formula))
            ?? throw row.Error("formula", "a formula of CheckedFormulas");
        double printed = row.Part(_columns.Expected).Length > 0
            ? row.NumberAt(_columns.Expected) : throw row.Error("expected", "a number such as 12.5");
        return new CheckRow(
            row, formula, Inputs(row, row.Part(_columns.Inputs)), printed, Unit(row, row.Part(_columns.Unit)),
            CheckTolerance.Of(row, _columns, printed), Name(row.Part(_columns.Source)));
    }

    private (string Name, double Factor) Unit(TableRow row, ReadOnlySpan<char> text)
    {
        try
        {
            return Unit(text);
        }
        catch (ArgumentException)
        {
            throw row.Error("unit", "a unit the prover knows, or nothing");
        }
    }

    private (string Name, double Factor) Unit(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
        {
            return (string.Empty, 1);
        }

        if (!_units.TryGetValue(text, out var known))
        {
            string unit = text.ToString();
            _units.Dictionary[unit] = known = (unit, PrintedUnit.Factor(unit));
        }

        return known;
    }

    private CheckInputs Inputs(TableRow row, ReadOnlySpan<char> text)
    {
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
        int end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or '-'))
        {
            end++;
        }

        try
        {
            // Anything but digits and a unit, such as 1/20in, 1e5N or a mistake, is for the reader of what people write.
            if (!TableRow.TryNumber(text[..end], out double number) || end < text.Length && text[end] is '/' or ' ' or 'e' or 'E')
            {
                (number, string written) = NumberText.Split(text.ToString());
                return (number * Unit(written).Factor, Unit(written).Name);
            }

            var (unit, factor) = Unit(text[end..]);
            return (number * factor, unit);
        }
        catch (Exception error) when (error is InputException or ArgumentException)
        {
            throw row.Error("inputs", Accepted);
        }
    }
}
