using System.Text;

namespace Leverage.Charts.Labels;

/// <summary>Breaks text into lines that fit a width.</summary>
internal static class TextLines
{
    /// <summary>The lines, broken at spaces; a word wider than the width stands alone on its line, whole or cut to the width.</summary>
    internal static List<string> Fit(string text, float width, float size, bool bold, bool cut = false)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && ChartFonts.Width(longer, size, bold) > width)
            {
                lines.Add(line.ToString());
                longer = word;
            }

            line.Clear().Append(cut ? Cut(longer, width, size, bold) : longer);
        }

        if (line.Length > 0)
        {
            lines.Add(line.ToString());
        }

        return lines;
    }

    private static string Cut(string text, float width, float size, bool bold)
    {
        int length = text.Length;
        while (length > 1 && ChartFonts.Width(Ended(text, length), size, bold) > width)
        {
            length--;
        }

        return Ended(text, length);
    }

    private static string Ended(string text, int length) => length == text.Length ? text : text[..length] + "…";
}
