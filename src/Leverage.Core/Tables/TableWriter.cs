namespace Leverage.Tables;

/// <summary>Writes a table as the reader reads it: comment lines, column names, rows; quotes only where they are needed.</summary>
public static class TableWriter
{
    /// <summary>Writes a whole table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="text">Where it goes; lines end in a line feed.</param>
    public static void Write(Table table, TextWriter text)
    {
        ArgumentNullException.ThrowIfNull(table);
        Write(table, table.Rows, text);
    }

    /// <summary>Writes a table's comment lines and column names, with a choice of its rows.</summary>
    /// <param name="table">The table.</param>
    /// <param name="rows">Rows of that table.</param>
    /// <param name="text">Where it goes; lines end in a line feed.</param>
    public static void Write(Table table, IEnumerable<TableRow> rows, TextWriter text)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(text);
        foreach (var comment in table.Comments)
        {
            text.Write(comment.Length == 0 ? "#" : "# ");
            text.Write(comment);
            text.Write('\n');
        }

        WriteLine(table.Columns, text);
        foreach (var row in rows)
        {
            WriteLine(row.Cells, text);
        }
    }

    private static void WriteLine(IReadOnlyList<string> cells, TextWriter text)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (i > 0)
            {
                text.Write(',');
            }

            text.Write(Quoted(cells[i]));
        }

        text.Write('\n');
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
