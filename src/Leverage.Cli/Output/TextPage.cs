using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>An answer in words as it is laid out on a terminal: 80 columns, the same bytes wherever it goes.</summary>
internal sealed class TextPage
{
    /// <summary>Columns of the smallest usual terminal.</summary>
    internal const int Width = 80;

    /// <summary>Lines of one screen.</summary>
    private const int Screen = 24;

    private const int LabelWidth = 15;
    private const int NumberWidth = 6;
    private const int RankWidth = 11;

    private readonly TextWriter _text;
    private readonly Ink _ink;

    /// <summary>A page on a writer.</summary>
    internal TextPage(TextWriter text, bool colour) => (_text, _ink) = (text, new Ink(colour));

    /// <summary>Whether what is written takes more than one screen.</summary>
    internal static bool Overflows(Action<TextPage> write)
    {
        var text = new StringWriter();
        write(new TextPage(text, colour: false));
        return text.ToString().Count(letter => letter == '\n') > Screen;
    }

    /// <summary>An empty line.</summary>
    internal void Space() => _text.Write('\n');

    /// <summary>The first line: what was asked.</summary>
    internal void Title(string words)
    {
        if (words.Length <= Width)
        {
            _text.Write($"{_ink.Strong(words)}\n\n");
        }
        else
        {
            Wrap("", 0, words, 2);
            Space();
        }
    }

    /// <summary>The first line: the verdict, then what was asked.</summary>
    internal void Headline(Verdict verdict, string words)
    {
        string word = VerdictWords.Capitals(verdict);
        Wrap($"{_ink.Coloured(word, verdict)}  ", word.Length + 2, words, word.Length + 2);
        Space();
    }

    /// <summary>A plain line, indented.</summary>
    internal void Line(string words) => _text.Write($"  {words}".TrimEnd() + "\n");

    /// <summary>A label, a figure and a remark in their three columns; numbers end below each other.</summary>
    internal void Figure(string label, string figure, string remark)
    {
        figure = Aligned(figure);
        string start = $"  {label.PadRight(LabelWidth)} ";
        if (remark.Length == 0)
        {
            _text.Write($"{start}{_ink.Strong(figure)}\n");
            return;
        }

        string middle = figure.PadRight(figure.Length > LabelWidth ? 0 : LabelWidth);
        Wrap(start + _ink.Strong(middle) + "  ", start.Length + middle.Length + 2, remark, start.Length + Math.Max(LabelWidth, middle.Length) + 2);
    }

    /// <summary>A label and words that wrap under themselves.</summary>
    internal void Note(string label, string words)
    {
        string start = $"  {label.PadRight(LabelWidth)} ";
        Wrap(start, start.Length, words, start.Length);
    }

    /// <summary>A numbered piece of advice under the verdict.</summary>
    internal void Item(int number, string words)
    {
        string start = string.Create(CultureInfo.InvariantCulture, $"{number,8}. ");
        Wrap(start, start.Length, words, start.Length);
    }

    /// <summary>A place in a ranking: its number, its verdict and what stands there.</summary>
    internal void Ranked(int number, Verdict verdict, string words)
    {
        string start = string.Create(CultureInfo.InvariantCulture, $"{number,3}  ");
        string word = VerdictWords.Capitals(verdict);
        Wrap($"{start}{_ink.Coloured(word, verdict)}{new string(' ', RankWidth - start.Length - word.Length)}", RankWidth, words, RankWidth);
    }

    /// <summary>Words below a place in a ranking.</summary>
    internal void Beneath(string words) => Wrap(new string(' ', RankWidth), RankWidth, words, RankWidth);

    /// <summary>Words below a row of a table, or below a numbered item, where there are any.</summary>
    internal void Under(string words, int indent = 6)
    {
        if (words.Length > 0)
        {
            Wrap(new string(' ', indent), indent, words, indent);
        }
    }

    /// <summary>A mark and its words, as in a list of sources.</summary>
    internal void Entry(string mark, string words)
    {
        string start = $"  {mark.PadRight(4)} ";
        Wrap(start, start.Length, words, start.Length);
    }

    /// <summary>A word of the command line and what it means.</summary>
    internal void Explained(string word, int width, string words)
    {
        string start = $"  {word.PadRight(width)}  ";
        Wrap(start, start.Length, words, width + 4);
    }

    /// <summary>Something that is not laid out here, such as CSV.</summary>
    internal void Raw(Action<TextWriter> write) => write(_text);

    /// <summary>The verdict in capitals, then why.</summary>
    internal void Verdict(Verdict verdict, string why)
    {
        string word = VerdictWords.Capitals(verdict);
        string start = $"  {_ink.Coloured(word, verdict)}   ";
        Wrap(start, word.Length + 5, why, word.Length + 5);
    }

    /// <summary>Every line of a table, indented.</summary>
    internal void Table(Columns columns)
    {
        foreach (string line in columns.Lines())
        {
            Line(line);
        }
    }

    /// <summary>A number and its unit, the number moved right; anything else as it is.</summary>
    private static string Aligned(string figure)
    {
        string[] parts = figure.Split(' ');
        bool plain = parts.Length == 1 || parts.Length == 2 && UnitGlue.IsUnit(parts[1]);
        return plain && figure.Length > 0 && char.IsAsciiDigit(figure[0])
            ? parts[0].PadLeft(NumberWidth) + figure[parts[0].Length..]
            : figure;
    }

    private void Wrap(string start, int used, string words, int indent)
    {
        _text.Write(words.Length == 0 ? start.TrimEnd() : start);
        int column = used;
        foreach (string word in UnitGlue.Words(words))
        {
            if (column > indent && column + 1 + word.Length > Width)
            {
                _text.Write($"\n{new string(' ', indent)}");
                column = indent;
            }
            else if (column > used || column > indent && column != used)
            {
                _text.Write(' ');
                column++;
            }

            _text.Write(word);
            column += word.Length;
        }

        _text.Write('\n');
    }
}
