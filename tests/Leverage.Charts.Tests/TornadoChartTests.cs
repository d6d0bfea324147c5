using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Charts.Tests;

public sealed class TornadoChartTests
{
    [Fact]
    public void What_matters_in_a_set_up_is_drawn_soundly_in_both_shapes()
    {
        LooseningAssessment assessment = Cases.Assess("heavy");
        var tornado = Tornado.OfComesLoose(assessment.Judgement.ComesLoose, WhatMatters.Of(assessment));
        ChartChecks.Sound(TornadoChart.Draw(tornado, "case"));
        ChartChecks.Sound(TornadoChart.Draw(tornado, "case", ChartPage.Portrait));
        string words = Cases.Words(TornadoChart.Draw(tornado, "case"));
        Assert.All(tornado.Bars, bar => Assert.Contains(bar.Input, words, StringComparison.Ordinal));
        Assert.Contains("chance that the nut comes loose, in 100", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(15)]
    public void Any_number_of_bars_is_drawn_soundly(int count)
    {
        TornadoBar[] bars = [.. Enumerable.Range(1, count).Select(i => new TornadoBar(
            string.Create(CultureInfo.InvariantCulture, $"input {i}"), 50 - 3 * i, 50 + 2 * i))];
        ChartChecks.Sound(TornadoChart.Draw(Of(50, bars), "case"));
        ChartChecks.Sound(TornadoChart.Draw(Of(50, bars), "case", ChartPage.Portrait));
    }

    [Theory]
    [InlineData(50, 50)]
    [InlineData(60, 70)]
    [InlineData(-900, -100)]
    [InlineData(0, 1e6)]
    [InlineData(49.99, 50.01)]
    public void Bars_on_one_side_or_without_width_are_drawn_soundly(double low, double high) =>
        ChartChecks.Sound(TornadoChart.Draw(Of(50, [new TornadoBar("odd", low, high), new TornadoBar("plain", 40, 60)]), "case"));

    [Fact]
    public void The_widest_bar_stands_first()
    {
        Chart chart = TornadoChart.Draw(Of(50, [new TornadoBar("narrow", 49, 51), new TornadoBar("wide", 10, 90)]), "case");
        float narrow = chart.Texts.Single(text => text.Text == "narrow").Box.Top;
        float wide = chart.Texts.Single(text => text.Text == "wide").Box.Top;
        Assert.True(wide < narrow);
        Assert.Contains("Most depends on: wide.", Cases.Words(chart), StringComparison.Ordinal);
    }

    [Fact]
    public void No_tick_promises_a_chance_outside_the_bars()
    {
        Chart chart = TornadoChart.Draw(Of(50, [new TornadoBar("all", 0, 100)]), "case");
        Assert.DoesNotContain(chart.Texts, text => text.Text is "-20" or "120");
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() =>
        ChartChecks.SameInGerman(() => TornadoChart.Draw(Of(50, [new TornadoBar("wide", 10.5, 90.5)]), "case"));

    private static Tornado Of(double centre, TornadoBar[] bars) =>
        new("answer, N", centre, bars, value => $"{UnitStyle.Figures(value)} N");
}
