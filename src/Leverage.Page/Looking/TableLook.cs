using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Page.Looking;

/// <summary>Rows of a table, cell by cell, with source and status in their columns.</summary>
internal sealed record TableRows(string Name, string Title, IReadOnlyList<string> Notes, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, int Of);

/// <summary>Looks a table up.</summary>
internal static class TableLook
{
    private const int Most = 200;

    /// <summary>The rows that hold every word somewhere.</summary>
    internal static TableRows Up(string name, string search)
    {
        Table table = TableCatalog.Tables.Names.Contains(name, StringComparer.Ordinal)
            ? TableCatalog.Tables[name]
            : throw new InputException("table", $"there is no table '{(name.Length > 40 ? name[..40] : name)}'.");
        string[] words = search.Replace('×', 'x').Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        TableRow[] rows = [.. table.Rows.Where(row => words.All(word => row.Cells.Any(cell => cell.Contains(word, StringComparison.OrdinalIgnoreCase))))];
        return new TableRows(
            name, table.Comments.Count > 0 ? table.Comments[0] : name, [.. table.Notes], table.Columns, [.. rows.Take(Most).Select(row => row.Cells)], rows.Length);
    }
}
