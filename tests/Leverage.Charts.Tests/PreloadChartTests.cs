using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Tests;

public sealed class PreloadChartTests
{
    [Theory]
    [InlineData("M12x1.25", "10.9", "oiled", null, null)]
    [InlineData("M6", "8.8", "moly", 5.0, null)]
    [InlineData("M64", "12.9", "stainless-dry", null, null)]
    [InlineData("M3", "4.6", "dry", null, null)]
    [InlineData("1/2-20", "SAE 5", "oiled", 20.0, null)]
    [InlineData("M12", "8.8", "stainless-dry", 300.0, null)]
    [InlineData("M12x1.25", "10.9", "oiled", 60.0, 90.0)]
    [InlineData("M14x1.5", "10.9", "dry", 100.0, 15.0)]
    [InlineData("M6", "8.8", "moly", 5.0, 720.0)]
    [InlineData("M24", "8.8", "oiled", 300.0, 180.0)]
    public void Every_thread_is_drawn_soundly_in_both_units_and_shapes(string thread, string grade, string lubrication, double? torqueNm, double? degrees)
    {
        PreloadCurve curve = Curve(thread, grade, FrictionRange.Lubricated(lubrication), torqueNm, degrees);
        ChartChecks.Sound(PreloadChart.Draw(curve, thread, UnitStyle.Metric));
        ChartChecks.Sound(PreloadChart.Draw(curve, thread, UnitStyle.Us, ChartPage.Portrait));
    }

    [Theory]
    [InlineData("feel", "feel ±35\u00A0%")]
    [InlineData("impact", "impact ±60\u00A0%")]
    [InlineData("wrench", "wrench ±28\u00A0%")]
    public void The_way_of_tightening_stands_beside_its_scatter(string method, string words)
    {
        ScrewThread m12 = ThreadCatalog.Named("M12");
        Chart chart = PreloadChart.Draw(
            PreloadCurve.Of(TighteningAssessor.Assess(new JointSetup(new(), m12) { With = TighteningMethod.Named(method) })), "case", UnitStyle.Metric);
        ChartChecks.Sound(chart);
        Assert.Contains(words, Cases.Words(chart), StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_friction_is_drawn_as_one_line()
    {
        Chart chart = PreloadChart.Draw(Curve("M12", "8.8", FrictionRange.Stated(0.12), null), "case", UnitStyle.Metric);
        string words = Cases.Words(chart);
        Assert.Contains("friction 0.12", words, StringComparison.Ordinal);
        Assert.DoesNotContain("by friction", words, StringComparison.Ordinal);
        ChartChecks.Sound(chart);
    }

    [Fact]
    public void It_says_what_the_torque_makes_over_the_frictions()
    {
        string words = Cases.Words(PreloadChart.Draw(Curve("M12x1.25", "10.9", FrictionRange.Unknown, null), "case", UnitStyle.Metric));
        Assert.Contains("128 N·m makes 59.3 kN likely, 43.5 to 80.2 kN by friction.", words, StringComparison.Ordinal);
        Assert.Contains("torque, N·m", words, StringComparison.Ordinal);
        Assert.Contains("bolt yields", words, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_a_turn_adds_and_when_the_bolt_yields()
    {
        string words = Cases.Words(PreloadChart.Draw(Curve("M12x1.25", "10.9", FrictionRange.Unknown, 60, 90), "case", UnitStyle.Metric));
        Assert.Contains("60 N·m and then 90° make 76.4 kN likely; the bolt yields after", words, StringComparison.Ordinal);
        Assert.Contains("then turn, degrees", words, StringComparison.Ordinal);
        string gentle = Cases.Words(PreloadChart.Draw(Curve("M12x1.25", "10.9", FrictionRange.Unknown, 60, 10), "case", UnitStyle.Metric));
        Assert.Contains("the bolt does not yield.", gentle, StringComparison.Ordinal);
    }

    [Fact]
    public void A_torque_that_yields_the_bolt_at_the_likely_friction_is_called_too_much()
    {
        string words = Cases.Words(PreloadChart.Draw(Curve("M12", "8.8", FrictionRange.About(0.14), 300), "case", UnitStyle.Metric));
        Assert.Contains("300 N·m yields the bolt at friction 0.14: too much.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("makes", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() => ChartChecks.SameInGerman(
        () => PreloadChart.Draw(Curve("M12", "8.8", FrictionRange.About(0.14), 60, 90), "case", UnitStyle.Metric));

    private static PreloadCurve Curve(string thread, string grade, FrictionRange friction, double? torqueNm, double? degrees = null)
    {
        ScrewThread named = ThreadCatalog.Named(thread);
        return PreloadCurve.Of(TighteningAssessor.Assess(new JointSetup(
            new() { Torque = torqueNm is { } torque ? Torque.FromNewtonMeters(torque) : null, Then = degrees is { } turn ? Angle.FromDegrees(turn) : null }, named)
        {
            Grade = GradeCatalog.Bolt(grade, named),
            Friction = friction,
        }));
    }
}
