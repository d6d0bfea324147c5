using Leverage.Assessments;
using Leverage.Grades;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Grades;

/// <summary>How far a turn may stretch a bolt before it breaks.</summary>
public sealed class BoltStretchTests
{
    private static readonly ScrewThread SevenEighths = ThreadCatalog.Named("7/8-9");

    /// <summary>
    /// The standard's own figure against the turns from snug at which structural bolts of that strength broke: 7/8-9, 25.4/9 mm a turn
    /// (Guide to Design Criteria for Bolted and Riveted Joints, 2nd ed., chapter 4, recalled). Apart by −8 and +2 %.
    /// </summary>
    [Theory]
    [InlineData("8.8", 1.75, 0.08)]
    [InlineData("10.9", 1.25, 0.03)]
    public void The_standard_agrees_with_the_turns_at_which_structural_bolts_broke(string grade, double turns, double apart)
    {
        double diameter = SevenEighths.DiameterMm;
        Length stands = BoltStretch.AtBreaking(GradeCatalog.Bolt(grade, ThreadCatalog.Named("M16")), diameter)!.Stretch;
        Near.Equal(turns * 25.4 / 9, stands.Millimeters, apart);
    }

    /// <summary>Af over 1.2 diameters, ISO 898-1:2013 as restated (nfgab.se).</summary>
    [Theory]
    [InlineData("4.8", 0.24)]
    [InlineData("5.8", 0.22)]
    [InlineData("6.8", 0.20)]
    public void The_table_is_the_standards_figure_times_its_length(string grade, double printed)
    {
        ScrewThread thread = ThreadCatalog.Named("M10");
        Near.Equal(1.2 * 10 * printed, BoltStretch.AtBreaking(GradeCatalog.Bolt(grade, thread), 10)!.Stretch.Millimeters, 1e-9);
    }

    [Fact]
    public void A_steel_that_is_stronger_never_stretches_further_and_one_without_a_figure_has_none()
    {
        double[] metric = [Stands("8.8"), Stands("9.8"), Stands("10.9"), Stands("12.9")];
        Assert.Equal(metric.OrderDescending(), metric);
        Assert.Null(BoltStretch.AtBreaking(GradeCatalog.Bolt("SAE 7", SevenEighths), SevenEighths.DiameterMm));
        Assert.All(TableCatalog.Tables["bolt-stretch"].Rows, row => Assert.Contains(TableCatalog.Tables["grades"].Rows, grade => grade.Key == row.Key));
    }

    /// <summary>M12 8.8 stands 0.24·12 = 2.88 mm: 90 N·m and 180° stretch it 0.86 mm, 360° 1.74, 720° 3.49.</summary>
    [Theory]
    [InlineData(180, TorqueVerdict.Yields, Verdict.Care, "as such bolts are meant to")]
    [InlineData(360, TorqueVerdict.Yields, Verdict.Care, "look the angle up")]
    [InlineData(720, TorqueVerdict.Breaks, Verdict.Stop, "The bolt breaks: the turn")]
    public void A_turn_that_breaks_the_bolt_is_a_stop_and_one_past_half_of_it_is_not_called_usual(
        double degrees, TorqueVerdict quote, Verdict verdict, string words)
    {
        CheckingAssessment assessment = CheckingAssessor.Assess(new JointSetup(
            new() { Torque = Torque.FromNewtonMeters(90), Then = Angle.FromDegrees(degrees), Grip = Length.FromMillimeters(20) }, ThreadCatalog.Named("M12"))
        { Grade = Of("8.8") });
        Assert.Equal((quote, verdict), (assessment.Result.Quote, assessment.Verdict));
        Assert.Contains(words, JointLines.Why(assessment.Result, UnitStyle.Metric), StringComparison.Ordinal);
        Assert.Equal(verdict != Verdict.Stop, assessment.Result.Holds);
        Assert.Contains("stretch at which grade 8.8 breaks (memory)", CheckingAnswer.Of(assessment).Unconfirmed);
        Near.Equal(assessment.Result.Angle!.Stretch.Millimeters / 2.88, assessment.Result.Angle.OfBreaking!.Value, 1e-9);
    }

    /// <summary>Turns of the structural standards: on square faces below 0.35 of it, on sloped ones below 0.55.</summary>
    [Fact]
    public void What_structural_standards_ask_for_is_far_from_breaking()
    {
        foreach (TableRow row in TableCatalog.Tables["turn-angles"].Rows)
        {
            foreach (string size in (string[])["M16", "M20", "M24", "M30"])
            {
                ScrewThread thread = ThreadCatalog.Named(size);
                double stretch = row.Number("angle_deg") / 360 * thread.PitchMm;
                double stands = BoltStretch.AtBreaking(GradeCatalog.Bolt(row.Text("standard") == "RCSC" ? "8.8" : "10.9", thread), thread.DiameterMm)!.Stretch.Millimeters;
                Assert.InRange(stretch / stands, 0.05, row.Says("faces", "square") ? 0.35 : 0.55);
            }
        }
    }

    private static double Stands(string grade) => BoltStretch.AtBreaking(Of(grade), 12)!.Stretch.Millimeters;

    private static Grade Of(string name) => GradeCatalog.Bolt(name, ThreadCatalog.Named("M12"));
}
