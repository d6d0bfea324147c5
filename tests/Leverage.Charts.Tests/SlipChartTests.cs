using Leverage.Wording;
using Leverage.Assessments;

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
            ["dry", "oily", "greasy", "bends", "tip dents it", "mouth dents", "your force", "your lowest, 30°", "yours: 250 mm", "best: ", "slides off a level bar"],
            name => Assert.Contains(name, words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_handle_in_another_state_has_a_curve_of_its_own()
    {
        string words = Cases.Words(SlipChart.Draw(Cases.Slip("snug and rusty"), "case", UnitStyle.Metric));
        Assert.Contains("rusty", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tube_that_walks_off_says_so_and_that_it_is_a_prediction()
    {
        SlipAssessment slip = Cases.Slip("walks off");
        Assert.True(slip.WalksOff);
        string words = Cases.Words(SlipChart.Draw(slip, "case", UnitStyle.Metric));
        Assert.Contains("walks off the bar even under a perfectly square pull", words, StringComparison.Ordinal);
        Assert.Contains("not yet tested", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_follow_the_style()
    {
        string us = Cases.Words(SlipChart.Draw(Cases.Slip("dry"), "case", UnitStyle.Us));
        Assert.Contains("overlap, in", us, StringComparison.Ordinal);
        Assert.Contains("the tube gives, lbf", us, StringComparison.Ordinal);
        Assert.Contains("yours: 9.8 in", us, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() =>
        ChartChecks.SameInGerman(() => SlipChart.Draw(Cases.Slip("dry"), "case", UnitStyle.Metric));
}
