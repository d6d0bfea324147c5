using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>Finds the mark between the cells of a list before its cells are read.</summary>
internal static class ListSeparator
{
    /// <summary>Marks that may stand between cells; of two that stand equally often the one named first here.</summary>
    private const string Separators = ";\t|,";

    /// <summary>The separator a first line <c>sep=;</c> names, and that there is such a line; else the one that stands most often in the first line.</summary>
    internal static int Find(string text, out char separator)
    {
        ReadOnlySpan<char> start = text.AsSpan().TrimStart('\n');
        int line = text.Length - start.Length + 1;
        ReadOnlySpan<char> first = start[..(start.IndexOf('\n') is var end and >= 0 ? end : start.Length)];
        ReadOnlySpan<char> bare = first.Trim(" \"");
        if (bare.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && first.IndexOf('=') + 1 < first.Length)
        {
            separator = first[first.IndexOf('=') + 1];
            return line;
        }

        separator = MostOften(first);
        return 0;
    }

    private static char MostOften(ReadOnlySpan<char> line)
    {
        Span<int> counts = stackalloc int[Separators.Length];
        bool quoted = false;
        foreach (char letter in line)
        {
            quoted ^= letter == '"';
            if (!quoted && Separators.IndexOf(letter, StringComparison.Ordinal) is var i and >= 0)
            {
                counts[i]++;
            }
        }

        int best = 0;
        for (int i = 1; i < counts.Length; i++)
        {
            best = counts[i] > counts[best] ? i : best;
        }

        return Separators[counts[best] > 0 ? best : Separators.Length - 1];
    }

    /// <summary>A quotation mark that never closes would swallow all that follows.</summary>
    internal static void RefuseOpenQuote(string path, string text)
    {
        int open = -1;
        for (int i = text.IndexOf('"', StringComparison.Ordinal); i >= 0; i = text.IndexOf('"', i + 1))
        {
            open = open < 0 ? i : -1;
        }

        if (open >= 0)
        {
            ReadOnlySpan<char> ahead = text.AsSpan(0, open);
            throw new FilePlace(path, 1 + ahead.Count('\n'), open - ahead.LastIndexOf('\n')).Error(
                "a quotation mark opens here and never closes. For inches write in, such as 3/4in.");
        }
    }
}
