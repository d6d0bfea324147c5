using System.Security.Cryptography;

namespace Leverage.Page.Server;

/// <summary>A file of the page as read at the start, with its compressed forms.</summary>
/// <param name="Bytes">Its bytes.</param>
/// <param name="Brotli">Compressed for browsers on this machine; null where the folder has none.</param>
/// <param name="Gzip">Compressed for browsers over plain http; null where the folder has none.</param>
/// <param name="Type">Its media type.</param>
/// <param name="Tag">What tells this version from another.</param>
internal sealed record PageFile(byte[] Bytes, byte[]? Brotli, byte[]? Gzip, string Type, string Tag)
{
    /// <summary>Name of the whole page in one file, which stands beside the folder: to be kept, never shown from here.</summary>
    internal const string SingleFile = "leverage.html";

    /// <summary>All files of a folder by the path they are served under: what is not among them does not exist.</summary>
    /// <exception cref="OptionException">The folder does not hold the page.</exception>
    internal static IReadOnlyDictionary<string, PageFile> Read(string folder)
    {
        if (!File.Exists(Path.Combine(folder, "sw.js")))
        {
            throw new OptionException($"the page's files are not in {folder}. Give their folder: --folder page.");
        }

        var files = new Dictionary<string, PageFile>(StringComparer.Ordinal);
        foreach (string path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            if (Path.GetExtension(path) is not (".br" or ".gz"))
            {
                string name = Path.GetRelativePath(folder, path).Replace('\\', '/');
                PageFile file = Of(path);
                files.Add($"/{name}", file);
                if (name == "index.html")
                {
                    files.Add("/", file);
                }
            }
        }

        string single = Path.Combine(folder, "..", SingleFile);
        if (File.Exists(single))
        {
            files.Add($"/{SingleFile}", Of(single));
        }

        return files;
    }

    private static PageFile Of(string path)
    {
        byte[] bytes = File.ReadAllBytes(path);
        return new PageFile(
            bytes, Packed(path + ".br"), Packed(path + ".gz"), TypeOf(path), $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12))}\"");
    }

    private static byte[]? Packed(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".json" => "application/json; charset=utf-8",
        ".txt" => "text/plain; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".woff2" => "font/woff2",
        ".wasm" => "application/wasm",
        ".webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    };
}
