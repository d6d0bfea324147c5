using System.Text;
using Leverage.Reading;

namespace Leverage.Workshop.Files;

/// <summary>The text of a list as spreadsheets save it: UTF-8, UTF-16, or the Western code page Windows-1252.</summary>
internal static class ListText
{
    /// <summary>Windows-1252 from 0x80 to 0x9F; the five places that page leaves empty are zero.</summary>
    private const string Western = "€\0‚ƒ„…†‡ˆ‰Š‹Œ\0Ž\0\0‘’“”•–—˜™š›œ\0žŸ";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file's bytes, every line ended by a line feed.</summary>
    /// <param name="path">The file, for errors.</param>
    /// <param name="bytes">What is in it.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InputException">It is a spreadsheet's own file, or no text.</exception>
    internal static string Of(string path, ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("PK\u0003\u0004"u8) || bytes.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
        {
            throw InputException.At(path, "is a spreadsheet's own file. Save the sheet as CSV, and name that.");
        }

        return Lines(Decoded(path, bytes));
    }

    /// <summary>The text with every line ended by a line feed.</summary>
    internal static string Lines(string text) =>
        text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    private static string Decoded(string path, ReadOnlySpan<byte> bytes)
    {
        if (Utf16(bytes) is { } wide)
        {
            return wide.GetString(bytes[..(bytes.Length & ~1)]);
        }

        if (bytes.Contains((byte)0))
        {
            throw InputException.At(path, "is no text. Save the sheet as CSV, and name that.");
        }

        try
        {
            return Utf8.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Windows1252(path, bytes);
        }
    }

    /// <summary>UTF-16 by its mark, or without one by the empty half of its first letters.</summary>
    private static UnicodeEncoding? Utf16(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) ? new UnicodeEncoding(bigEndian: false, byteOrderMark: true)
        : bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? new UnicodeEncoding(bigEndian: true, byteOrderMark: true)
        : bytes.Length < 4 ? null
        : (bytes[0], bytes[1], bytes[2], bytes[3]) switch
        {
            (not 0, 0, not 0, 0) => new UnicodeEncoding(bigEndian: false, byteOrderMark: false),
            (0, not 0, 0, not 0) => new UnicodeEncoding(bigEndian: true, byteOrderMark: false),
            _ => null,
        };

    private static string Windows1252(string path, ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder(bytes.Length);
        foreach (byte each in bytes)
        {
            char letter = each is >= 0x80 and < 0xA0 ? Western[each - 0x80] : (char)each;
            text.Append(letter != '\0' ? letter : throw InputException.At(
                path, "is text in a code page unknown here. Save it as CSV UTF-8."));
        }

        return text.ToString();
    }
}
