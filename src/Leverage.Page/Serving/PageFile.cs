using System.Reflection;
using System.Security.Cryptography;

namespace Leverage.Page.Serving;

/// <summary>A file of the page, out of the program itself: there is no folder to get out of.</summary>
/// <param name="Bytes">Its bytes.</param>
/// <param name="Type">Its media type.</param>
/// <param name="Tag">What tells this version from another.</param>
internal sealed record PageFile(byte[] Bytes, string Type, string Tag)
{
    private const string Folder = "wwwroot/";

    /// <summary>All files by the path they are served under.</summary>
    internal static IReadOnlyDictionary<string, PageFile> All { get; } = Read();

    private static Dictionary<string, PageFile> Read()
    {
        Assembly assembly = typeof(PageFile).Assembly;
        var files = new Dictionary<string, PageFile>(StringComparer.Ordinal);
        foreach (string name in assembly.GetManifestResourceNames())
        {
            if (name.StartsWith(Folder, StringComparison.Ordinal))
            {
                files.Add(PathOf(name[Folder.Length..]), Of(assembly, name));
            }
        }

        return files;
    }

    private static string PathOf(string file) => file switch
    {
        "index.html" => "/",
        "lesson.html" => "/lesson",
        _ => $"/{file}",
    };

    private static PageFile Of(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new PageFile(bytes, TypeOf(name), $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12))}\"");
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".ttf" => "font/ttf",
        _ => "application/octet-stream",
    };
}
