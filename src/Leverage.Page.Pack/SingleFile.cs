using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Leverage.Page.Pack;

/// <summary>The page in one file: every part as compressed text, and a small script that hands them out.</summary>
internal static partial class SingleFile
{
    /// <summary>The text of the file.</summary>
    internal static string Of(string from, List<string> names)
    {
        string html = File.ReadAllText(Path.Combine(from, "index.html"));
        string script = File.ReadAllText(Path.Combine(from, "single.js"));
        string css = File.ReadAllText(Path.Combine(from, "page.css"));
        css = Font().Replace(css, match => $"url(data:font/woff2;base64,{Convert.ToBase64String(File.ReadAllBytes(Path.Combine(from, match.Groups["name"].Value)))})");
        string icon = $"data:image/svg+xml;base64,{Convert.ToBase64String(File.ReadAllBytes(Path.Combine(from, "icon.svg")))}";
        html = Policy().Replace(html, "");
        html = Link().Replace(html, "");
        html = Module().Replace(html, "");
        string[] handed = [.. names.Where(name => Path.GetExtension(name) is ".js" or ".wasm" or ".json")];
        string sizes = string.Join(' ', handed.Select(name => string.Create(CultureInfo.InvariantCulture, $"{name}:{new FileInfo(Path.Combine(from, name)).Length}")));
        string parts = $"<script type=\"text/plain\" id=\"parts\" data-sizes=\"{sizes}\">{Letters(Packed([.. handed.Select(name => Path.Combine(from, name))]))}</script>\n";
        string own = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        string policy = "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'sha256-" + own
            + "' 'wasm-unsafe-eval' blob:; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; connect-src blob: data:; base-uri 'none'; form-action 'none'\">";
        return html
            .Replace("<head>", $"<head>\n{policy}\n<link rel=\"icon\" href=\"{icon}\">\n<style>{css}</style>", StringComparison.Ordinal)
            .Replace("</body>", $"{parts}<script>{script}</script>\n</body>", StringComparison.Ordinal);
    }

    /// <summary>The files one behind the other, compressed as one.</summary>
    private static byte[] Packed(string[] paths)
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.SmallestSize))
        {
            foreach (string path in paths)
            {
                zip.Write(File.ReadAllBytes(path));
            }
        }

        return packed.ToArray();
    }

    /// <summary>
    /// Bytes as letters, seven bits each: one byte of UTF-8, where a quarter of Base64 is lost. The three that a page cannot
    /// hold as they are (none, carriage return, less than) stand 256 higher, in two bytes.
    /// </summary>
    private static string Letters(byte[] bytes)
    {
        var text = new StringBuilder(bytes.Length * 8 / 7 + 2);
        (int held, int bits) = (0, 0);
        foreach (byte each in bytes)
        {
            (held, bits) = (held << 8 | each, bits + 8);
            for (; bits >= 7; bits -= 7)
            {
                Append(text, held >> (bits - 7) & 127);
            }

            held &= (1 << bits) - 1;
        }

        Append(text, held << (7 - bits) & 127);
        return text.ToString();
    }

    private static void Append(StringBuilder text, int value) => text.Append((char)(value is 0 or 13 or 60 ? value + 256 : value));

    [GeneratedRegex("url\\(\"?(?<name>[^\")]+\\.woff2)\"?\\)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Font();

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Policy();

    [GeneratedRegex("<link [^>]*>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Link();

    [GeneratedRegex("<script [^>]*src=[^>]*></script>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Module();
}
