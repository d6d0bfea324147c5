using System.Globalization;
using Leverage.Reading;
using Leverage.Workshop.Files;
using nietras.SeparatedValues;

namespace Leverage.Workshop.Jobs;

/// <summary>
/// Reads a list of fasteners as a spreadsheet saves it: a line of column names, then one line each. Columns are named like
/// the keys of a fastener in a job file; an empty cell is a key left out. What cannot be is told of all rows at once.
/// </summary>
internal sealed class FastenerList
{
    /// <summary>The most fasteners a job may have; a sheet of more is no use to anybody.</summary>
    internal const int Most = 10_000;

    private const long MostBytes = 64_000_000;

    private readonly string _path;
    private readonly ListCells _cells = new();
    private readonly List<InputException> _errors = [];

    private FastenerList(string path) => _path = path;

    /// <summary>The rows of a list, each as a table of its cells.</summary>
    /// <param name="path">The file.</param>
    /// <returns>One table a row; blank rows are left out.</returns>
    /// <exception cref="InputException">It cannot be read, or its columns cannot be.</exception>
    internal static IReadOnlyList<TomlSection> Read(string path) => Parse(path, ListText.Of(path, TextFile.Bytes(path, MostBytes)));

    internal static IReadOnlyList<TomlSection> Parse(string path, string text) => new FastenerList(path).Rows(ListText.Lines(text));

    private IReadOnlyList<TomlSection> Rows(string text)
    {
        ListSeparator.RefuseOpenQuote(_path, text);
        int skipped = ListSeparator.Find(text, out char separator);
        using SepReader reader = Sep.New(separator).Reader(o => o with
        {
            HasHeader = false,
            DisableColCountCheck = true,
            Unescape = true,
            CultureInfo = CultureInfo.InvariantCulture,
        }).FromText(text);
        ListColumn?[]? columns = null;
        var rows = new List<(FilePlace Place, string[] Cells, FilePlace[] CellPlaces)>();
        bool first = true;
        foreach (SepReader.Row row in reader)
        {
            // Of its first row the library tells the line behind it.
            int line = first ? 1 : row.LineNumberFrom;
            first = false;
            if (ListRow.IsBlank(row) || line <= skipped)
            {
                continue;
            }

            if (columns is null)
            {
                columns = Columns(row, line);
                continue;
            }

            rows.Add(rows.Count < Most ? Cells(row, columns) : throw TooMany(new FilePlace(_path, row.LineNumberFrom, 1)));
        }

        return columns is null
            ? throw new FilePlace(_path, 1, 1).Error("is empty: a line of column names is wanted.")
            : [.. rows.Select(row => Section(row.Place, row.Cells, row.CellPlaces, columns))];
    }

    private ListColumn?[] Columns(SepReader.Row row, int line)
    {
        var columns = new ListColumn?[row.ColCount];
        for (int i = 0; i < columns.Length; i++)
        {
            FilePlace place = ListRow.Place(_path, row, i, line);
            try
            {
                columns[i] = ListHeader.Column(row[i].ToString(), place);
                if (columns[i] is { } one && columns.Take(i).Any(other => other?.Key == one.Key))
                {
                    throw place.Error($"there are two columns {one.Key.Name}. Take one out.");
                }
            }
            catch (InputException e)
            {
                _errors.Add(e);
            }
        }

        var start = new FilePlace(_path, line, 1);
        if (columns.All(column => column is null))
        {
            throw start.Error("no column is named like a key of a fastener. The first line holds the names, such as name;thread;torque.");
        }

        if (_errors.Count == 0 && !columns.Any(column => column?.Key.Name == "name"))
        {
            _errors.Add(start.Error("there is no column name: each fastener needs one."));
        }

        return _errors.Count > 0 ? throw InputException.All(_errors) : columns;
    }

    private (FilePlace, string[], FilePlace[]) Cells(SepReader.Row row, ListColumn?[] columns)
    {
        var cells = new string[row.ColCount];
        var places = new FilePlace[row.ColCount];
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i] = ListRow.Text(row[i].Span);
            places[i] = ListRow.Place(_path, row, i, row.LineNumberFrom);
            if (cells[i].Length > 0)
            {
                _cells.Learn(i < columns.Length ? columns[i]?.Key : null, cells[i]);
            }
        }

        return (new FilePlace(_path, row.LineNumberFrom, 1), cells, places);
    }

    private TomlSection Section(FilePlace place, string[] cells, FilePlace[] places, ListColumn?[] columns)
    {
        var section = new TomlSection("fasteners", place) { Errors = [] };
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i].Length == 0)
            {
                continue;
            }

            if (i >= columns.Length || columns[i] is not { } column)
            {
                section.Errors.Add(i < columns.Length
                    ? places[i].Error("something stands below a column without a name. Name the column, or empty it.")
                    : place.Error(string.Create(CultureInfo.InvariantCulture,
                        $"{cells.Length} cells where there are {columns.Length} columns. A separator inside a cell needs quotes round the cell.")));
                break;
            }

            try
            {
                section.TryAdd(column.Key.Name, places[i], Read(column, places[i], cells[i]));
            }
            catch (InputException e)
            {
                section.Spoil(column.Key.Name, places[i].Error(column.Key.Name, e.Message));
            }
        }

        return section;
    }

    private TomlValue Read(ListColumn column, FilePlace place, string cell)
    {
        string text = _cells.Value(column, cell);
        return column.Key.Kind == KeyKind.Quantities
            ? new TomlList(place, [.. text.Split(';').Select(one => new TomlText(place, one))])
            : new TomlText(place, text);
    }

    internal static InputException TooMany(FilePlace place) => place.Error(
        string.Create(CultureInfo.InvariantCulture, $"more than {Most} fasteners. Is it the right file? Split the job."));
}
