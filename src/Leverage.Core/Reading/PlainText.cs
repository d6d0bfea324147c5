using System.Buffers;
using System.Globalization;

namespace Leverage.Reading;

/// <summary>
/// Letters of a text that a terminal, a sheet or a spreadsheet would act on instead of showing: control characters, line
/// separators, and the marks that turn the direction of what follows.
/// </summary>
public static class PlainText
{
    private static readonly SearchValues<char> Unprintable = SearchValues.Create(
    [
        .. Enumerable.Range(0, 0x20).Concat(Enumerable.Range(0x7f, 0x21)).Select(code => (char)code),
        '\u2028', '\u2029',
        '\u202a', '\u202b', '\u202c', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069',
    ]);

    private static readonly SearchValues<char> Layout = SearchValues.Create("\n\r\t");

    /// <summary>The text on one line, a space in place of each such letter.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The text itself where it has none.</returns>
    public static string OneLine(string text) => text.AsSpan().ContainsAny(Unprintable)
        ? string.Create(text.Length, text, static (line, from) =>
        {
            for (int i = 0; i < line.Length; i++)
            {
                line[i] = Unprintable.Contains(from[i]) ? ' ' : from[i];
            }
        })
        : text;

    /// <summary>Refuses a text that has such a letter in it; line breaks and tabs may be laid out and pass.</summary>
    /// <param name="text">What a person wrote.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InputException">It has one; the message says which.</exception>
    public static string Checked(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (char letter in text.AsSpan().ContainsAny(Unprintable) ? text : "")
        {
            if (Unprintable.Contains(letter) && !Layout.Contains(letter))
            {
                throw new InputException(string.Create(
                    CultureInfo.InvariantCulture, $"a character that does not print (U+{(int)letter:X4}) stands in it. Take it out."));
            }
        }

        return text;
    }
}
