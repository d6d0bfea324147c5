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
        var parts = new StringBuilder();
        foreach (string name in names.Where(name => Path.GetExtension(name) is ".js" or ".wasm" or ".json"))
        {
            parts.Append("<script type=\"text/plain\" data-part=\"").Append(name).Append("\">").Append(Packed(Path.Combine(from, name))).Append("</script>\n");
        }

        string own = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        string policy = "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'sha256-" + own
            + "' 'wasm-unsafe-eval' blob:; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; connect-src blob: data:; base-uri 'none'; form-action 'none'\">";
        return html
            .Replace("<head>", $"<head>\n{policy}\n<link rel=\"icon\" href=\"{icon}\">\n<style>{css}</style>", StringComparison.Ordinal)
            .Replace("</body>", $"{parts}<script>{script}</script>\n</body>", StringComparison.Ordinal);
    }

    private static string Packed(string path)
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.SmallestSize))
        {
            zip.Write(File.ReadAllBytes(path));
        }

        return Convert.ToBase64String(packed.ToArray());
    }

    [GeneratedRegex("url\\(\"?(?<name>[^\")]+\\.woff2)\"?\\)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Font();

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Policy();

    [GeneratedRegex("<link [^>]*>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Link();

    [GeneratedRegex("<script [^>]*src=[^>]*></script>\\n?", RegexOptions.None, 5000)]
    private static partial Regex Module();
}
