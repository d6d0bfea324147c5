using Leverage.Workshop.Files;
using nietras.SeparatedValues;

namespace Leverage.Workshop.Jobs;

/// <summary>What a row of a list holds, and where.</summary>
internal static class ListRow
{
    /// <summary>A cell's text: line breaks and hard spaces inside become spaces.</summary>
    internal static string Text(ReadOnlySpan<char> span)
    {
        ReadOnlySpan<char> text = span.Trim();
        return text.ContainsAny("\n\u00A0\u202F\u2007")
            ? text.ToString().Replace('\n', ' ').Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2007', ' ').Trim()
            : text.ToString();
    }

    /// <summary>Whether nothing stands in it.</summary>
    internal static bool IsBlank(SepReader.Row row)
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
    internal static FilePlace Place(string path, SepReader.Row row, int i, int line)
    {
        ReadOnlySpan<char> whole = row.Span;
        if (!whole.Overlaps(row[i].Span, out int offset))
        {
            // An empty cell lies nowhere: it begins a separator behind the one before.
            FilePlace before = i > 0 ? Place(path, row, i - 1, line) : new FilePlace(path, line, 0);
            return before with { Column = before.Column + (i > 0 ? row[i - 1].Span.Length : 0) + 1 };
        }

        ReadOnlySpan<char> ahead = whole[..offset];
        return new FilePlace(path, line + ahead.Count('\n'), offset - ahead.LastIndexOf('\n'));
    }
}
