using System.CommandLine;
using Leverage.Cli.Commands;

namespace Leverage.Cli.Tests.Shells;

public sealed class ManPageTests
{
    [Fact]
    public void The_manual_page_holds_every_command_option_and_example_of_the_help()
    {
        string page = TextPage().Replace("\\-", "-", StringComparison.Ordinal);
        foreach (CommandEntry entry in CommandList.All)
        {
            LeverageCommand command = entry.Build();
            Assert.Contains($"\n.SS leverage {entry.Name}\n", page, StringComparison.Ordinal);
            Assert.All(command.Examples, example => Assert.Contains($"\nleverage {example}\n", page, StringComparison.Ordinal));
            Assert.All(command.Symbols, symbol => Assert.Contains($"\n.B {symbol.Name}", page, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("--json")]
    [InlineData("--units metric|us")]
    [InlineData("--strict")]
    [InlineData("--force-write")]
    [InlineData("--completion bash|zsh|fish|powershell")]
    [InlineData("--man")]
    public void The_manual_page_holds_what_every_command_and_the_program_itself_take(string option) =>
        Assert.Contains($"\n.B {option.Replace("-", "\\-", StringComparison.Ordinal)}\n", TextPage(), StringComparison.Ordinal);

    [Fact]
    public void Groff_sets_the_page_without_a_warning()
    {
        Shell.Need("groff");
        var (code, said) = Shell.Run("groff", ["-man", "-Kutf8", "-Tutf8", "-ww", "-z"], TextPage());
        Assert.Equal((0, ""), (code, said));
    }

    [Fact]
    public void The_page_reads_as_the_help_does()
    {
        Shell.Need("man");
        Shell.Need("groff");
        string said = Shell.Run("man", ["-P", "cat", "-l", "-"], TextPage()).Said;
        Assert.Contains("  --left-hand\n", said, StringComparison.Ordinal);
        Assert.Contains("left-hand thread: turn clockwise to loosen", said, StringComparison.Ordinal);
    }

    private static string TextPage()
    {
        Ran ran = Ran.Here("--man");
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        return ran.Answer;
    }
}
