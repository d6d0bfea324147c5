using System.Globalization;
using Leverage.Workshop.Files;
using nietras.SeparatedValues;

namespace Leverage.Workshop.Jobs;

/// <summary>
/// Reads a list of fasteners as a spreadsheet saves it: a line of column names, then one line each; commas, semicolons
/// or tabs between. Columns are named like the keys of a fastener in a job file; an empty cell is a key left out.
/// </summary>
internal static class FastenerList
{
    /// <summary>The most fasteners a job may have; a sheet of more is no use to anybody.</summary>
    internal const int Most = 10_000;

    private const long MostBytes = 64_000_000;

    /// <summary>The rows of a list, each as a table of its cells.</summary>
    /// <param name="path">The file.</param>
    /// <returns>One table a row; blank rows are left out.</returns>
    /// <exception cref="Reading.InputException">It cannot be read, or a row does not go with the columns.</exception>
    internal static IReadOnlyList<TomlSection> Read(string path) => Parse(path, TextFile.Read(path, MostBytes));

    internal static IReadOnlyList<TomlSection> Parse(string path, string text)
    {
        var rows = new List<TomlSection>();
        string[]? columns = null;
        using var reader = Sep.Reader(o => o with
        {
            HasHeader = false,
            DisableColCountCheck = true,
            Unescape = true,
            CultureInfo = CultureInfo.InvariantCulture,
        }).FromText(text);
        foreach (var row in reader)
        {
            if (columns is null)
            {
                columns = Columns(row, path);
            }
            else if (!IsBlank(row))
            {
                rows.Add(rows.Count < Most ? Section(row, columns, path) : throw TooMany(new FilePlace(path, row.LineNumberFrom, 1)));
            }
        }

        return columns is null ? throw new FilePlace(path, 1, 1).Error("is empty: a line of column names is wanted.") : rows;
    }

    private static string[] Columns(SepReader.Row row, string path)
    {
        var columns = new string[row.ColCount];
        for (int i = 0; i < columns.Length; i++)
        {
            FilePlace place = Place(row, i, path, 1);
            columns[i] = row[i].ToString().Trim().ToLowerInvariant().Replace(' ', '_');
            if (columns[i].Length == 0 || Array.IndexOf(columns, columns[i]) < i)
            {
                throw place.Error(columns[i].Length == 0
                    ? "a column has no name. Name it, or take it out."
                    : $"there are two columns {columns[i]}. Take one out.");
            }
        }

        return columns;
    }

    private static TomlSection Section(SepReader.Row row, string[] columns, string path)
    {
        if (row.ColCount != columns.Length)
        {
            throw new FilePlace(path, row.LineNumberFrom, 1).Error(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.ColCount} cells where there are {columns.Length} columns. A separator inside a cell needs quotes round the cell."));
        }

        var section = new TomlSection("fasteners", new FilePlace(path, row.LineNumberFrom, 1));
        for (int i = 0; i < columns.Length; i++)
        {
            FilePlace place = Place(row, i, path, row.LineNumberFrom);
            string cell = Cell(row[i].Span);
            if (cell.Length > 0)
            {
                section.TryAdd(columns[i], place, new TomlText(place, cell));
            }
        }

        return section;
    }

    /// <summary>A cell's text: line breaks inside become spaces, and a spreadsheet's TRUE is true.</summary>
    private static string Cell(ReadOnlySpan<char> span)
    {
        string text = span.Trim().ToString();
        return text is "TRUE" or "FALSE" ? text.ToLowerInvariant()
            : text.AsSpan().ContainsAny('\r', '\n') ? text.ReplaceLineEndings(" ")
            : text;
    }

    private static bool IsBlank(SepReader.Row row)
    {
        for (int i = 0; i < row.ColCount; i++)
        {
            if (!row[i].Span.IsWhiteSpace())
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Line and column of a cell; a row may span lines where a cell holds line breaks.</summary>
    private static FilePlace Place(SepReader.Row row, int i, string path, int line)
    {
        ReadOnlySpan<char> whole = row.Span;
        if (!whole.Overlaps(row[i].Span, out int offset))
        {
            // An empty cell lies nowhere: it begins a separator behind the one before.
            FilePlace before = i > 0 ? Place(row, i - 1, path, line) : new FilePlace(path, line, 0);
            return before with { Column = before.Column + (i > 0 ? row[i - 1].Span.Length : 0) + 1 };
        }

        ReadOnlySpan<char> ahead = whole[..offset];
        return new FilePlace(path, line + ahead.Count('\n'), offset - ahead.LastIndexOf('\n'));
    }

    internal static Reading.InputException TooMany(FilePlace place) => place.Error(
        string.Create(CultureInfo.InvariantCulture, $"more than {Most} fasteners. Is it the right file? Split the job."));
}
