namespace Leverage.Cli.Output;

/// <summary>A small table with aligned columns: text to the left, numbers to the right.</summary>
internal sealed class Columns
{
    private const int Gap = 2;
    private readonly List<string[]> _rows = [];
    private readonly string _align;

    /// <summary>A table whose columns are aligned by letters: l left, r right; the last left column is not padded.</summary>
    internal Columns(string align) => _align = align;

    /// <summary>Adds a row; missing cells at the end are blank.</summary>
    internal Columns Row(params ReadOnlySpan<string> cells)
    {
        string[] row = new string[_align.Length];
        Array.Fill(row, "");
        cells.CopyTo(row);
        _rows.Add(row);
        return this;
    }

    /// <summary>The lines, without trailing blanks.</summary>
    internal IEnumerable<string> Lines()
    {
        int[] widths = new int[_align.Length];
        foreach (string[] row in _rows)
        {
            for (int i = 0; i < row.Length; i++)
            {
                widths[i] = Math.Max(widths[i], row[i].Length);
            }
        }

        foreach (string[] row in _rows)
        {
            yield return Line(row, widths);
        }
    }

    private string Line(string[] row, int[] widths)
    {
        var cells = new string[row.Length];
        for (int i = 0; i < row.Length; i++)
        {
            cells[i] = _align[i] == 'r' ? row[i].PadLeft(widths[i]) : row[i].PadRight(widths[i]);
        }

        return string.Join(new string(' ', Gap), cells).TrimEnd();
    }
}
