namespace Leverage.Workshop.Sheets;

/// <summary>A printable page as plain content: what it says and in which order, not how it looks.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What stands on it, from top to bottom.</param>
public sealed record Sheet(string Title, IReadOnlyList<SheetBlock> Blocks);

/// <summary>A piece of a sheet.</summary>
public abstract record SheetBlock;

/// <summary>A heading of a part of the sheet.</summary>
/// <param name="Words">The heading.</param>
/// <param name="NewPage">Whether a printer should begin a page here.</param>
public sealed record SheetHeading(string Words, bool NewPage = false) : SheetBlock;

/// <summary>A paragraph.</summary>
/// <param name="Words">The words.</param>
public sealed record SheetParagraph(string Words) : SheetBlock;

/// <summary>Something that can hurt: it must catch the eye.</summary>
/// <param name="Words">The words.</param>
public sealed record SheetCaution(string Words) : SheetBlock;

/// <summary>A line to fill in by hand.</summary>
/// <param name="Labels">What is to be filled in.</param>
public sealed record SheetBlanks(IReadOnlyList<string> Labels) : SheetBlock;

/// <summary>A list; with a box before each entry where it is to be ticked off.</summary>
/// <param name="Entries">The entries.</param>
/// <param name="Ticked">Whether each has a box.</param>
public sealed record SheetList(IReadOnlyList<string> Entries, bool Ticked = false) : SheetBlock;

/// <summary>Numbered steps, each with a box.</summary>
/// <param name="Steps">The steps.</param>
public sealed record SheetSteps(IReadOnlyList<SheetStep> Steps) : SheetBlock;

/// <summary>A numbered step.</summary>
/// <param name="Title">What to do.</param>
/// <param name="Lines">What goes with it, each with a label such as "take off".</param>
public sealed record SheetStep(string Title, IReadOnlyList<SheetLine> Lines);

/// <summary>A labelled line.</summary>
/// <param name="Label">The label.</param>
/// <param name="Words">The words.</param>
public sealed record SheetLine(string Label, string Words);

/// <summary>A table.</summary>
/// <param name="Columns">Names of its columns.</param>
/// <param name="Rows">Its rows, a cell for each column.</param>
public sealed record SheetTable(IReadOnlyList<SheetColumn> Columns, IReadOnlyList<IReadOnlyList<SheetCell>> Rows) : SheetBlock;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Its share of the page's width, in percent.</param>
public readonly record struct SheetColumn(string Name, int Width);

/// <summary>What a cell is.</summary>
public enum CellKind
{
    /// <summary>Words.</summary>
    Words,

    /// <summary>The name of the row.</summary>
    Name,

    /// <summary>Figures, kept together.</summary>
    Figure,

    /// <summary>A verdict: its first line is the word.</summary>
    Verdict,

    /// <summary>A box to tick.</summary>
    Box,
}

/// <summary>A cell of a table.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Lines">Its lines; the first is the main one.</param>
public sealed record SheetCell(CellKind Kind, params IReadOnlyList<string> Lines);

/// <summary>A drawing.</summary>
/// <param name="Svg">The drawing, as SVG made by this program.</param>
/// <param name="Caption">What it shows, in words.</param>
public sealed record SheetFigure(string Svg, string Caption) : SheetBlock;
