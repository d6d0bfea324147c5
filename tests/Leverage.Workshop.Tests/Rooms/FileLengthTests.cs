namespace Leverage.Workshop.Tests.Rooms;

/// <summary>A file that no longer fits two screens holds more than one thing.</summary>
public sealed class FileLengthTests
{
    private const int Most = 200;

    [Fact]
    public void No_source_file_is_longer_than_200_lines()
    {
        string sources = Sources();
        (string File, int Lines)[] files =
        [
            .. Directory.EnumerateFiles(sources, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(sources, file))
                .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
                .Select(file => (file, File.ReadLines(Path.Combine(sources, file)).Count())),
        ];
        Assert.InRange(files.Length, 300, 2000);
        Assert.DoesNotContain(files, file => file.Lines > Most);
    }

    private static string Sources()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Leverage.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return Path.Combine(folder, "src");
    }
}
