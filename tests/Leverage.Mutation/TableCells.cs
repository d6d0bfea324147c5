namespace Leverage.Mutation;

/// <summary>Changes one digit of one cell of one table.</summary>
internal static class TableCells
{
    /// <summary>A random sample of changes, the same for the same seed.</summary>
    public static IEnumerable<(string Table, int Line, string Was, string Now, string Text)> Sample(string root, int count, int seed)
    {
        var random = new Random(seed);
        string[] files = [.. Directory.EnumerateFiles(Path.Combine(root, "tables"), "*.csv").Order(StringComparer.Ordinal)];
        var lines = files.SelectMany(file => File.ReadAllLines(file).Select((text, i) => (file, text, i)))
            .Where(each => !each.text.StartsWith('#') && each.text.Any(char.IsAsciiDigit)).ToArray();
        for (int n = 0; n < count; n++)
        {
            var (file, line, i) = lines[random.Next(lines.Length)];
            int[] digits = [.. Enumerable.Range(0, line.Length).Where(at => char.IsAsciiDigit(line[at]))];
            int place = digits[random.Next(digits.Length)];
            char now = (char)('0' + (line[place] - '0' + 1 + random.Next(9)) % 10);
            string changed = $"{line[..place]}{now}{line[(place + 1)..]}";
            string[] all = File.ReadAllLines(file);
            all[i] = changed;
            yield return ($"tables/{Path.GetFileName(file)}", i + 1, line, changed, string.Join('\n', all) + "\n");
        }
    }
}
