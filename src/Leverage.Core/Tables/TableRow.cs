using System.Globalization;

namespace Leverage.Tables;

/// <summary>One row of a <see cref="Table"/>: cells by column name, read as the type the caller asks for.</summary>
public sealed class TableRow
{
    private readonly TextPart[] _cells;
    private string?[]? _texts;

    internal TableRow(Table table, int line, TextPart[] cells) => (Table, Line, _cells) = (table, line, cells);

    /// <summary>The table this row stands in.</summary>
    public Table Table { get; }

    /// <summary>Line of the file the row starts on, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The first cell, which names the row.</summary>
    public string Key => TextOf(0);

    /// <summary>All cells, in the order of <see cref="Table.Columns"/>.</summary>
    public IReadOnlyList<string> Cells
    {
        get
        {
            string[] texts = new string[_cells.Length];
            for (int i = 0; i < texts.Length; i++)
            {
                texts[i] = TextOf(i);
            }

            return texts;
        }
    }

    /// <summary>Where the row's values come from.</summary>
    public string Source => Text("source");

    /// <summary>How far the row may be trusted.</summary>
    public ValueStatus Status =>
        ValueStatusWords.Read(Part(Table.StatusColumn)) ?? throw Error("status", ValueStatusWords.Accepted);

    /// <summary>The text of a cell that must not be blank.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The text.</returns>
    /// <exception cref="TableFormatException">The cell is blank or the table has no such column.</exception>
    public string Text(string column)
    {
        int index = Table.Column(column);
        return _cells[index].Length > 0 ? TextOf(index) : throw Error(column, "a text");
    }

    /// <summary>The text of a cell, or null when it is blank.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The text or null.</returns>
    /// <exception cref="TableFormatException">The table has no such column.</exception>
    public string? OptionalText(string column)
    {
        int index = Table.Column(column);
        return _cells[index].Length > 0 ? TextOf(index) : null;
    }

    /// <summary>The number in a cell that must not be blank: decimal point, no unit, no thousands separator.</summary>
    /// <param name="column">Name of the column; its last part is the unit.</param>
    /// <returns>A finite number.</returns>
    /// <exception cref="TableFormatException">The cell is blank or no number, or the table has no such column.</exception>
    public double Number(string column) => OptionalNumber(column) ?? throw Error(column, "a number such as 12.5");

    /// <summary>The number in a cell, or null when the cell is blank.</summary>
    /// <param name="column">Name of the column; its last part is the unit.</param>
    /// <returns>A finite number or null.</returns>
    /// <exception cref="TableFormatException">The cell is no number, or the table has no such column.</exception>
    public double? OptionalNumber(string column)
    {
        int index = Table.Column(column);
        return _cells[index].Length > 0 ? NumberAt(index) : null;
    }

    /// <summary>The number in a cell that is not blank.</summary>
    /// <exception cref="TableFormatException">It is no number.</exception>
    internal double NumberAt(int index) =>
        TryNumber(Part(index), out double number) ? number : throw Error(Table.Columns[index], "a number such as 12.5, or nothing");

    /// <summary>Builds the error for a cell of this row, for readers that accept less than any text or number.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="accepted">What may stand there.</param>
    /// <returns>The error, naming file, line and column.</returns>
    public TableFormatException Error(string column, string accepted)
    {
        string cell = TextOf(Table.Column(column));
        return new TableFormatException(Table.File, Line, column, cell.Length == 0 ? "nothing" : $"'{cell}'", accepted);
    }

    /// <summary>Reads a cell as a number: digits, at most one decimal point, an exponent if need be; finite.</summary>
    /// <param name="cell">Text of the cell.</param>
    /// <param name="number">The number read.</param>
    /// <returns>Whether the cell is a number.</returns>
    public static bool TryNumber(ReadOnlySpan<char> cell, out double number) =>
        double.TryParse(
            cell,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out number) && double.IsFinite(number);

    /// <summary>A cell's text where it stands in the table's, without a string of its own.</summary>
    internal ReadOnlySpan<char> Part(int index) => Table.Part(_cells[index]);

    /// <summary>Whether the first cell is exactly this.</summary>
    internal bool IsNamed(ReadOnlySpan<char> name) => Part(0).SequenceEqual(name);

    /// <summary>Whether the cell in a column of this name is exactly this.</summary>
    internal bool Says(string column, ReadOnlySpan<char> text) => Part(column).SequenceEqual(text);

    /// <summary>The text of the cell in a column of this name.</summary>
    internal ReadOnlySpan<char> Part(string column) => Part(Table.Column(column));

    // Most cells are never asked for: a string is made when one is, and kept.
    private string TextOf(int index) => (_texts ??= new string?[_cells.Length])[index] ??= Part(index).ToString();
}
