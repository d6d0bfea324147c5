using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Charts.Tests;

public sealed class WindowChartTests
{
    public static TheoryData<string> Names => Cases.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_case_is_drawn_soundly_in_both_units_and_shapes(string name)
    {
        ForceWindow window = Cases.Window(name);
        ChartChecks.Sound(WindowChart.Draw(window, name, UnitStyle.Metric));
        ChartChecks.Sound(WindowChart.Draw(window, name, UnitStyle.Us, ChartPage.Portrait));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_limit_is_named_on_the_chart_or_said_to_lie_above_it(string name)
    {
        ForceWindow window = Cases.Window(name);
        string words = Cases.Words(WindowChart.Draw(window, name, UnitStyle.Metric));
        Assert.All(window.Limits, limit => Assert.Contains(PartWords.Name(limit.Link, UnitStyle.Metric), words, StringComparison.Ordinal));
        Assert.Contains("nut: likely", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_too_weak_at_any_length_is_said_in_words()
    {
        string words = Cases.Words(WindowChart.Draw(Cases.Window("axle nut"), "case", UnitStyle.Metric));
        Assert.Contains("No length helps: the 1/2 in square twists off before the nut is likely to turn.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lever_too_short_is_said_in_words_with_both_lengths()
    {
        ForceWindow window = Cases.Window("heavy") with { YourReachMm = 500 };
        string words = Cases.Words(WindowChart.Draw(window, "case", UnitStyle.Metric));
        Assert.Contains("yours, 0.50 m, is too short", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Hands_stronger_than_a_part_are_warned()
    {
        string words = Cases.Words(WindowChart.Draw(Cases.Window("two hands, tiny bolt"), "case", UnitStyle.Metric));
        Assert.Contains("At your likely force there the ", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_nut_that_any_lever_undoes_is_said_so()
    {
        string words = Cases.Words(WindowChart.Draw(Cases.Window("tiny bolt"), "case", UnitStyle.Metric));
        Assert.Contains("Likely to work at any reach shown; yours is 100 mm.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_bar_takes_a_set_what_a_nut_held_and_the_strong_pull_are_marked()
    {
        ForceWindow window = Cases.Window("held before");
        string words = Cases.Words(WindowChart.Draw(window, "case", UnitStyle.Metric)).Replace('\u00A0', ' ');
        Assert.Contains("stays bent", words, StringComparison.Ordinal);
        Assert.Contains("nut held this", words, StringComparison.Ordinal);
        Assert.Contains($"strong pull {UnitStyle.Metric.Force(UnitsNet.Force.FromNewtons(window.StrongPullN!.Value))}", words, StringComparison.Ordinal);
        Assert.Equal(300_000, window.HeldN![0] * window.ReachMm[0], 6);
        Assert.Equal(Math.PI * Math.Pow(15.5, 3) / 32 * 900, window.Sets[0].ForceN[0] * window.ReachMm[0], 1);
    }

    [Fact]
    public void What_is_not_judged_is_said_and_rounded_corners_have_their_curve()
    {
        string words = Cases.Words(WindowChart.Draw(Cases.Window("open spanner, rounded"), "case", UnitStyle.Metric));
        Assert.Contains("Not judged: bar.", words, StringComparison.Ordinal);
        Assert.Contains("18 mm hexagon", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_are_on_both_axes()
    {
        string metric = Cases.Words(WindowChart.Draw(Cases.Window("heavy"), "case", UnitStyle.Metric));
        Assert.Contains("force of the hands, N", metric, StringComparison.Ordinal);
        Assert.Contains("middle of the hands, m", metric, StringComparison.Ordinal);
        string us = Cases.Words(WindowChart.Draw(Cases.Window("heavy"), "case", UnitStyle.Us));
        Assert.Contains("force of the hands, lbf", us, StringComparison.Ordinal);
        Assert.Contains("middle of the hands, in", us, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_window_gives_the_same_bytes_in_any_order_and_culture() =>
        ChartChecks.SameInGerman(() => WindowChart.Draw(Cases.Window("heavy"), "case", UnitStyle.Metric));

    [Fact]
    public void A_long_title_is_broken_into_lines()
    {
        string title = string.Join(' ', Enumerable.Repeat("Rear axle nut of the farm's pick-up", 6));
        Chart chart = WindowChart.Draw(Cases.Window("heavy"), title, UnitStyle.Metric);
        ChartChecks.Sound(chart);
        Assert.Equal(title, chart.Title);
    }

    [Fact]
    public void A_title_without_a_space_is_cut_at_the_edge_of_the_page()
    {
        Chart chart = WindowChart.Draw(Cases.Window("heavy"), new string('W', 200), UnitStyle.Metric);
        Assert.EndsWith("…", chart.Texts[0].Text, StringComparison.Ordinal);
        Assert.InRange(chart.Texts[0].Box.Right, 0, chart.Page.Width);
    }
}
