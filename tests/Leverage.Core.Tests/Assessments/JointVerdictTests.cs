using Leverage.Assessments;
using Leverage.Grades;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;
using static System.FormattableString;

namespace Leverage.Tests.Assessments;

/// <summary>
/// What a careful mechanic says of a joint: a bolt that breaks, a thread that strips, what wants care though the torque fits.
/// Figures worked out by hand: least strengths of ISO 898-1, faces of ISO 4014 and ISO 273, friction 0.10, 0.14 and 0.196.
/// </summary>
public sealed class JointVerdictTests
{
    /// <summary>
    /// Tension and torsion together reach the tensile strength, T = F·arm, F = As·Rm/√(1 + 3·[1.5·d2/d0·tan(φ+ρ')]²). M10, 58.0 mm²,
    /// 800 MPa: 0.14, 39 946 N on 1.8737 mm; 0.10, 42 109 N on 1.4053 mm. M12×1.5, 1040 MPa: 80 028 N on 2.1924 mm.
    /// </summary>
    [Theory]
    [InlineData("M8", "8.8", 37.914, 30.044)]
    [InlineData("M10", "8.8", 74.845, 59.174)]
    [InlineData("M12", "8.8", 129.221, 102.046)]
    [InlineData("M12x1.5", "10.9", 175.457, 137.413)]
    public void A_torque_past_what_twists_the_bolt_off_breaks_it(string thread, string grade, double breaksNm, double atLowNm)
    {
        JointAssessment past = Checked(Invariant($"{breaksNm * 1.001}Nm --thread {thread} --grade {grade}"));
        Near.Equal(breaksNm, past.Breaking.Likely.NewtonMeters, 1e-4);
        Near.Equal(atLowNm, past.Breaking.AtLow.NewtonMeters, 1e-4);
        Assert.Equal((TorqueVerdict.Breaks, Verdict.Stop, false), (past.Quote, past.Verdict, past.Holds));
        JointAssessment under = Checked(Invariant($"{breaksNm * 0.999}Nm --thread {thread} --grade {grade}"));
        Assert.Equal((TorqueVerdict.Yields, Verdict.Stop, true), (under.Quote, under.Verdict, under.Holds));
    }

    /// <summary>However torsion is counted at yield, a bolt breaks with its section fully plastic.</summary>
    /// <summary>Table large-nuts: an axle nut that sets its bearing 176 to 407 N·m on M20 to M24, a filler plug 25 to 50 on M16 to M18.</summary>
    [Theory]
    [InlineData("M24x1.5", 339, "axle nut")]
    [InlineData("M18x1.5", 45, "plug")]
    [InlineData("M24x1.5", 762, null)]
    [InlineData("M24x1.5", 95, null)]
    [InlineData("M10", 20, "plug")]
    [InlineData("M10", 100, null)]
    public void A_torque_that_does_not_fit_the_bolt_may_be_usual_for_its_bearing_or_seal(string thread, double nm, string? what)
    {
        CheckingAssessment check = CheckingAssessor.Assess(new JointSetup(new() { Torque = Torque.FromNewtonMeters(nm) }, ThreadCatalog.Named(thread)));
        Assert.Equal(what is not null, check.UsualFor.Any(row => row.Application.Contains(what!, StringComparison.Ordinal)));
        Assert.Equal(what is null, JointLines.UsualFor(check, UnitStyle.Metric) is null);
        Assert.All(check.UsualFor, row => Assert.Contains($"{row.Application} (memory)", CheckingAnswer.Of(check).Unconfirmed));
    }

    [Fact]
    public void It_breaks_at_the_same_torque_by_the_older_tables() =>
        Near.Equal(74.845, Set("--thread M10 --torsion elastic").Result.Breaking.Likely.NewtonMeters, 1e-4);

    /// <summary>
    /// M10, loosest fit: 21.477 mm² a mm of thread, die casting shears at 131 MPa, 2.8135 kN a mm; 0.9 of it at friction 0.10 on
    /// 1.40525 mm, 3.5583 N·m a mm; the printed diameters are rounded, 0.5 %. 20 mm hold more than the bolt.
    /// </summary>
    [Theory]
    [InlineData(6, 21.350, TorqueLimit.Thread)]
    [InlineData(8, 28.466, TorqueLimit.Thread)]
    [InlineData(10, 35.583, TorqueLimit.Thread)]
    [InlineData(20, 47.340, TorqueLimit.LowFriction)]
    public void What_is_set_leaves_the_tapped_thread_a_tenth_of_what_strips_it(double engagedMm, double torqueNm, TorqueLimit by)
    {
        string hole = Invariant($"--thread M10 --tapped die-cast-aluminium --engagement {engagedMm}mm");
        TighteningAssessment set = Set(hole);
        Near.Equal(torqueNm, set.Torque.NewtonMeters, 6e-3);
        Assert.Equal(by, set.SetBy);
        Assert.NotEqual(Verdict.Stop, set.Verdict);
        Assert.Equal(by == TorqueLimit.Thread, set.Assumed.Any(one => one.Kind == AssumptionKind.ShareOfStrip));
        Near.Equal(set.Torque.NewtonMeters, Checking.Assess(Asked($"47Nm {hole}")).Usual.NewtonMeters);
    }

    /// <summary>8 mm hold 22.5 kN: 47 N·m make 25.1 kN at 0.14; 35 N·m make 18.7 and, at 0.10, 24.9; 31 N·m 22.06 there.</summary>
    [Theory]
    [InlineData(47, TorqueVerdict.Strips, Verdict.Stop, false)]
    [InlineData(35, TorqueVerdict.Strips, Verdict.Stop, true)]
    [InlineData(31, TorqueVerdict.Fits, Verdict.Care, true)]
    [InlineData(150, TorqueVerdict.Strips, Verdict.Stop, false)]
    public void A_torque_that_strips_the_thread_does_not_fit(double torqueNm, TorqueVerdict quote, Verdict verdict, bool holds)
    {
        JointAssessment result = Checked(Invariant($"{torqueNm}Nm --thread M10 --tapped die-cast-aluminium --engagement 8mm"));
        Assert.Equal((quote, verdict, holds), (result.Quote, result.Verdict, result.Holds));
    }

    /// <summary>14 mm hold 39.4 kN, more than yields the bolt at 0.10 (33.7) and less than breaks it there (42.1).</summary>
    [Fact]
    public void A_torque_past_yield_strips_the_thread_the_bolt_outlasts() =>
        Assert.Equal(TorqueVerdict.Strips, Checked("70Nm --thread M10 --tapped die-cast-aluminium --engagement 14mm").Quote);

    [Fact]
    public void No_bolt_or_unit_is_named_that_the_same_hole_would_not_hold()
    {
        CheckingAssessment check = Checking.Assess(Asked("47Nm --thread M10 --tapped die-cast-aluminium --engagement 8mm"));
        Assert.Null(check.ReadsBetterAs);
        Assert.DoesNotContain(check.SuitsGrades, grade => grade.Name == "8.8");
        Assert.DoesNotContain(check.SuitsThreads, thread => thread.Printed == "M10");
    }

    /// <summary>
    /// M12×1.5 10.9 yields at 158.59 N·m and 0.14: 1.6 times the clamp of 104.07 N·m is 1.05 of yield, 1.35 times that of 110 is 0.94.
    /// A wrench's scatter is the friction's, which the range holds already. M8 A2-70 without paste seizes: common practice.
    /// </summary>
    [Theory]
    [InlineData("--thread M12x1.5 --grade 10.9 --torque 110Nm", null)]
    [InlineData("--thread M12x1.5 --grade 10.9 --torque 110Nm --with feel", null)]
    [InlineData("--thread M12x1.5 --grade 10.9 --torque 105Nm --with impact", JointCaution.Scatter)]
    [InlineData("--thread M12x1.5 --grade 10.9 --torque 103Nm --with impact", null)]
    [InlineData("--thread M12x1.5 --grade 10.9 --rough-thread", JointCaution.RoughThread)]
    [InlineData("--thread M8 --grade A2-70 --lubrication stainless-dry", JointCaution.Galls)]
    [InlineData("--thread M8 --grade A2-70", JointCaution.Galls)]
    [InlineData("--thread M8 --grade A2-70 --lubrication stainless-paste", null)]
    [InlineData("--thread M14x1.5 --castle 6", JointCaution.NextSlot)]
    [InlineData("--thread M14x1.5 --castle 24 --grip 300mm --torque 90Nm", null)]
    public void What_wants_care_is_no_go(string line, JointCaution? caution)
    {
        JointAssessment result = Set(line).Result;
        Assert.Equal(caution is { } one ? [one] : [], result.Cautions);
        Assert.Equal((TorqueVerdict.Fits, caution is null ? Verdict.Go : Verdict.Care), (result.Quote, result.Verdict));
    }

    [Fact]
    public void A_figure_of_friction_and_a_lubricant_together_are_refused()
    {
        InputException refusal = Assert.Throws<InputException>(() => Set("--thread M10 --friction 0.12 --lubrication dry"));
        Assert.Equal("friction", refusal.Subject);
        Assert.Equal(new Cure("lubrication", "dry"), Assert.Single(refusal.Cures));
    }

    /// <summary>M12×1.5 8.8 yields at 108 N·m at 0.14, 10.9 at 159, 12.9 at 186; at a friction of 1 no grade takes 900.</summary>
    [Theory]
    [InlineData("110Nm --thread M12x1.5", "10.9")]
    [InlineData("170Nm --thread M12x1.5", "12.9")]
    [InlineData("200Nm --thread M12x1.5", null)]
    [InlineData("110Nm --thread M12x1.5 --grade 8.8", null)]
    [InlineData("100Nm --thread M12x1.5", null)]
    public void Where_the_grade_was_assumed_a_stronger_bolt_is_likeliest(string line, string? grade) =>
        Assert.Equal(grade, Loosening.Assess(ArgumentLine.Read(LooseningFields.All, new LooseningRequest(), line)).StrongerGrade?.Name);

    private static JointAssessment Checked(string line) => Checking.Assess(Asked(line)).Result;

    private static TighteningRequest Asked(string line) => ArgumentLine.Read(TighteningFields.Check, new TighteningRequest(), line);

    private static TighteningAssessment Set(string line) =>
        Tightening.Assess(ArgumentLine.Read(TighteningFields.All, new TighteningRequest(), line));
}
