using System.Diagnostics;
using System.Text;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Tests.Files;

public sealed class TextFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("text-file").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_file_of_50_MB_is_refused_unread_in_one_line()
    {
        string path = Path.Combine(_folder, "big.toml");
        using (FileStream stream = File.Create(path))
        {
            stream.SetLength(50_000_000);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        var clock = Stopwatch.StartNew();
        var error = Assert.Throws<InputException>(() => ToolChest.Read(path));
        Assert.Equal($"{path}: is 50 MB; at most 4 MB are read here. Is it the right file?", error.Line);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        Assert.InRange(clock.ElapsedMilliseconds, 0, 2000);
    }

    [Fact]
    public void A_file_of_nearly_4_MB_is_read()
    {
        string path = Path.Combine(_folder, "long.toml");
        var text = new StringBuilder("[[sockets]]\nname = \"s\"\ndrive = \"1/2\"\nsize = \"36mm\"\n");
        while (text.Length < 3_900_000)
        {
            text.Append("# a comment of some length that nobody needs to read but that takes its room\n");
        }

        File.WriteAllText(path, text.ToString());
        Assert.Single(ToolChest.Read(path).NutTools);
    }

    [Fact]
    public void A_missing_file_a_missing_folder_and_a_folder_say_so()
    {
        Assert.EndsWith("cannot be read: there is no such file.", Line(Path.Combine(_folder, "none.toml")), StringComparison.Ordinal);
        Assert.EndsWith("cannot be read: there is no such folder.", Line(Path.Combine(_folder, "none", "none.toml")), StringComparison.Ordinal);
        Assert.EndsWith("cannot be read: it is a folder.", Line(_folder), StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_text()
    {
        string path = Path.Combine(_folder, "bom.toml");
        File.WriteAllText(path, "a = 1\n", new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        Assert.Equal("a = 1\n", TextFile.Read(path, 100));
    }

    [Fact]
    public void Bytes_that_are_no_UTF8_name_their_line()
    {
        string path = Path.Combine(_folder, "latin.toml");
        File.WriteAllBytes(path, [.. "a = 1\nb = \"stra"u8, 0xDF, .. "e\"\n"u8]);
        Assert.EndsWith("is not UTF-8 text (line 2). Save it as UTF-8.", Line(path), StringComparison.Ordinal);
    }

    private static string Line(string path) => Assert.Throws<InputException>(() => ToolChest.Read(path)).Line;
}
