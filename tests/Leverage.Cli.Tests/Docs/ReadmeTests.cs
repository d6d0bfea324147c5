using System.Text.RegularExpressions;

namespace Leverage.Cli.Tests.Docs;

/// <summary>Every command a README shows is run, and what it shows as output is what the program prints.</summary>
public sealed partial class ReadmeTests
{
    private const string LongForm = "dotnet run -c Release --project src/Leverage.Cli -- ";

    /// <summary>Most lines of the first page.</summary>
    private const int MostLines = 150;

    private static readonly string[] Pages = ["README.md", "shared/README.md", "plots/README.md", "tables/README.md", "DEVELOPERS.md"];

    public static TheoryData<string> ShownCommands => [.. Pages.SelectMany(Shown).Select(shown => shown.Command)];

    /// <summary>Commands named in passing, such as in the list of commands.</summary>
    public static TheoryData<string> NamedCommands =>
    [
        .. Pages.SelectMany(page => Named().Matches(Text(page)).Select(match => match.Groups["command"].Value))
            .Where(command => command.Contains(' ', StringComparison.Ordinal) && !command.Contains("--help", StringComparison.Ordinal) && !command.Contains("NAME", StringComparison.Ordinal)
                && !command.Contains("chest.toml", StringComparison.Ordinal) && !command.Contains("job.toml", StringComparison.Ordinal))
            .Distinct(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(ShownCommands))]
    public void Output_shown_is_what_the_program_prints(string command)
    {
        string output = Pages.SelectMany(Shown).First(shown => shown.Command == command).Output;
        string folder = Files();
        try
        {
            Ran ran = Ran.ForReal(Ran.Words(command), folder);
            Assert.Equal((0, ""), (ran.Code, ran.Errors));
            Assert.Equal(output, ran.Answer);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [MemberData(nameof(NamedCommands))]
    public void A_command_named_in_passing_is_answered(string command)
    {
        string folder = Files();
        try
        {
            Ran ran = Ran.ForReal(Ran.Words(command), folder);
            Assert.Equal((0, ""), (ran.Code, ran.Errors));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void The_first_command_of_the_program_is_the_one_whose_answer_is_shown_first() =>
        Assert.Equal(Shown("README.md").First().Command, MainCommand()[LongForm.Length..]);

    [Fact]
    public void The_gate_runs_the_two_commands_as_they_are_written()
    {
        string gate = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "ci-run"));
        Assert.Contains("'^dotnet run '", gate, StringComparison.Ordinal);
        Assert.Contains("'^dotnet test'", gate, StringComparison.Ordinal);
        Assert.Single(Text("README.md").Split('\n'), line => line.StartsWith("dotnet test", StringComparison.Ordinal));
        Assert.Equal(2, Consoles("README.md").Count(block => block.StartsWith("dotnet ", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_five_steps_from_chest_to_sheet_work_as_they_are_typed()
    {
        string steps = Text("README.md").Split("## Your own tools, your own job")[1].Split("\n## ")[0];
        string[] commands = [.. Named().Matches(steps).Select(match => match.Groups["command"].Value)];
        Assert.Equal(5, commands.Length);
        string folder = Directory.CreateTempSubdirectory("leverage-steps-").FullName;
        try
        {
            foreach (string command in commands)
            {
                Ran ran = Ran.ForReal(Ran.Words(command), folder);
                Assert.Equal((0, ""), (ran.Code, ran.Errors));
                if (command.EndsWith("sheet.html", StringComparison.Ordinal))
                {
                    string job = Path.Combine(folder, "job.toml");
                    File.WriteAllText(job, File.ReadAllText(job).Replace("# done = true  ", "done = true  ", StringComparison.Ordinal));
                }
            }

            Assert.Contains("1&#xA0;of 3&#xA0;fasteners loose", File.ReadAllText(Path.Combine(folder, "sheet.html")), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void The_first_page_is_short() => Assert.InRange(Text("README.md").Split('\n').Length - 1, 50, MostLines);

    [Fact]
    public void Every_file_and_picture_a_page_points_to_is_there()
    {
        foreach (string page in Pages)
        {
            foreach (Match link in Links().Matches(Text(page)))
            {
                string target = link.Groups[1].Value.Split('#')[0];
                string path = Path.Combine(Repository.Root, Path.GetDirectoryName(page)!, target);
                Assert.True(
                    target.Length == 0 || target.StartsWith("http", StringComparison.Ordinal) || File.Exists(path) || Directory.Exists(path),
                    $"{page} points to {target}, which is not there");
            }
        }
    }

    private static string MainCommand() =>
        Text("README.md").Split('\n').First(line => line.StartsWith(LongForm, StringComparison.Ordinal));

    private static IEnumerable<string> Consoles(string page) => Blocks().Matches(Text(page)).Select(block => block.Groups[1].Value);

    /// <summary>Commands behind "$ leverage" in console blocks, with the lines that follow them.</summary>
    private static IEnumerable<(string Command, string Output)> Shown(string page) =>
        from block in Consoles(page)
        let lines = block.Split('\n', 2)
        where lines[0].StartsWith("$ leverage ", StringComparison.Ordinal)
        select (lines[0]["$ leverage ".Length..], lines[1]);

    /// <summary>A folder of its own with the example files, so that nothing a command writes stays.</summary>
    private static string Files()
    {
        string folder = Directory.CreateTempSubdirectory("leverage-readme-").FullName;
        string shared = Path.Combine(AppContext.BaseDirectory, "shared");
        foreach (string file in Directory.EnumerateFiles(shared, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, "shared", Path.GetRelativePath(shared, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        return folder;
    }

    private static string Text(string page) => File.ReadAllText(Path.Combine(Repository.Root, page));

    [GeneratedRegex(@"^```console\n(?<run>.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline, 5000)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"`leverage (?<command>[^`\n]+)`", RegexOptions.None, 5000)]
    private static partial Regex Named();

    [GeneratedRegex(@"\]\((?<link>[^)\s]+)\)", RegexOptions.None, 5000)]
    private static partial Regex Links();
}
