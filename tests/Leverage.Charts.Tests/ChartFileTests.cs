using Leverage.Reading;

namespace Leverage.Charts.Tests;

public sealed class ChartFileTests
{
    [Theory]
    [InlineData("a.png", ChartFormat.Png)]
    [InlineData("out/A.PNG", ChartFormat.Png)]
    [InlineData("a.b.svg", ChartFormat.Svg)]
    public void The_ending_names_the_format(string path, ChartFormat format) => Assert.Equal(format, ChartFile.FormatOf(path));

    [Theory]
    [InlineData("a.jpg")]
    [InlineData("a.svgz")]
    [InlineData("a")]
    [InlineData("png")]
    [InlineData("")]
    public void Any_other_ending_is_refused_in_one_line_that_names_both(string path)
    {
        string line = Assert.Throws<InputException>(() => ChartFile.FormatOf(path)).Line;
        Assert.Contains(".png or .svg", line, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', line);
    }
}
