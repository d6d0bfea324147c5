using System.Globalization;
using System.Numerics;
using Leverage.Tables;

namespace Leverage.Tests.Tables;

/// <summary>
/// One pinned line a column: how many cells it fills and their sum, exact to the last digit, or for a column of words the
/// sum of its characters. A cell mistyped by one digit or one letter changes it.
/// </summary>
internal static class ColumnSums
{
    public const string Header = "table,column,cells,kind,sum";

    public static IEnumerable<string> Of(Table table) =>
        table.Columns.Select((column, i) => Line(table.Name, column, [.. table.Rows.Select(r => r.Cells[i])]));

    public static string Line(string table, string column, IReadOnlyList<string> cells)
    {
        var filled = cells.Where(c => c.Length > 0).ToList();
        var numbers = filled.Count > 0 && filled.All(c => TableRow.TryNumber(c, out _));
        var sum = numbers ? Sum(filled) : Characters(filled);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{table},{column},{filled.Count},{(numbers ? "number" : "text")},{sum}");
    }

    private static string Sum(List<string> cells)
    {
        var sum = cells.Select(c => decimal.Parse(c, NumberStyles.Float, CultureInfo.InvariantCulture)).Sum();
        var text = sum.ToString(CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static string Characters(List<string> cells)
    {
        var sum = BigInteger.Zero;
        foreach (var cell in cells)
        {
            for (var i = 0; i < cell.Length; i++)
            {
                sum += cell[i] * (i + 1);
            }
        }

        return sum.ToString(CultureInfo.InvariantCulture);
    }
}
