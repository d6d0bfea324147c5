using Leverage.Cli.Output;

namespace Leverage.Cli.Tests.Output;

public sealed class PageTests
{
    [Fact]
    public void Columns_align_text_left_and_numbers_right()
    {
        var table = new Columns("lrl").Row("a", "1.5", "x").Row("long", "120", "").Row("b", "7");
        Assert.Equal(["a     1.5  x", "long  120", "b       7"], table.Lines());
    }

    [Fact]
    public void A_long_note_wraps_under_itself_within_80_columns()
    {
        string[] lines = Laid(page => page.Note("Assumed", string.Join(' ', Enumerable.Repeat("word", 40))));
        Assert.True(lines.Length > 1);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.All(lines.Skip(1), line => Assert.StartsWith(new string(' ', 18) + "word", line, StringComparison.Ordinal));
        Assert.Equal(40, string.Join(' ', lines).Split(' ').Count(word => word == "word"));
    }

    [Fact]
    public void Figures_of_one_number_end_below_each_other_and_others_stay()
    {
        string[] lines = Laid(page =>
        {
            page.Figure("Torque", "133 N·m", "x");
            page.Figure("Preload", "70.5 kN", "");
            page.Figure("It takes", "395 · 630 · 1000 N·m", "easy");
        });
        Assert.Equal(lines[0].IndexOf(" N·m", StringComparison.Ordinal), lines[1].IndexOf(" kN", StringComparison.Ordinal));
        Assert.StartsWith("  It takes        395 · 630 · 1000 N·m  easy", lines[2], StringComparison.Ordinal);
    }

    private static string[] Laid(Action<TextPage> lay)
    {
        using var text = new StringWriter();
        lay(new TextPage(text, colour: false));
        return text.ToString().TrimEnd('\n').Split('\n');
    }
}
