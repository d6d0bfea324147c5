using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Tables;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>One rule sets a torque and judges one: what is set fits, and so does what published tables print for 0.12.</summary>
[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class TighteningRuleTests
{
    private static readonly string[] Lubricants = [.. TableCatalog.Tables["friction"].Rows.Select(row => row.Key)];

    /// <summary>Torques printed for friction 0.12 and 90 % of yield, from the checks: fine threads and one maker's coarse ones.</summary>
    public static TheoryData<string> Printed => [.. TableCatalog.Checks["tightening"].Rows
        .Where(row => row.Text("formula") == "JointTorque.Tightening" && row.Text("inputs").Contains("friction=0.12;", StringComparison.Ordinal)
            && row.Status == ValueStatus.Published).Select(row => row.Key)];

    [Theory]
    [InlineData(0.45, 0.6, TorqueVerdict.Fits)]
    [InlineData(0.4499, 0.6, TorqueVerdict.Low)]
    [InlineData(0.95, 1.05, TorqueVerdict.Fits)]
    [InlineData(0.9501, 1.0, TorqueVerdict.High)]
    [InlineData(0.7, 1.0501, TorqueVerdict.High)]
    [InlineData(1, 1, TorqueVerdict.High)]
    [InlineData(1.0001, 1.2, TorqueVerdict.Yields)]
    public void A_share_of_yield_fits_from_45_to_95_per_cent_and_to_105_where_friction_is_low(double likely, double high, TorqueVerdict verdict) =>
        Assert.Equal(verdict, TighteningRule.Judge(new ShareRange(0.3, likely, high)));

    /// <summary>By hand: 100 % of yield at friction 0.10 and 0.9 at 0.14, the smaller; M12×1.25 10.9 at a stated 0.12.</summary>
    [Theory]
    [InlineData("M8", 24.04)]
    [InlineData("M10", 47.34)]
    [InlineData("M12", 81.64)]
    [InlineData("M16", 200.0)]
    [InlineData("M20", 403.6)]
    [InlineData("M24", 694.2)]
    public void The_torque_set_is_the_one_worked_out_by_hand(string thread, double newtonMetres)
    {
        TighteningAssessment bolt = Assess(ThreadCatalog.Named(thread), null, null);
        Near.Equal(newtonMetres, bolt.Torque.NewtonMeters, 1e-3);
        Assert.Equal(TorqueLimit.LowFriction, bolt.SetBy);
        Near.Equal(1, bolt.Result.End.YieldShare.High, 1e-9);
    }

    /// <summary>M12 8.8 by its own rules: just yield at 0.10, 81.6 N·m; a thread of which 0.9 is 0.9 N less than that asks for sets it, one 0.9 N above does not.</summary>
    [Theory]
    [InlineData(-1, TorqueLimit.Thread)]
    [InlineData(1, TorqueLimit.LowFriction)]
    public void A_thread_that_strips_sets_the_torque_only_where_it_is_the_lowest_of_all(double newtons, TorqueLimit by)
    {
        TighteningAssessment bolt = Assess(ThreadCatalog.Named("M12"), null, null);
        var joint = BoltedJoint.Of(ThreadCatalog.Named("M12"), bolt.Result.Bearing.Diameter.Millimeters, 640);
        Force strips = Force.FromNewtons(joint.AtYieldShare(1, 0.10).PreloadN / 0.9 + newtons);
        var (torqueNmm, set) = TighteningRule.Set(joint, FrictionRange.Unknown, 0.9, strips);
        Assert.Equal(by, set);
        Near.Equal(81.64, torqueNmm / 1000, 1e-3);
    }

    [Fact]
    public void A_stated_friction_is_one_friction_and_makes_one_preload()
    {
        ScrewThread thread = ThreadCatalog.Named("M12x1.25");
        TighteningAssessment bolt = Assess(thread, GradeCatalog.Bolt("10.9", thread), FrictionRange.Stated(0.12));
        Near.Equal(132.738, bolt.Torque.NewtonMeters, 1e-4);
        Assert.Equal(TorqueLimit.YieldShare, bolt.SetBy);
        Assert.Equal(bolt.Result.End.Low, bolt.Result.End.High);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_stated_friction_that_is_none_is_refused(double friction) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionRange.Stated(friction));

    [Fact]
    public void What_is_set_for_any_thread_and_grade_fits_when_it_is_checked()
    {
        foreach (ScrewThread thread in AnyThread.All)
        {
            foreach (Grade grade in GradeCatalog.BoltsFor(thread))
            {
                Fits(thread, grade, null);
            }
        }
    }

    [Property]
    public void What_is_set_fits_with_any_lubricant_and_any_stated_friction(Sized at, Sized grade, Sized lubricant, Sized friction)
    {
        ScrewThread thread = at.Of(AnyThread.All);
        IReadOnlyList<Grade> grades = GradeCatalog.BoltsFor(thread);
        if (grades.Count > 0)
        {
            Fits(thread, grade.Of(grades), FrictionRange.Lubricated(lubricant.Of(Lubricants)));
            Fits(thread, grade.Of(grades), FrictionRange.Stated(friction.Even(0.04, 0.5)));
        }
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void What_tables_print_for_friction_0_12_fits_where_nothing_is_said_of_friction(string id)
    {
        string[] name = id.Split('-');
        ScrewThread thread = ThreadCatalog.Named(name[0]);
        double printed = TableCatalog.Checks["tightening"].Rows.Single(row => row.Key == id).Number("expected");
        Assert.Equal(TorqueVerdict.Fits, Check(thread, GradeCatalog.Bolt(name[1], thread), null, Torque.FromNewtonMeters(printed)).Quote);
    }

    /// <summary>M12 8.8 of the tables for friction 0.14 is 93 N·m: it yields where friction is low.</summary>
    [Theory]
    [InlineData(30, TorqueVerdict.Low, Verdict.Care)]
    [InlineData(84, TorqueVerdict.Fits, Verdict.Go)]
    [InlineData(93, TorqueVerdict.High, Verdict.Care)]
    [InlineData(120, TorqueVerdict.Yields, Verdict.Stop)]
    [InlineData(130, TorqueVerdict.Breaks, Verdict.Stop)]
    public void It_is_a_stop_where_the_likely_friction_yields_the_bolt(double torqueNm, TorqueVerdict quote, Verdict verdict)
    {
        CheckingAssessment check = Check(ThreadCatalog.Named("M12"), null, null, Torque.FromNewtonMeters(torqueNm));
        Assert.Equal((quote, verdict), (check.Quote, check.Verdict));
        TighteningAssessment asked = TighteningAssessor.Assess(new JointSetup(
            new() { Torque = Torque.FromNewtonMeters(torqueNm) }, ThreadCatalog.Named("M12")));
        Assert.Equal((quote, verdict), (asked.Result.Quote, asked.Verdict));
        Assert.Equal(check.End, asked.Result.End);
    }

    private static void Fits(ScrewThread thread, Grade grade, FrictionRange? friction)
    {
        Torque set = Assess(thread, grade, friction).Torque;
        CheckingAssessment check = Check(thread, grade, friction, set);
        Assert.True(check.Quote == TorqueVerdict.Fits, $"{thread.Designation} {grade.Name}: {check.Quote}");
        Near.Equal(set.NewtonMeters, check.Usual.NewtonMeters);
    }

    private static TighteningAssessment Assess(ScrewThread thread, Grade? grade, FrictionRange? friction) =>
        TighteningAssessor.Assess(new JointSetup(new(), thread) { Grade = grade, Friction = friction });

    private static CheckingAssessment Check(ScrewThread thread, Grade? grade, FrictionRange? friction, Torque quoted) =>
        CheckingAssessor.Assess(new JointSetup(new() { Torque = quoted }, thread) { Grade = grade, Friction = friction });
}
