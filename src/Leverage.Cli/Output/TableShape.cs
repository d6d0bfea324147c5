using Leverage.Tables;

namespace Leverage.Cli.Output;

/// <summary>What kind of thing stands in a table's columns, and how a column's name is headed.</summary>
internal static class TableShape
{
    private static readonly string[] Names = ["grade", "size", "class", "drive", "thread", "sizes"];

    private static readonly Dictionary<string, string> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = "mm",
        ["mm2"] = "mm²",
        ["in"] = "in",
        ["in2"] = "in²",
        ["mpa"] = "MPa",
        ["psi"] = "psi",
        ["nm"] = "N·m",
        ["n"] = "N",
        ["c"] = "°C",
        ["cm3"] = "cm³",
        ["cm4"] = "cm⁴",
        ["k"] = "K",
    };

    /// <summary>Whether a column holds nothing but numbers and blanks, and does not name things.</summary>
    internal static bool IsNumber(Table table, string column)
    {
        int index = Index(table, column);
        return index > 0 && Array.IndexOf(Names, column) < 0
            && table.Rows.Any(row => row.Cells[index].Length > 0)
            && table.Rows.All(row => row.Cells[index].Length == 0 || TableRow.TryNumber(row.Cells[index], out _));
    }

    /// <summary>Place of a column.</summary>
    internal static int Index(Table table, string column)
    {
        for (int i = 0; i < table.Columns.Count; i++)
        {
            if (table.Columns[i] == column)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>A column's name as words stacked over its unit: pitch, diameter, mm.</summary>
    internal static string[] Heading(string column)
    {
        string[] words = column.Split('_');
        if (words.Length > 1 && Units.TryGetValue(words[^1], out string? unit))
        {
            words[^1] = unit;
        }

        return words;
    }

    /// <summary>
    /// Whether a column repeats another one in the units that are not wanted: <c>yield_psi</c> beside <c>yield_mpa</c>.
    /// </summary>
    internal static bool IsDouble(Table table, string column, bool us) => us
        ? Twin(table, column, "_mm", "_in") || Twin(table, column, "_mpa", "_psi") || Twin(table, column, "_mm2", "_in2")
        : Twin(table, column, "_in", "_mm") || Twin(table, column, "_psi", "_mpa") || Twin(table, column, "_in2", "_mm2");

    private static bool Twin(Table table, string column, string unit, string wanted) =>
        column.EndsWith(unit, StringComparison.Ordinal) && table.Has(column[..^unit.Length] + wanted);
}

/// <summary>A table and the rows of it that are wanted.</summary>
internal sealed record TableChoice(Table Table, IReadOnlyList<TableRow> Rows);
