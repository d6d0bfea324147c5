using System.Globalization;
using System.Text;
using Leverage.Reading;

namespace Leverage.Workshop.Files;

/// <summary>Reads a text file a person wrote, or says in one line why not.</summary>
public static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a UTF-8 file, without its byte order mark.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mostBytes">The largest file that makes sense here; a larger one is refused unread.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InputException">It is not there, cannot be read, is too large or is no text.</exception>
    public static string Read(string path, long mostBytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        byte[] bytes = Bytes(path, mostBytes);
        ReadOnlySpan<byte> text = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? bytes.AsSpan(3) : bytes;
        try
        {
            return Strict.GetString(text);
        }
        catch (DecoderFallbackException)
        {
            throw InputException.At(path, $"is not UTF-8 text (line {BadLine(text)}). Save it as UTF-8.");
        }
    }

    /// <summary>The bytes of a file.</summary>
    /// <exception cref="InputException">It is not there, cannot be read or is too large.</exception>
    internal static byte[] Bytes(string path, long mostBytes)
    {
        if (path.AsSpan().Trim().IsEmpty || path.Contains('\0', StringComparison.Ordinal))
        {
            throw new InputException("the name of the file is empty.");
        }

        try
        {
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            if (stream.Length > mostBytes)
            {
                throw InputException.At(path, string.Create(
                    CultureInfo.InvariantCulture,
                    $"is {stream.Length / 1e6:0.#} MB; at most {mostBytes / 1e6:0.#} MB are read here. Is it the right file?"));
            }

            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw InputException.At(path, $"cannot be read: {Reason(e, path)}.");
        }
    }

    private static string Reason(Exception e, string path) => e switch
    {
        FileNotFoundException => "there is no such file",
        DirectoryNotFoundException => "there is no such folder",
        _ when Directory.Exists(path) => "it is a folder",
        UnauthorizedAccessException => "no permission",
        _ => "the disk refuses it",
    };

    private static string BadLine(ReadOnlySpan<byte> text)
    {
        int line = 1;
        while (text.IndexOf((byte)'\n') is var end and >= 0 && IsText(text[..end]))
        {
            text = text[(end + 1)..];
            line++;
        }

        return line.ToString(CultureInfo.InvariantCulture);
    }

    private static bool IsText(ReadOnlySpan<byte> line) => System.Text.Unicode.Utf8.IsValid(line);
}
