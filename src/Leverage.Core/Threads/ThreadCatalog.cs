using Leverage.Reading;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Threads;

/// <summary>The standard threads of the tables, by the name a person writes.</summary>
public static class ThreadCatalog
{
    /// <summary>The thread of a designation: <c>M24x1.5</c>, <c>M24</c> (coarse), <c>1/2-20</c>, <c>7/16-14UNC</c>.</summary>
    /// <param name="text">What the person wrote; case is ignored and × is read as x.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="InputException">No such thread in the tables; the message gives the nearest names.</exception>
    public static ScrewThread Named(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string name = Plain(text);
        return name.StartsWith('M') ? Metric(text, name) : Unified(text, name);
    }

    /// <summary>All threads of a family, in the order of its table.</summary>
    /// <param name="family">Metric or Unified.</param>
    /// <returns>The threads.</returns>
    public static IEnumerable<ScrewThread> Family(ThreadFamily family) => family == ThreadFamily.Metric
        ? TableCatalog.Tables["threads-metric"].Rows.Select(Metric)
        : TableCatalog.Tables["threads-unified"].Rows.Select(Unified);

    private static ScrewThread Metric(string text, string name)
    {
        Table table = TableCatalog.Tables["threads-metric"];
        foreach (TableRow row in table.Rows)
        {
            if (row.IsNamed(name) || row.Says("series", "coarse") && Joined(name, row.Part(0), "x", row.Part("pitch_mm")))
            {
                return Metric(row);
            }
        }

        throw Unknown(text, table);
    }

    private static ScrewThread Unified(string text, string name)
    {
        Table table = TableCatalog.Tables["threads-unified"];
        foreach (TableRow row in table.Rows)
        {
            if (row.IsNamed(name) || Joined(name, row.Part(0), "", row.Part("series")))
            {
                return Unified(row);
            }
        }

        throw Unknown(text, table);
    }

    private static ScrewThread Metric(TableRow row) => new(
        row.Key,
        ThreadFamily.Metric,
        Length.FromMillimeters(row.Number("diameter_mm")),
        Length.FromMillimeters(row.Number("pitch_mm")));

    private static ScrewThread Unified(TableRow row) => new(
        row.Key,
        ThreadFamily.Unified,
        Length.FromInches(row.Number("diameter_in")),
        Length.FromMillimeters(25.4 / row.Number("tpi")));

    private static bool Joined(ReadOnlySpan<char> name, ReadOnlySpan<char> size, ReadOnlySpan<char> by, ReadOnlySpan<char> pitch) =>
        name.Length == size.Length + by.Length + pitch.Length && name.StartsWith(size) && name.EndsWith(pitch)
            && name[size.Length..].StartsWith(by);

    private static InputException Unknown(string text, Table table)
    {
        if (text.Contains(',', StringComparison.Ordinal))
        {
            return new InputException($"cannot read '{text}' as a thread: write a decimal point, as in M24x1.5.");
        }

        return RowLookup.Unknown(text.Trim(), "a thread", table.Rows.Select(row => row.Key), "threads");
    }

    private static string Plain(string text)
    {
        string name = text.Trim().Replace('×', 'x').Replace("*", "x", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant().Replace('X', 'x');
        return name.Replace("\"", "", StringComparison.Ordinal);
    }
}
