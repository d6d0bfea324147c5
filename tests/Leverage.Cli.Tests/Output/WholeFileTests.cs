using Leverage.Cli.Output;
using Leverage.Reading;

namespace Leverage.Cli.Tests.Output;

public sealed class WholeFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    private string Path => System.IO.Path.Combine(_folder, "chart.svg");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_file_is_written_in_full_and_nothing_is_left_beside_it()
    {
        WholeFile.Write("--chart", Path, force: false, stream => stream.Write("new"u8));
        Assert.Equal("new", File.ReadAllText(Path));
        Assert.Equal([Path], Directory.GetFiles(_folder));
    }

    [Fact]
    public void An_existing_file_is_kept_unless_told_to_replace_it()
    {
        File.WriteAllText(Path, "mine");
        InputException refusal = Assert.Throws<InputException>(
            () => WholeFile.Write("--chart", Path, force: false, stream => stream.Write("new"u8)));
        Assert.Equal($"--chart: '{Path}' exists and was kept. Name another file, or add --force-write.", refusal.Line);
        Assert.Equal("mine", File.ReadAllText(Path));
        WholeFile.Write("--chart", Path, force: true, stream => stream.Write("new"u8));
        Assert.Equal("new", File.ReadAllText(Path));
    }

    [Fact]
    public void A_writer_that_fails_half_way_leaves_what_was_there()
    {
        File.WriteAllText(Path, "mine");
        Assert.Throws<InvalidOperationException>(() => WholeFile.Write("--chart", Path, force: true, stream =>
        {
            stream.Write("half"u8);
            throw new InvalidOperationException();
        }));
        Assert.Equal("mine", File.ReadAllText(Path));
        Assert.Equal([Path], Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("nowhere/chart.svg", "there is no folder")]
    [InlineData("", "is a folder")]
    [InlineData("mine.txt/chart.svg", "there is no folder")]
    public void A_path_that_cannot_be_written_is_refused_before_any_work(string path, string says)
    {
        File.WriteAllText(System.IO.Path.Combine(_folder, "mine.txt"), "mine");
        InputException refusal = Assert.Throws<InputException>(
            () => WholeFile.Check("--chart", System.IO.Path.Combine(_folder, path), force: false));
        Assert.StartsWith("--chart: ", refusal.Line, StringComparison.Ordinal);
        Assert.Contains(says, refusal.Line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_disk_that_refuses_is_one_line()
    {
        InputException refusal = Assert.Throws<InputException>(
            () => WholeFile.Write("--chart", Path, force: false, _ => throw new IOException("full")));
        Assert.Equal($"--chart: cannot write '{Path}': the disk or the folder refuses it.", refusal.Line);
        Assert.Empty(Directory.GetFiles(_folder));
    }
}
