using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Charts.Tests;

public sealed class FrictionChartTests
{
    [Theory]
    [InlineData("M12x1.25", "10.9", "oiled", null)]
    [InlineData("M6", "8.8", "moly", 5.0)]
    [InlineData("M64", "12.9", "stainless-dry", null)]
    [InlineData("M3", "4.6", "dry", null)]
    [InlineData("1/2-20", "SAE 5", "oiled", 20.0)]
    [InlineData("M12", "8.8", "stainless-dry", 300.0)]
    public void Every_thread_is_drawn_soundly_in_both_units_and_shapes(string thread, string grade, string lubrication, double? torqueNm)
    {
        FrictionCurve curve = Curve(thread, grade, FrictionRange.Lubricated(lubrication), torqueNm);
        ChartChecks.Sound(FrictionChart.Draw(curve, thread, UnitStyle.Metric));
        ChartChecks.Sound(FrictionChart.Draw(curve, thread, UnitStyle.Us, ChartPage.Portrait));
    }

    [Fact]
    public void A_single_friction_is_drawn_without_a_band()
    {
        var friction = new FrictionRange(0.14, 0.14, 0.14);
        string words = Cases.Words(FrictionChart.Draw(Curve("M12", "8.8", friction, null), "case", UnitStyle.Metric));
        Assert.Contains("likely:", words, StringComparison.Ordinal);
        Assert.DoesNotContain("low:", words, StringComparison.Ordinal);
        ChartChecks.Sound(FrictionChart.Draw(Curve("M12", "8.8", friction, null), "case", UnitStyle.Metric));
    }

    [Fact]
    public void It_says_what_the_torque_makes_and_below_which_friction_it_yields_the_bolt()
    {
        FrictionCurve curve = Curve("M12x1.25", "10.9", FrictionRange.About(0.12), null);
        string words = Cases.Words(FrictionChart.Draw(curve, "case", UnitStyle.Metric));
        Assert.Contains("114 N·m makes 60.5 kN at friction 0.12", words, StringComparison.Ordinal);
        Assert.Contains("Where friction is below 0.09 it yields the bolt", words, StringComparison.Ordinal);
        Assert.Contains("torque, N·m", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_torque_that_yields_the_bolt_at_the_likely_friction_is_called_too_much()
    {
        FrictionCurve curve = Curve("M12", "8.8", FrictionRange.About(0.14), 300);
        string words = Cases.Words(FrictionChart.Draw(curve, "case", UnitStyle.Metric));
        Assert.Contains("300 N·m yields the bolt at friction 0.14: too much.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("makes", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() => ChartChecks.SameInGerman(
        () => FrictionChart.Draw(Curve("M12", "8.8", FrictionRange.About(0.14), null), "case", UnitStyle.Metric));

    private static FrictionCurve Curve(string thread, string grade, FrictionRange friction, double? torqueNm)
    {
        ScrewThread named = ThreadCatalog.Named(thread);
        return FrictionCurveMaker.Of(TighteningAssessor.Assess(new TighteningSetup
        {
            Thread = named,
            Grade = GradeCatalog.Bolt(grade, named),
            Friction = friction,
            Torque = torqueNm is { } torque ? Torque.FromNewtonMeters(torque) : null,
        }));
    }
}
