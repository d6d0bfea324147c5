namespace Leverage.Cli.Tests.Commands;

/// <summary>README shows what <c>leverage prove</c> prints: between its markers stands the program's own text.</summary>
public sealed class ReadmeProofTests
{
    private static readonly string Readme = Path.Combine(AppContext.BaseDirectory, "README.md");

    [Fact]
    public void README_shows_the_whole_answer_and_its_last_line_as_the_program_prints_them()
    {
        if (!File.Exists(Readme))
        {
            Assert.Skip("there is no README.md yet");
        }

        string text = File.ReadAllText(Readme);
        string answer = Ran.Here("prove").Answer.TrimEnd('\n');
        Assert.Equal(answer, Between(text, "prove"));
        Assert.Equal(answer[(answer.LastIndexOf('\n') + 1)..].Trim(), Between(text, "prove-counts"));
    }

    /// <summary>What stands in the code block between two markers.</summary>
    private static string Between(string text, string marker)
    {
        string[] parts = text.Split($"<!-- {marker} -->", StringSplitOptions.TrimEntries);
        Assert.True(parts.Length == 3, $"README.md needs the marker <!-- {marker} --> twice");
        string[] lines = parts[1].Split('\n');
        Assert.StartsWith("```", lines[0], StringComparison.Ordinal);
        Assert.Equal("```", lines[^1]);
        return string.Join('\n', lines[1..^1]);
    }
}
