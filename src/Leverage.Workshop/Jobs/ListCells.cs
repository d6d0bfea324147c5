using System.Text.RegularExpressions;
using Leverage.Reading;

namespace Leverage.Workshop.Jobs;

/// <summary>
/// Turns what a spreadsheet makes of a value back into what a person would write: decimal commas, units that stand in the
/// column's name, the words for yes and no in several languages. No pattern goes back over what it has read, so none needs a
/// time limit, which a machine that is held up would break.
/// </summary>
internal sealed partial class ListCells
{
    private static readonly string[] Yes = ["true", "wahr", "vrai", "verdadero", "vero", "yes", "ja", "oui", "si", "sì", "sí", "y", "j", "x", "1", "✓"];
    private static readonly string[] No = ["false", "falsch", "faux", "falso", "no", "nein", "non", "n", "0", "-", "–"];

    private bool _decimalComma;

    /// <summary>Looks at a cell before any is read: one decimal comma tells how the others are meant.</summary>
    internal void Learn(FastenerKey? key, string cell) =>
        _decimalComma |= key?.Kind is KeyKind.Quantity or KeyKind.Quantities && LoneComma().IsMatch(cell);

    /// <summary>A cell's text as the job file would have it.</summary>
    /// <param name="column">The column.</param>
    /// <param name="cell">The cell, trimmed.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InputException">A spreadsheet's own error stands there, or it has two meanings.</exception>
    internal string Value(ListColumn column, string cell)
    {
        if (cell[0] == '#' && SheetError().IsMatch(cell))
        {
            throw new InputException($"'{cell}' is an error of the spreadsheet's. Mend it there.");
        }

        return column.Key.Kind switch
        {
            KeyKind.Quantity => Quantity(column, cell),
            KeyKind.Quantities => string.Join(';', cell.Split([';', '/', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(one => Quantity(column, one))),
            KeyKind.Count => WholeNumber().IsMatch(cell) ? cell[..cell.IndexOfAny(['.', ','])] : cell,
            KeyKind.Flag => Flag(cell),
            KeyKind.Designation => Designation(cell),
            _ => cell is ['\'', '=' or '+' or '-' or '@', ..] ? cell[1..] : cell,
        };
    }

    private string Quantity(ListColumn column, string cell)
    {
        if (Thousands().IsMatch(cell) || _decimalComma && ThousandsPoint().IsMatch(cell))
        {
            throw new InputException($"'{cell}' has two meanings: a thousand and more, or a little over one. "
                + "Write it without thousands marks, and with a decimal point.");
        }

        string number = PointThenComma().IsMatch(cell) ? cell.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')
            : LoneComma().IsMatch(cell) ? cell.Replace(',', '.')
            : cell;
        return column.Unit is { } unit && char.IsAsciiDigit(number[^1]) ? number + unit : number;
    }

    private static string Flag(string cell) =>
        Yes.Contains(cell, StringComparer.OrdinalIgnoreCase) ? "true"
        : No.Contains(cell, StringComparer.OrdinalIgnoreCase) ? "false"
        : throw new InputException($"'{cell}' is neither yes nor no. Write yes or no, or leave it empty.");

    /// <summary>A thread or grade: 8,8 is 8.8 and M12x1,5 is M12x1.5; what became a date is refused.</summary>
    private static string Designation(string cell) => Date().IsMatch(cell)
        ? throw new InputException($"'{cell}' is a date: the spreadsheet has made one of what was written. "
            + "Format the column as text, and write it again.")
        : CommaWithin().Replace(cell, ".");

    /// <summary>22,5 Nm or 0,125: one comma, and not three digits behind it unless a zero stands before.</summary>
    [GeneratedRegex(@"^[-+−]?(?:\d+,(?:\d{1,2}|\d{4,})|0+,\d+)(?!\d)[^,\d]*$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex LoneComma();

    /// <summary>1.234,5 Nm.</summary>
    [GeneratedRegex(@"^[-+−]?\d{1,3}(?:\.\d{3})+,\d+[^,.\d]*$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex PointThenComma();

    /// <summary>1,500 Nm.</summary>
    [GeneratedRegex(@"^[-+−]?[1-9]\d{0,2}(?:,\d{3})+(?!\d)[^,\d]*$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex Thousands();

    /// <summary>1.500 Nm.</summary>
    [GeneratedRegex(@"^[-+−]?[1-9]\d{0,2}(?:\.\d{3})+(?!\d)[^.,\d]*$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex ThousandsPoint();

    [GeneratedRegex(@"^\d+[.,]0+$", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex WholeNumber();

    [GeneratedRegex(@"(?<=\d),(?=\d)", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex CommaWithin();

    [GeneratedRegex(@"^#(?:REF!|N/?[AV]|NAME\?|VALUE!|WERT!|BEZUG!|DIV/0!|NUM!|ZAHL!|NULL!|#+)", RegexOptions.CultureInvariant, Timeout.Infinite)]
    private static partial Regex SheetError();

    [GeneratedRegex(@"^\d{4}-\d\d-\d\d|^\d{1,2}[./]\d{1,2}[./]\d{2,4}$|\b(?:Jan|Feb|Mar|Mär|Mrz|Apr|May|Mai|Jun|Jul|Aug|Sep|Oct|Okt|Nov|Dec|Dez)[a-z]*\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, Timeout.Infinite)]
    private static partial Regex Date();
}
