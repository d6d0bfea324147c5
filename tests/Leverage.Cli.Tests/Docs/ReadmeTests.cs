using System.Text.RegularExpressions;

namespace Leverage.Cli.Tests.Docs;

/// <summary>Every command the README shows is run, and what it shows as output is what the program prints.</summary>
public sealed partial class ReadmeTests
{
    private const string LongForm = "dotnet run -c Release --no-build --project src/Leverage.Cli -- ";

    public static TheoryData<string> ShownCommands => [.. Shown().Select(shown => shown.Command)];

    [Theory]
    [MemberData(nameof(ShownCommands))]
    public void Output_shown_is_what_the_program_prints(string command)
    {
        string output = Shown().Single(shown => shown.Command == command).Output;
        string folder = Files();
        try
        {
            Ran ran = Ran.ForReal(Ran.Words(command), folder);
            Assert.Equal((0, ""), (ran.Code, ran.Errors));
            if (output.Length > 0)
            {
                Assert.Equal(output, ran.Answer);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void The_first_command_of_the_program_is_the_one_whose_answer_is_shown_first() =>
        Assert.Equal(Shown().First().Command, Text().Split('\n').First(line => line.StartsWith(LongForm, StringComparison.Ordinal))[LongForm.Length..]);

    [Theory]
    [InlineData("dotnet restore")]
    [InlineData("dotnet build")]
    [InlineData("dotnet test")]
    public void The_gate_runs_the_commands_of_setting_up_and_testing_as_they_are_written(string start)
    {
        Assert.Single(Text().Split('\n'), line => line.StartsWith(start, StringComparison.Ordinal));
        Assert.Contains($"'^{start}'", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "ci-run")), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_file_and_picture_it_points_to_is_there()
    {
        foreach (Match link in Links().Matches(Text()))
        {
            string target = link.Groups[1].Value.Split('#')[0];
            Assert.True(
                target.Length == 0 || target.StartsWith("http", StringComparison.Ordinal)
                    || File.Exists(Path.Combine(Repository.Root, target)) || Directory.Exists(Path.Combine(Repository.Root, target)),
                $"README points to {target}, which is not there");
        }
    }

    /// <summary>Commands behind "$ leverage" in console blocks, with the lines that follow them.</summary>
    private static IEnumerable<(string Command, string Output)> Shown() =>
        from Match block in Blocks().Matches(Text())
        let lines = block.Groups[1].Value.Split('\n', 2)
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

    private static string Text() => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "README.md"));

    [GeneratedRegex(@"^```console\n(?<run>.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline, 5000)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"\]\((?<link>[^)\s]+)\)", RegexOptions.None, 5000)]
    private static partial Regex Links();
}
