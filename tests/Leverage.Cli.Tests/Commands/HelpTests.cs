using Leverage.Cli.Commands;

namespace Leverage.Cli.Tests.Commands;

public sealed class HelpTests
{
    public static TheoryData<string> Names => [.. CommandList.All.Select(entry => entry.Name)];

    [Fact]
    public void The_help_of_the_program_fits_one_screen_and_names_every_command()
    {
        string[] lines = Lines(Ran.ForReal(["--help"]));
        Assert.InRange(lines.Length, 10, 23);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.All(CommandList.All, entry => Assert.Contains(lines, line => line.StartsWith($"  {entry.Name} ", StringComparison.Ordinal)));
        Assert.Equal(Ran.Here("--help"), Ran.Here());
    }

    [Fact]
    public void The_help_of_the_program_shows_three_examples_that_answer()
    {
        string[] examples = [.. Lines(Ran.Here("--help")).Where(line => line.StartsWith("  leverage ", StringComparison.Ordinal))];
        Assert.Equal(3, examples.Length);
        Assert.All(examples, Answers);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_help_of_a_command_explains_every_option_and_shows_two_examples_that_answer(string name)
    {
        string[] lines = Lines(Ran.Here(name, "--help"));
        LeverageCommand command = CommandList.All.Single(entry => entry.Name == name).Build();
        string[] examples = [.. lines.SkipWhile(line => line != "Examples:").Skip(1).TakeWhile(line => line.Length > 0)];
        Assert.Equal(command.Examples.Select(example => $"  leverage {example}"), examples);
        Assert.Equal(2, examples.Length);
        Assert.All(examples, Answers);
        Assert.All(command.Symbols, symbol =>
        {
            Assert.Contains(lines, line => line.StartsWith($"  {symbol.Name}", StringComparison.Ordinal));
            Assert.False(string.IsNullOrWhiteSpace(symbol.Description), symbol.Name);
        });
        Assert.All(lines.Except(examples), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_version_is_a_number()
    {
        Ran ran = Ran.ForReal(["--version"]);
        Assert.Equal(0, ran.Code);
        Assert.True(Version.TryParse(ran.Answer.Trim(), out _), ran.Answer);
    }

    private static void Answers(string example)
    {
        Ran ran = Ran.Here(Ran.Words(example.Trim()["leverage ".Length..]));
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.NotEqual("", ran.Answer);
    }

    private static string[] Lines(Ran ran)
    {
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        return ran.Answer.TrimEnd('\n').Split('\n');
    }
}
