namespace Leverage.Cli.About;

/// <summary>The few requests of the man macros that a manual page of plain words needs.</summary>
internal sealed class Roff(TextWriter text)
{
    /// <summary>The page's name and the version it belongs to.</summary>
    internal void Title(string name, string version) =>
        text.Write($".TH {name.ToUpperInvariant()} 1 \"\" \"{name} {Escaped(version)}\" \"User Commands\"\n.nh\n.ad l\n");

    /// <summary>A section.</summary>
    internal void Section(string name) => text.Write($".SH {name}\n");

    /// <summary>A heading within a section.</summary>
    internal void Heading(string words) => text.Write($".SS {Escaped(words)}\n");

    /// <summary>A paragraph.</summary>
    internal void Text(string words) => text.Write($".PP\n{Line(words)}\n");

    /// <summary>Lines that stay as they are, indented.</summary>
    internal void Lines(IEnumerable<string> lines)
    {
        text.Write(".PP\n.RS 4\n.nf\n");
        foreach (string line in lines)
        {
            text.Write($"{Line(line)}\n");
        }

        text.Write(".fi\n.RE\n");
    }

    /// <summary>A word and, below it, what it means.</summary>
    internal void Tagged(string word, string meaning) => text.Write($".TP\n.B {Escaped(word)}\n{Line(meaning)}\n");

    /// <summary>A line of words that no request hides in.</summary>
    private static string Line(string words)
    {
        string escaped = Escaped(words);
        return escaped.StartsWith('.') || escaped.StartsWith('\'') ? $"\\&{escaped}" : escaped;
    }

    /// <summary>Words in which backslash, hyphen, quotes and the like stand for themselves.</summary>
    private static string Escaped(string words) => words
        .Replace("\\", "\\e", StringComparison.Ordinal)
        .Replace("-", "\\-", StringComparison.Ordinal)
        .Replace("'", "\\(aq", StringComparison.Ordinal)
        .Replace("\"", "\\(dq", StringComparison.Ordinal)
        .Replace("^", "\\(ha", StringComparison.Ordinal)
        .Replace("~", "\\(ti", StringComparison.Ordinal)
        .Replace("`", "\\(ga", StringComparison.Ordinal);
}
