using Leverage.Reading;
using Leverage.Workshop.Files;
using nietras.SeparatedValues;
using Tomlyn.Syntax;

namespace Leverage.Workshop.Jobs;

/// <summary>Something that happened, as a key of a task or of a fastener.</summary>
/// <param name="Table"><c>tasks</c> or <c>fasteners</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Key">The key, such as <c>done</c> or <c>held</c>.</param>
/// <param name="Values">Its texts; several make a list, none takes the key out.</param>
internal sealed record JobMark(string Table, string Name, string Key, IReadOnlyList<string> Values);

/// <summary>Writes what happened into the files of a job, and leaves everything else in them as it stands.</summary>
internal static class JobMarks
{
    /// <summary>The text with a mark written; null where the file has nothing of that name.</summary>
    /// <param name="path">What errors call the file: a list where it ends on .csv or .txt, else a job.</param>
    /// <param name="text">Its text.</param>
    /// <param name="mark">The mark.</param>
    /// <exception cref="InputException">The file cannot be read, or the thing stands where no line of its own can be written.</exception>
    internal static string? Written(string path, string text, JobMark mark) =>
        path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? InTables(path, text, mark)
        : mark.Table == "fasteners" ? InList(text, mark)
        : null;

    private static string? InTables(string path, string text, JobMark mark)
    {
        foreach (TableArraySyntax table in TomlFile.Tree(path, text).Tables.OfType<TableArraySyntax>().Where(table => table.Name!.ToString().Trim() == mark.Table))
        {
            KeyValueSyntax? name = Pair(table, "name");
            if (name?.Value is StringValueSyntax { Value: { } words } && IsNamed(words, mark.Name))
            {
                return InTable(text, name, Pair(table, mark.Key), mark);
            }
        }

        return null;
    }

    private static string InTable(string text, KeyValueSyntax name, KeyValueSyntax? there, JobMark mark)
    {
        string value = mark.Values.Count == 1 ? Quoted(mark.Values[0]) : $"[{string.Join(", ", mark.Values.Select(Quoted))}]";
        if (there is not null)
        {
            int from = mark.Values.Count == 0 ? text.LastIndexOf('\n', there.Key!.Span.Start.Offset) + 1 : there.Value!.Span.Start.Offset;
            int to = mark.Values.Count == 0 ? EndOfLine(text, there) : there.Value!.Span.End.Offset + 1;
            return mark.Values.Count == 0 ? text.Remove(from, Math.Min(text.Length, to + 1) - from) : $"{text[..from]}{value}{text[to..]}";
        }

        int end = EndOfLine(text, name);
        string ending = end > 0 && text[end - 1] == '\r' ? "\r\n" : "\n";
        return mark.Values.Count == 0 ? text : $"{text[..(ending.Length == 2 ? end - 1 : end)]}{ending}{mark.Key} = {value}{text[(ending.Length == 2 ? end - 1 : end)..]}";
    }

    private static int EndOfLine(string text, KeyValueSyntax pair) =>
        text.IndexOf('\n', pair.Value!.Span.End.Offset) is >= 0 and var end ? end : text.Length;

    private static KeyValueSyntax? Pair(TableArraySyntax table, string key) => table.Items.FirstOrDefault(pair => pair.Key!.ToString().Trim() == key);

    private static string Quoted(string text) => text is "true" or "false"
        ? text
        : $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static bool IsNamed(string words, string name) => string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        .Equals(name, StringComparison.OrdinalIgnoreCase);

    /// <summary>The list with the cell written, below a column of its own where there was none.</summary>
    private static string? InList(string text, JobMark mark)
    {
        string lines = ListText.Lines(text);
        int skipped = ListSeparator.Find(lines, out char separator);
        using SepReader reader = Sep.New(separator).Reader(o => o with { HasHeader = false, DisableColCountCheck = true }).FromText(lines);
        var written = new List<string>();
        (int name, int key) = (-1, -1);
        bool found = false;
        foreach (SepReader.Row row in reader)
        {
            string[] cells = row[..].ToStringsArray();
            if (name < 0 && written.Count >= skipped && cells.Any(cell => cell.Trim().Length > 0))
            {
                string?[] names = [.. cells.Select(cell => ListHeader.Column(Bare(cell), new FilePlace("", 1, 1))?.Key.Name)];
                name = Array.IndexOf(names, "name");
                key = Array.IndexOf(names, mark.Key);
                (cells, key) = key < 0 ? ([.. cells, mark.Key], cells.Length) : (cells, key);
            }
            else if (!found && name >= 0 && name < cells.Length && IsNamed(Bare(cells[name]), mark.Name))
            {
                found = true;
                string value = mark.Values is ["true"] ? "yes" : string.Join("; ", mark.Values);
                Array.Resize(ref cells, Math.Max(cells.Length, key + 1));
                cells[key] = value.Contains(separator, StringComparison.Ordinal) ? $"\"{value}\"" : value;
            }

            written.Add(string.Join(separator, cells));
        }

        string whole = string.Join('\n', written) + (lines.EndsWith('\n') ? "\n" : "");
        return !found ? null : text.Contains("\r\n", StringComparison.Ordinal) ? whole.Replace("\n", "\r\n", StringComparison.Ordinal) : whole;
    }

    /// <summary>A cell without the marks round it.</summary>
    private static string Bare(string cell) =>
        cell.Trim() is ['"', .. var inside, '"'] ? inside.Replace("\"\"", "\"", StringComparison.Ordinal).Trim() : cell.Trim();
}
