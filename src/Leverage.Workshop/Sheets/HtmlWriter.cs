using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace Leverage.Workshop.Sheets;

/// <summary>Writes HTML element by element. Every text and attribute goes through the platform's encoder.</summary>
internal sealed class HtmlWriter
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = new();
    private int _drawings;

    /// <summary>The page so far.</summary>
    /// <exception cref="InvalidOperationException">An element is still open.</exception>
    internal string Text => _open.Count == 0 ? _text.ToString() : throw new InvalidOperationException($"<{_open.Peek()}> is still open.");

    /// <summary>Begins the page.</summary>
    internal HtmlWriter Doctype() => Raw("<!DOCTYPE html>\n");

    /// <summary>Opens an element.</summary>
    internal HtmlWriter Open(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Start(element, attributes);
        _open.Push(element);
        return this;
    }

    /// <summary>Writes an element that has no content and no end.</summary>
    internal HtmlWriter Void(string element, params ReadOnlySpan<(string Name, string Value)> attributes) => Start(element, attributes);

    /// <summary>Closes the element opened last.</summary>
    internal HtmlWriter Close() => Raw($"</{_open.Pop()}>");

    /// <summary>Closes the element opened last and begins a new line, so that the file can be read.</summary>
    internal HtmlWriter CloseLine() => Close().Raw("\n");

    /// <summary>Writes words; a number stays on one line with its unit.</summary>
    internal HtmlWriter Words(string words) => Raw(Encoder.Encode(Glued(words)));

    /// <summary>Writes a whole element with words in it.</summary>
    internal HtmlWriter Element(string element, string words, params ReadOnlySpan<(string Name, string Value)> attributes) =>
        Open(element, attributes).Words(words).Close();

    /// <summary>Writes our own style rules.</summary>
    internal HtmlWriter Style(string rules) => Raw("<style>").Raw(rules).Raw("</style>\n");

    /// <summary>
    /// Writes a drawing of this program's own: the part from its first svg tag on. Drawings count their ids each from
    /// one, so every id and every mention of one is told apart by the drawing's number.
    /// </summary>
    /// <exception cref="ArgumentException">It is no drawing, or could run something.</exception>
    internal HtmlWriter Drawing(string svg)
    {
        int start = svg.IndexOf("<svg", StringComparison.Ordinal);
        return start >= 0 && !svg.Contains("<script", StringComparison.OrdinalIgnoreCase)
            ? Raw(WithOwnIds(svg[start..].TrimEnd(), $"d{(++_drawings).ToString(CultureInfo.InvariantCulture)}-"))
            : throw new ArgumentException("No drawing, or one with a script.", nameof(svg));
    }

    private static string WithOwnIds(string svg, string prefix) => svg
        .Replace(" id=\"", $" id=\"{prefix}", StringComparison.Ordinal)
        .Replace("url(#", $"url(#{prefix}", StringComparison.Ordinal)
        .Replace("href=\"#", $"href=\"#{prefix}", StringComparison.Ordinal)
        .Replace("aria-labelledby=\"", $"aria-labelledby=\"{prefix}", StringComparison.Ordinal);

    private static string Glued(string words) => string.Create(words.Length, words, static (glued, plain) =>
    {
        plain.CopyTo(glued);
        for (int i = 1; i < glued.Length - 1; i++)
        {
            bool number = char.IsAsciiDigit(plain[i - 1]) && (char.IsLetter(plain[i + 1]) || plain[i + 1] is '%' or '×');
            if (plain[i] == ' ' && (number || plain[i - 1] is '±' or '×'))
            {
                glued[i] = '\u00a0';
            }
        }
    });

    private HtmlWriter Start(string element, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _text.Append('<').Append(element);
        foreach (var (name, value) in attributes)
        {
            _text.Append(' ').Append(name).Append("=\"").Append(Encoder.Encode(value)).Append('"');
        }

        _text.Append('>');
        return this;
    }

    private HtmlWriter Raw(ReadOnlySpan<char> text)
    {
        _text.Append(text);
        return this;
    }
}
