namespace Leverage.Cli.Output;

/// <summary>Keeps a number and its unit on one line.</summary>
internal static class UnitGlue
{
    private static readonly string[] Units =
        ["%", "N·m", "N", "kN", "mm", "mm²", "m", "m/s", "kg", "J", "K", "MPa", "°C", "°F", "lbf·ft", "lbf", "kip", "in", "in²", "lb", "ksi"];

    /// <summary>Whether a word is a unit that belongs to the number before it.</summary>
    internal static bool IsUnit(string word) => Array.IndexOf(Units, word) >= 0;

    /// <summary>Words, each number together with its unit so that no line ends between them.</summary>
    internal static IEnumerable<string> Words(string words)
    {
        string? held = null;
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string bare = word.TrimEnd('.', ',', ';', ':', ')', '*');
            if (held is not null && char.IsAsciiDigit(held[^1]) && IsUnit(bare))
            {
                held += $" {word}";
                continue;
            }

            if (held is not null)
            {
                yield return held;
            }

            held = word;
        }

        if (held is not null)
        {
            yield return held;
        }
    }

    /// <summary>Words in lines no longer than a width.</summary>
    internal static IEnumerable<string> Lines(string words, int width)
    {
        string line = "";
        foreach (string word in Words(words))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }
}
