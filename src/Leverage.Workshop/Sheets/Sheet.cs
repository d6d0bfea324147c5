namespace Leverage.Workshop.Sheets;

/// <summary>A printable page as plain content: what it says and in which order, not how it looks.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What stands on it, from top to bottom.</param>
public sealed record Sheet(string Title, IReadOnlyList<SheetBlock> Blocks);

/// <summary>A piece of a sheet.</summary>
public abstract record SheetBlock;

/// <summary>A heading of a part of the sheet.</summary>
/// <param name="Words">The heading.</param>
/// <param name="Note">What is to be known of it, smaller.</param>
public sealed record SheetHeading(string Words, string Note = "") : SheetBlock;

/// <summary>A paragraph.</summary>
/// <param name="Words">The words.</param>
public sealed record SheetParagraph(string Words) : SheetBlock;

/// <summary>Something that can hurt: it must catch the eye.</summary>
/// <param name="Words">The words.</param>
public sealed record SheetCaution(string Words) : SheetBlock;

/// <summary>A line to fill in by hand.</summary>
/// <param name="Labels">What is to be filled in.</param>
public sealed record SheetBlanks(IReadOnlyList<string> Labels) : SheetBlock;

/// <summary>A framed list of labelled lines, for what is read before the work begins.</summary>
/// <param name="Lines">The lines.</param>
public sealed record SheetPanel(IReadOnlyList<SheetLine> Lines) : SheetBlock;

/// <summary>A labelled line.</summary>
/// <param name="Label">The label.</param>
/// <param name="Words">The words.</param>
public sealed record SheetLine(string Label, string Words);

/// <summary>A table whose rows come in groups: a task and what is turned in it.</summary>
/// <param name="Columns">Its columns; the first is the groups' own.</param>
/// <param name="Groups">Its groups from top to bottom.</param>
public sealed record SheetTable(IReadOnlyList<SheetColumn> Columns, IReadOnlyList<SheetGroup> Groups) : SheetBlock;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Its share of the page's width, in percent.</param>
public readonly record struct SheetColumn(string Name, int Width);

/// <summary>Rows that belong together.</summary>
/// <param name="Lead">What they are, with a box; it stands beside all of them.</param>
/// <param name="Rows">The rows, a cell for each column but the first; none where the lead says it all.</param>
public sealed record SheetGroup(SheetCell Lead, IReadOnlyList<SheetRow> Rows);

/// <summary>A row.</summary>
/// <param name="Cells">Its cells.</param>
/// <param name="Note">What stands below it across the columns; empty for nothing.</param>
public sealed record SheetRow(IReadOnlyList<SheetCell> Cells, string Note = "");

/// <summary>What a cell is.</summary>
public enum CellKind
{
    /// <summary>Words.</summary>
    Words,

    /// <summary>A name, with a box before it.</summary>
    Ticked,

    /// <summary>A figure, kept together and large.</summary>
    Figure,

    /// <summary>A figure and a verdict: its second line is the word.</summary>
    Verdict,

    /// <summary>A place to write in.</summary>
    Blank,
}

/// <summary>A cell of a table.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Lines">Its lines; the first is the main one.</param>
public sealed record SheetCell(CellKind Kind, params IReadOnlyList<string> Lines)
{
    /// <summary>Lines that must catch the eye, behind the main one.</summary>
    public IReadOnlyList<string> Loud { get; init; } = [];
}

/// <summary>A drawing.</summary>
/// <param name="Svg">The drawing, as SVG made by this program.</param>
/// <param name="Caption">What it shows, in words.</param>
public sealed record SheetFigure(string Svg, string Caption) : SheetBlock;
