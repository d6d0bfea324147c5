using System.Globalization;

namespace Leverage.Tables;

/// <summary>One row of a <see cref="Table"/>: cells by column name, read as the type the caller asks for.</summary>
public sealed class TableRow
{
    private readonly string[] _cells;

    internal TableRow(Table table, int line, string[] cells) => (Table, Line, _cells) = (table, line, cells);

    /// <summary>The table this row stands in.</summary>
    public Table Table { get; }

    /// <summary>Line of the file the row starts on, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The first cell, which names the row.</summary>
    public string Key => _cells[0];

    /// <summary>All cells, in the order of <see cref="Table.Columns"/>.</summary>
    public IReadOnlyList<string> Cells => _cells;

    /// <summary>Where the row's values come from.</summary>
    public string Source => Text("source");

    /// <summary>How far the row may be trusted.</summary>
    public ValueStatus Status =>
        ValueStatusWords.Read(Cell("status")) ?? throw Error("status", ValueStatusWords.Accepted);

    /// <summary>The text of a cell that must not be blank.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The text.</returns>
    /// <exception cref="TableFormatException">The cell is blank or the table has no such column.</exception>
    public string Text(string column)
    {
        var cell = Cell(column);
        return cell.Length > 0 ? cell : throw Error(column, "a text");
    }

    /// <summary>The text of a cell, or null when it is blank.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The text or null.</returns>
    /// <exception cref="TableFormatException">The table has no such column.</exception>
    public string? OptionalText(string column)
    {
        var cell = Cell(column);
        return cell.Length > 0 ? cell : null;
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
        var cell = Cell(column);
        if (cell.Length == 0)
        {
            return null;
        }

        return TryNumber(cell, out var number) ? number : throw Error(column, "a number such as 12.5, or nothing");
    }

    /// <summary>Builds the error for a cell of this row, for readers that accept less than any text or number.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="accepted">What may stand there.</param>
    /// <returns>The error, naming file, line and column.</returns>
    public TableFormatException Error(string column, string accepted)
    {
        var cell = Cell(column);
        return new TableFormatException(Table.File, Line, column, cell.Length == 0 ? "nothing" : $"'{cell}'", accepted);
    }

    /// <summary>Reads a cell as a number: digits, at most one decimal point, an exponent if need be; finite.</summary>
    /// <param name="cell">Text of the cell.</param>
    /// <param name="number">The number read.</param>
    /// <returns>Whether the cell is a number.</returns>
    public static bool TryNumber(string cell, out double number) =>
        double.TryParse(
            cell,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out number) && double.IsFinite(number);

    private string Cell(string column)
    {
        var index = Table.IndexOf(column);
        return index >= 0 ? _cells[index] : throw new TableFormatException(
            Table.File, Table.HeaderLine, column, "no such column", string.Join(", ", Table.Columns));
    }
}
