using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Leverage.Page.Pack;

/// <summary>
/// Finishes the published page: of PUBLISHED/wwwroot, ARTIFACTS/page becomes the folder to upload (files, each compressed
/// beside it, the service worker with its list), and ARTIFACTS/leverage.html the whole page in one file.
/// </summary>
internal static class Program
{
    private static readonly string[] Left = [".br", ".gz", ".map", ".symbols"];

    private static int Main(string[] args)
    {
        if (args.Length != 2)
        {
            Console.Error.WriteLine("Write: Leverage.Page.Pack PUBLISHED/wwwroot ARTIFACTS");
            return 2;
        }

        Finish(Path.GetFullPath(args[0]), Path.GetFullPath(args[1]));
        return 0;
    }

    private static void Finish(string from, string artifacts)
    {
        string to = Path.Combine(artifacts, "page");
        if (Directory.Exists(to))
        {
            Directory.Delete(to, recursive: true);
        }

        WriteFields(from);
        List<string> names = [.. Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(from, path).Replace('\\', '/'))
            .Where(name => !Left.Contains(Path.GetExtension(name)) && name is not ("sw.js" or "single.js"))
            .Order(StringComparer.Ordinal)];
        var tags = new StringBuilder();
        foreach (string name in names)
        {
            Copy(from, to, name);
            tags.Append(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(to, name)))));
        }

        string version = Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(tags.ToString())))[..16];
        string worker = File.ReadAllText(Path.Combine(from, "sw.js"))
            .Replace("\"VERSION\"", $"\"{version}\"", StringComparison.Ordinal)
            .Replace("[\"FILES\"]", $"[{string.Join(", ", names.Select(name => $"\"{name}\""))}]", StringComparison.Ordinal);
        string single = Path.Combine(artifacts, "leverage.html");
        File.WriteAllText(single, SingleFile.Of(from, names));
        File.WriteAllText(Path.Combine(to, "sw.js"), worker);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"page {version}: {names.Count} files, {names.Sum(name => OverTheWire(Path.Combine(to, name))) / 1e6:0.00} MB over the wire; leverage.html {Size(single) / 1e6:0.00} MB"));
    }

    /// <summary>What the page can ask never changes: it is written here once, as working it out anew would take a quarter of a start.</summary>
    private static void WriteFields(string folder)
    {
        byte[] fields = JsonSerializer.SerializeToUtf8Bytes(FieldList.All(), FieldsJson.Default.PageFields);
        string path = Path.Combine(folder, "fields.json");
        File.WriteAllBytes(path, fields);
        using (var packed = new BrotliStream(File.Create(path + ".br"), CompressionLevel.SmallestSize))
        {
            packed.Write(fields);
        }

        using var zipped = new GZipStream(File.Create(path + ".gz"), CompressionLevel.SmallestSize);
        zipped.Write(fields);
    }

    private static void Copy(string from, string to, string name)
    {
        string target = Path.Combine(to, name);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.Copy(Path.Combine(from, name), target);
        foreach (string packed in (string[])[".br", ".gz"])
        {
            if (File.Exists(Path.Combine(from, name + packed)))
            {
                File.Copy(Path.Combine(from, name + packed), target + packed);
            }
        }
    }

    private static long OverTheWire(string path) => File.Exists(path + ".br") ? Size(path + ".br") : Size(path);

    private static long Size(string path) => new FileInfo(path).Length;
}

/// <summary>JSON of what can be asked.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PageFields))]
internal sealed partial class FieldsJson : JsonSerializerContext;
