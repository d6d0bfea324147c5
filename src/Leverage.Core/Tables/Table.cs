namespace Leverage.Tables;

/// <summary>A table of published (or recalled, judged, derived) values: every row has a source and a status.</summary>
public sealed class Table
{
    private readonly string[] _columns;
    private readonly List<TableRow> _rows = [];
    private readonly TableText _text;

    internal Table(string file, IReadOnlyList<string> comments, int headerLine, string[] columns, TableText text)
    {
        (File, HeaderLine, _columns, _text) = (file, headerLine, columns, text);
        (SourceColumn, StatusColumn) = (Column("source"), Column("status"));
        Name = Path.GetFileNameWithoutExtension(file);
        Comments = comments;
    }

    /// <summary>The table's name: its file name without folder and extension, as <c>leverage table</c> takes it.</summary>
    public string Name { get; }

    /// <summary>The file, as the project writes it: <c>tables/friction.csv</c>.</summary>
    public string File { get; }

    /// <summary>What the table holds: the first comment line of the file.</summary>
    public string Title => Comments.Count > 0 ? Comments[0] : Name;

    /// <summary>How to read it: the other comment lines.</summary>
    public IEnumerable<string> Notes => Comments.Skip(1);

    /// <summary>All comment lines of the file, without their <c>#</c>.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>Names of the columns; a name ends in its unit.</summary>
    public IReadOnlyList<string> Columns => _columns;

    /// <summary>The rows, in the order of the file.</summary>
    public IReadOnlyList<TableRow> Rows => _rows;

    /// <summary>Line of the file the column names stand on, counted from 1.</summary>
    public int HeaderLine { get; }

    /// <summary>Whether the table has a column of this name.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>True when it has.</returns>
    public bool Has(string column) => IndexOf(column) >= 0;

    /// <summary>The rows whose first cell starts with a text, and those that say it as a cell or as a word of one, sources aside; case is ignored.</summary>
    /// <param name="text">What to look for, such as <c>M24</c>.</param>
    /// <returns>The rows, in the order of the file.</returns>
    public IEnumerable<TableRow> Where(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var row in _rows)
        {
            if (row.Part(0).StartsWith(text, StringComparison.OrdinalIgnoreCase) || HasCell(row, text))
            {
                yield return row;
            }
        }
    }

    /// <summary>Where the column of the sources stands.</summary>
    internal int SourceColumn { get; }

    /// <summary>Where the column of the statuses stands.</summary>
    internal int StatusColumn { get; }

    /// <summary>Where a column stands.</summary>
    /// <exception cref="TableFormatException">The table has no such column.</exception>
    internal int Column(string column)
    {
        int index = IndexOf(column);
        return index >= 0 ? index : throw new TableFormatException(File, HeaderLine, column, "no such column", string.Join(", ", _columns));
    }

    private int IndexOf(string column)
    {
        for (var i = 0; i < _columns.Length; i++)
        {
            if (ReferenceEquals(_columns[i], column) || _columns[i] == column)
            {
                return i;
            }
        }

        return -1;
    }

    internal ReadOnlySpan<char> Part(TextPart part) => _text[part];

    internal TableRow Add(int line, TextPart[] cells)
    {
        var row = new TableRow(this, line, cells);
        _rows.Add(row);
        return row;
    }

    private static bool HasCell(TableRow row, string text)
    {
        for (int i = 0; i < row.Table._columns.Length; i++)
        {
            if (row.Part(i).Equals(text, StringComparison.OrdinalIgnoreCase) || i != row.Table.SourceColumn && HasWord(row.Part(i), text))
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasWord(ReadOnlySpan<char> cell, string text)
    {
        foreach (Range word in cell.SplitAny(" ,;()/"))
        {
            if (cell[word].Equals(text, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
