using System.Globalization;
using nietras.SeparatedValues;

namespace Leverage.Tables;

/// <summary>
/// Reads a table strictly: comment lines beginning with <c>#</c>, then column names, then rows. UTF-8, comma between
/// cells, a cell with a comma or a quote in double quotes. Every row must have as many cells as there are columns, a
/// source and a known status. The first thing out of order is an error with file, line and column.
/// </summary>
public static class TableReader
{
    /// <summary>Reads a whole table.</summary>
    /// <param name="file">The file as errors shall name it, such as <c>tables/friction.csv</c>.</param>
    /// <param name="text">The text of the file.</param>
    /// <returns>The table.</returns>
    /// <exception cref="TableFormatException">Something in the text is not as a table must be.</exception>
    public static Table Read(string file, string text)
    {
        using var reader = new StringReader(text);
        return Read(file, reader);
    }

    /// <summary>Reads a whole table, piece by piece: the text is never held as a whole.</summary>
    /// <param name="file">The file as errors shall name it, such as <c>tables/friction.csv</c>.</param>
    /// <param name="text">The text of the file.</param>
    /// <returns>The table.</returns>
    /// <exception cref="TableFormatException">Something in the text is not as a table must be.</exception>
    public static Table Read(string file, TextReader text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var comments = TakeComments(text);
        var cells = new TableText();
        var table = default(Table);
        TextPart[] above = [];
        using var reader = Sep.New(',')
            .Reader(o => o with
            {
                HasHeader = false,
                DisableColCountCheck = true,
                CultureInfo = CultureInfo.InvariantCulture,
            })
            .From(text);
        foreach (var row in reader)
        {
            var line = comments.Count + row.LineNumberFrom;
            above = Cells(row, file, line, cells, above);
            if (table is null)
            {
                table = Header(file, comments, cells, [.. above.Select(part => cells[part].ToString())]);
            }
            else
            {
                Check(table, line, above);
            }
        }

        cells.Close();
        return table ?? throw new TableFormatException(file, comments.Count + 1, null, "no column names", "a line of column names");
    }

    private static List<string> TakeComments(TextReader text)
    {
        var comments = new List<string>();
        if (text.Peek() == '\uFEFF')
        {
            _ = text.Read();
        }

        while (text.Peek() == '#')
        {
            comments.Add(text.ReadLine()![1..].Trim());
        }

        return comments;
    }

    // Sources and the like repeat from row to row: the cell above is shared where it says the same.
    private static TextPart[] Cells(SepReader.Row row, string file, int line, TableText text, TextPart[] above)
    {
        var cells = new TextPart[row.ColCount];
        for (var i = 0; i < cells.Length; i++)
        {
            var cell = row[i].Span;
            if (cell.Contains('"'))
            {
                cell = Unquoted(cell, file, line);
            }

            cells[i] = i < above.Length && cell.SequenceEqual(text[above[i]]) ? above[i] : text.Add(cell);
        }

        return cells;
    }

    private static string Unquoted(ReadOnlySpan<char> cell, string file, int line)
    {
        const string Accepted = "\"text\" with inner quotes doubled";
        var inner = cell.Length > 1 && cell[^1] == '"' ? cell[1..^1].ToString() : null;
        if (cell[0] != '"')
        {
            throw new TableFormatException(file, line, null, "a quote inside a cell", Accepted);
        }

        var single = inner?.Replace("\"\"", "", StringComparison.Ordinal).Contains('"', StringComparison.Ordinal) ?? true;
        return single
            ? throw new TableFormatException(file, line, null, "a quote that never closes", Accepted)
            : inner!.Replace("\"\"", "\"", StringComparison.Ordinal);
    }

    private static Table Header(string file, List<string> comments, TableText text, string[] columns)
    {
        var line = comments.Count + 1;
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Length == 0 || Array.IndexOf(columns, columns[i]) < i)
            {
                var found = columns[i].Length == 0 ? "a column without a name" : $"column {columns[i]} twice";
                throw new TableFormatException(file, line, null, found, "column names that differ");
            }
        }

        foreach (var needed in (ReadOnlySpan<string>)["source", "status"])
        {
            if (Array.IndexOf(columns, needed) < 0)
            {
                throw new TableFormatException(file, line, needed, "no such column", "every table has source and status");
            }
        }

        return new Table(file, comments, line, columns, text);
    }

    private static void Check(Table table, int line, TextPart[] cells)
    {
        if (cells.Length != table.Columns.Count)
        {
            var found = string.Create(CultureInfo.InvariantCulture, $"{cells.Length} cells");
            var accepted = string.Create(CultureInfo.InvariantCulture, $"{table.Columns.Count} cells, one for each column");
            throw new TableFormatException(table.File, line, null, found, accepted);
        }

        var row = table.Add(line, cells);
        for (var i = 0; i < cells.Length; i++)
        {
            var cell = row.Part(i);
            if (cell.Length > 0 && (char.IsWhiteSpace(cell[0]) || char.IsWhiteSpace(cell[^1])))
            {
                throw row.Error(table.Columns[i], "a cell without space at its ends");
            }
        }

        if (cells[0].Length == 0)
        {
            throw row.Error(table.Columns[0], "a name for the row");
        }

        if (cells[table.SourceColumn].Length == 0)
        {
            throw row.Error("source", "a text");
        }

        _ = row.Status;
    }
}
