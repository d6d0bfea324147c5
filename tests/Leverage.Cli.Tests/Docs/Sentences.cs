using System.Text.RegularExpressions;

namespace Leverage.Cli.Tests.Docs;

/// <summary>Sentences of a text: what stands between two full stops, semicolons or colons.</summary>
internal static partial class Sentences
{
    /// <summary>Columns of an answer that hold a label.</summary>
    private const int LabelWidth = 18;

    /// <summary>Fewest words that make a sentence.</summary>
    private const int FewestWords = 4;

    /// <summary>Of an answer as it is printed: the words beside and below its labels; rows of tables and lists of names left out.</summary>
    internal static IEnumerable<string> OfAnswer(string answer)
    {
        var blocks = new List<string>();
        foreach (string line in answer.Split('\n').Where(line => line.Length > LabelWidth && line.StartsWith("  ", StringComparison.Ordinal)))
        {
            string label = line[..LabelWidth].Trim();
            if (label.Length == 0 && blocks.Count > 0)
            {
                blocks[^1] += $" {line.Trim()}";
            }
            else
            {
                blocks.Add(Labelled().IsMatch(line) ? line[LabelWidth..] : "");
            }
        }

        return blocks.SelectMany(Of).Where(sentence => !Listed().IsMatch(sentence));
    }

    /// <summary>Of a page: its paragraphs and list items, without code, tables, headings and the targets of links.</summary>
    internal static IEnumerable<string> OfPage(string markdown) => Paragraphs().Split(Links().Replace(Blocks().Replace(markdown, "\n\n"), "${text}"))
        .Where(paragraph => !paragraph.StartsWith('#') && !paragraph.StartsWith('|') && !paragraph.StartsWith('!'))
        .Select(paragraph => Spaces().Replace(paragraph, " "))
        .SelectMany(Of);

    /// <summary>Of a file of settings: its comments.</summary>
    internal static IEnumerable<string> OfComments(string toml) =>
        toml.Split('\n').Where(line => line.Contains('#', StringComparison.Ordinal)).Select(line => line[line.IndexOf('#', StringComparison.Ordinal)..].Trim('#', ' ')).SelectMany(Of);

    /// <summary>Of source text: what stands in quotes and reads like words.</summary>
    internal static IEnumerable<string> OfSource(string source) => Quotes(source).Select(words => Holes().Replace(words, "N"))
        .Where(words => words.Length > 0 && char.IsLetter(words[0]) && !words.Contains("=>", StringComparison.Ordinal)).SelectMany(Of);

    /// <summary>What stands in quotes.</summary>
    internal static IEnumerable<string> Quotes(string source) => Quoted().Matches(source).Select(match => match.Groups["words"].Value);

    /// <summary>Words of a sentence.</summary>
    internal static int Words(string sentence) => sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetterOrDigit));

    /// <summary>The sentences of running text.</summary>
    internal static IEnumerable<string> Of(string text) => Ends().Split(text).Select(sentence => sentence.Trim()).Where(sentence => Words(sentence) >= FewestWords);

    [GeneratedRegex(@"(?<=[.;:?!]\)?)\s+", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Ends();

    /// <summary>A label of two columns' indent, then words with single blanks between them.</summary>
    [GeneratedRegex(@"^  \S(\S| \S)* {2,}\S+( \S+)*$|^  \S(\S| \S){14,15} \S+( \S+)*$", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Labelled();

    /// <summary>Names one after the other, with commas.</summary>
    [GeneratedRegex("(,.*){4}", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Listed();

    [GeneratedRegex(@"```.*?```", RegexOptions.Singleline, 5000)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"!?\[(?<text>[^\]]*)\]\([^)]*\)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Links();

    [GeneratedRegex(@"\n\s*\n|\n(?=[-*|#>] |\d+\. )", RegexOptions.None, 5000)]
    private static partial Regex Paragraphs();

    [GeneratedRegex(@"\s+", RegexOptions.None, 5000)]
    private static partial Regex Spaces();

    [GeneratedRegex("""["`](?<words>[^"`\n]+)["`]""", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\$?\{[^}]*\}", RegexOptions.None, 5000)]
    private static partial Regex Holes();
}
