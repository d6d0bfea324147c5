using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Charts.Tests;

public sealed class SlipChartTests
{
    public static TheoryData<string> Names => [.. Cases.Slipping.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_tube_is_drawn_soundly_in_both_units_and_shapes(string name)
    {
        SlipAssessment slip = Cases.Slip(name);
        ChartChecks.Sound(SlipChart.Draw(slip, name, UnitStyle.Metric));
        ChartChecks.Sound(SlipChart.Draw(slip, name, UnitStyle.Us, ChartPage.Portrait));
    }

    [Fact]
    public void Handles_limits_overlaps_and_lowest_angle_are_named()
    {
        string words = Cases.Words(SlipChart.Draw(Cases.Slip("dry"), "case", UnitStyle.Metric));
        Assert.All(
            ["dry", "oily", "greasy", "bends", "tip dents it", "mouth dents", "likely force", "strong pull", "swing ends, 30°", "as it turns", "yours: 250 mm", "best: ", "slides off at a square pull", "degrees below level"],
            name => Assert.Contains(name, words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_handle_in_another_state_has_a_curve_of_its_own()
    {
        string words = Cases.Words(SlipChart.Draw(Cases.Slip("snug and rusty"), "case", UnitStyle.Metric));
        Assert.Contains("rusty", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tube_that_slides_at_a_square_pull_says_so()
    {
        SlipAssessment slip = Cases.Slip("slides at square");
        Assert.True(slip.SlidesAtSquare);
        Assert.Contains(
            "slides off even at a square pull", Cases.Words(SlipChart.Draw(slip, "case", UnitStyle.Metric)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lifted", "degrees above level")]
    [InlineData("across", "degrees past square")]
    public void Angles_are_named_by_the_way_the_hands_push(string name, string words) => Assert.Contains(
        words, Cases.Words(SlipChart.Draw(Cases.Slip(name), "case", UnitStyle.Metric)), StringComparison.Ordinal);

    [Fact]
    public void Units_follow_the_style()
    {
        string us = Cases.Words(SlipChart.Draw(Cases.Slip("dry"), "case", UnitStyle.Us));
        Assert.Contains("overlap, in", us, StringComparison.Ordinal);
        Assert.Contains("the tube breaks, lbf", us, StringComparison.Ordinal);
        Assert.Contains("yours: 9.8 in", us, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() =>
        ChartChecks.SameInGerman(() => SlipChart.Draw(Cases.Slip("dry"), "case", UnitStyle.Metric));
}
