using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class JobTests : IDisposable
{
    private const string Demo = "shared/pickup/job.toml";
    private readonly string _folder = Directory.CreateTempSubdirectory("job").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_answer_fits_a_terminal_and_tells_what_was_moved_and_why()
    {
        Ran ran = Ran.Here("job", Demo);

        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.All(ran.Answer.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("moved up: it needs \"in gear\"", ran.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_is_written_whole_and_never_over_another_unless_told()
    {
        string sheet = Path.Combine(_folder, "sheet.html");

        Assert.Equal((0, ""), (Ran.Here("job", Demo, "--pictures", "--out", sheet) is var first ? first.Code : 1, first.Errors));
        string html = File.ReadAllText(sheet);
        Assert.EndsWith("</html>\n", html, StringComparison.Ordinal);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        File.WriteAllText(sheet, "mine");
        Assert.Equal(2, Ran.Here("job", Demo, "--out", sheet).Code);
        Assert.Equal("mine", File.ReadAllText(sheet));
        Assert.Equal(0, Ran.Here("job", Demo, "--pictures", "--out", sheet, "--force-write").Code);
        Assert.Equal(html, File.ReadAllText(sheet));
    }

    [Fact]
    public void No_sheet_is_left_where_the_job_is_refused()
    {
        string sheet = Path.Combine(_folder, "sheet.html");
        Ran ran = Ran.Here("job", "shared/pickup/job-with-loop.toml", "--out", sheet);

        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith("leverage: shared/pickup/job-with-loop.toml(16,8): tasks: there is no order of work", ran.Errors, StringComparison.Ordinal);
        Assert.Single(ran.Errors.TrimEnd('\n').Split('\n'));
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void The_drawings_of_a_sheet_share_no_id()
    {
        string sheet = Path.Combine(_folder, "sheet.html");
        Ran.Here("job", Demo, "--pictures", "--out", sheet);
        string[] ids = [.. File.ReadAllText(sheet).Split(" id=\"").Skip(1).Select(rest => rest[..rest.IndexOf('"', StringComparison.Ordinal)])];

        Assert.True(ids.Length > 1);
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_answer_for_a_script_has_order_loosening_refit_and_parts()
    {
        JsonElement json = Ran.Here("job", Demo, "--json").Json();

        Assert.Equal(["title", "atStart", "order", "loosening", "refit", "refitOrder", "parts", "before", "watch", "verdict"], Ran.Names(json));
        Assert.Equal(29, json.GetProperty("order").GetArrayLength());
        Assert.Equal(33, json.GetProperty("refit").GetArrayLength());
    }

    [Fact]
    public void A_job_takes_a_socket_one_size_near_where_its_own_is_missing_and_says_so()
    {
        File.WriteAllText(Path.Combine(_folder, "chest.toml"), """
            [[people]]
            name = "owner"
            person = "man"
            body = "82kg"
            [[bars]]
            name = "long bar"
            drive = "1/2"
            length = "600mm"
            [[sockets]]
            name = "metric set"
            drive = "1/2"
            size = ["22mm", "24mm"]
            """);
        string file = Path.Combine(_folder, "job.toml");
        File.WriteAllText(file, """
            title = "One inch bolt"
            chest = "chest.toml"
            people = ["owner"]
            [vehicle]
            name = "pick-up"
            mass = "1450kg"
            [[fasteners]]
            name = "shackle bolt"
            hex = "15/16in"
            thread = "5/8-11"
            torque = "180Nm"
            [[tasks]]
            name = "shackle off"
            loosens = ["shackle bolt"]
            """);
        Ran ran = Ran.Here("job", file);

        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.Contains("metric set 24 mm, on 15/16 in", ran.Answer.Replace("\n       ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("sockets missing", ran.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_starter_file_is_written_and_answers()
    {
        string file = Path.Combine(_folder, "job.toml");

        Assert.Equal(0, Ran.Here("job", "--new", file).Code);
        Assert.Equal((0, ""), (Ran.Here("job", file) is var ran ? ran.Code : 1, ran.Errors));
        Assert.Equal(2, Ran.Here("job", "--new", file).Code);
    }

    [Theory]
    [InlineData("job", "FILE: is missing")]
    [InlineData("job none.toml", "none.toml: cannot be read: there is no such file.")]
    [InlineData("job shared/pickup/job.toml --out sheet.pdf", "--out: 'sheet.pdf' ends in neither .html nor .md.")]
    [InlineData("job shared/pickup/job.toml --csv --json", "--csv: cannot go with --json")]
    [InlineData("job shared/pickup/job.toml --new x.toml", "--new: stands alone")]
    [InlineData("job shared/pickup/fasteners.csv", "shared/pickup/fasteners.csv(1,")]
    public void What_cannot_be_is_refused_in_one_line(string line, string start)
    {
        Ran ran = Ran.Here(Ran.Words(line));

        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith($"leverage: {start}", ran.Errors, StringComparison.Ordinal);
    }
}
