namespace Leverage.Cli.Tests.Output;

/// <summary>Files the real program is asked to write.</summary>
public sealed class PictureTests : IDisposable
{
    private const string Loosen = "loosen 460Nm --thread M24x1.5 --bar 600mm --chart ";
    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_picture_is_written_beside_the_answer_and_an_existing_one_is_kept()
    {
        Ran first = Ran.ForReal(Ran.Words(Loosen + "window.svg"), _folder);
        Assert.Equal((0, ""), (first.Code, first.Errors));
        string path = Path.Combine(_folder, "window.svg");
        Assert.StartsWith("<", File.ReadAllText(path).TrimStart('\uFEFF'), StringComparison.Ordinal);

        File.WriteAllText(path, "mine");
        Ran second = Ran.ForReal(Ran.Words(Loosen + "window.svg"), _folder);
        Assert.Equal((2, "", "leverage: --chart: 'window.svg' exists and was kept. Name another file, or add --force-write.\n"),
            (second.Code, second.Answer, second.Errors));
        Assert.Equal("mine", File.ReadAllText(path));

        Assert.Equal(0, Ran.ForReal(Ran.Words(Loosen + "window.svg --force-write"), _folder).Code);
        Assert.NotEqual("mine", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(_folder));
    }

    [Fact]
    public void The_same_chart_has_the_same_bytes()
    {
        byte[][] drawn = [.. ((string[])["a.png", "b.png"]).Select(name =>
        {
            Ran ran = Ran.ForReal(["tighten", "--thread", "M12", "--chart", name], _folder, ("LANG", name == "a.png" ? "C" : "de_DE.UTF-8"));
            Assert.Equal((0, ""), (ran.Code, ran.Errors));
            return File.ReadAllBytes(Path.Combine(_folder, name));
        })];
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], drawn[0][..4]);
        Assert.Equal(drawn[0], drawn[1]);
    }

    [Theory]
    [InlineData("nowhere/window.png", "cannot write 'nowhere/window.png': there is no folder")]
    [InlineData("window.pdf", ".png")]
    [InlineData("/proc/window.png", "cannot write '/proc/window.png'")]
    public void A_file_that_cannot_be_written_is_one_line(string path, string says)
    {
        Ran ran = Ran.ForReal(Ran.Words(Loosen + path), _folder);
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith("leverage: --chart: ", ran.Errors, StringComparison.Ordinal);
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Empty(Directory.GetFiles(_folder));
    }
}
