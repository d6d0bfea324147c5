using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class PreloadCurveTests
{
    [Fact]
    public void Its_lines_rise_with_torque_and_stop_where_the_bolt_yields()
    {
        PreloadCurve curve = PreloadCurve.Of(Assess(null, null));
        Assert.Equal([0.10, 0.14, 0.196], curve.Lines.Select(line => Math.Round(line.Friction, 3)));
        foreach (PreloadLine line in curve.Lines)
        {
            Assert.Empty(line.ByTurnN);
            Assert.Equal(0, line.ByTorqueN[0]);
            Assert.True(line.ByTorqueN.Zip(line.ByTorqueN.Skip(1)).All(pair => pair.First <= pair.Second));
        }

        // M12x1.25 10.9, friction 0.14, yields at 76.4 kN (torsion plastic) and 165 N·m; the curve goes 8 % further.
        Near.Equal(76.4e3, curve.Lines[1].ByTorqueN[^1], 1e-3);
        Near.Equal(curve.Lines[1].ByTorqueN[^1], curve.Lines[1].ByTorqueN[^8]);
        Assert.True(curve.Lines[0].ByTorqueN[60] > curve.Lines[1].ByTorqueN[60] && curve.Lines[1].ByTorqueN[60] > curve.Lines[2].ByTorqueN[60]);
    }

    [Fact]
    public void Its_yield_is_the_joints_own_and_falls_as_the_torque_rises()
    {
        PreloadCurve curve = PreloadCurve.Of(Assess(null, null));
        TighteningAssessment assessment = Assess(null, null);
        var joint = BoltedJoint.Of(assessment.Setup.Thread, assessment.Bearing.Diameter.Millimeters, assessment.Grade.YieldMpa);
        Near.Equal(joint.AtYieldShare(1, 0.02).TorqueNmm, curve.YieldTorqueNmm[0]);
        Near.Equal(joint.AtYieldShare(1, 1).PreloadN, curve.YieldN[^1]);
        Assert.True(curve.YieldTorqueNmm.Zip(curve.YieldTorqueNmm.Skip(1)).All(pair => pair.First < pair.Second));
        Assert.True(curve.YieldN.Zip(curve.YieldN.Skip(1)).All(pair => pair.First > pair.Second));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(90)]
    public void A_turn_goes_on_from_the_first_stage_to_the_preload_of_the_assessment(double degrees)
    {
        TighteningAssessment assessment = Assess(60, degrees);
        PreloadCurve curve = PreloadCurve.Of(assessment);
        Near.Equal(degrees * Math.PI / 180, curve.TurnRad[^1]);
        PreloadFigures first = assessment.Result.FirstStage;
        PreloadFigures end = assessment.Result.End;
        Assert.Equal([first.High.Newtons, first.Likely.Newtons, first.Low.Newtons], curve.Lines.Select(line => line.ByTurnN[0]), Same);
        Assert.Equal([end.High.Newtons, end.Likely.Newtons, end.Low.Newtons], curve.Lines.Select(line => line.ByTurnN[^1]), Same);
    }

    [Fact]
    public void A_snug_by_hand_spreads_where_the_turn_begins_and_a_stated_friction_has_one_line()
    {
        JointSetup setup = Setup(60, 30) with { Friction = FrictionRange.Stated(0.12) };
        Assert.Single(PreloadCurve.Of(TighteningAssessor.Assess(setup)).Lines);
        PreloadCurve snug = PreloadCurve.Of(TighteningAssessor.Assess(setup with { Request = setup.Request with { SnugByHand = true } }));
        Near.Equal(6, snug.Lines[0].ByTurnN[0] / snug.Lines[2].ByTurnN[0]);
    }

    [Fact]
    public void The_scatter_is_that_of_the_way_of_tightening_and_never_past_yield()
    {
        PreloadCurve wrench = PreloadCurve.Of(Assess(60, null));
        double likely = wrench.Result.End.Likely.Newtons;
        Near.Equal(0.72 * likely, wrench.Scatter.Least);
        Near.Equal(1.28 * likely, wrench.Scatter.Most);
        PreloadCurve impact = PreloadCurve.Of(TighteningAssessor.Assess(Setup(128, null) with { With = TighteningMethod.Named("impact") }));
        Near.Equal(0.4 * impact.Result.End.Likely.Newtons, impact.Scatter.Least);
        Near.Equal(impact.Lines[0].ByTorqueN[^1], impact.Scatter.Most);
    }

    private static bool Same(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * Math.Abs(expected);

    private static JointSetup Setup(double? torqueNm, double? degrees) => new(
        new() { Torque = torqueNm is { } torque ? Torque.FromNewtonMeters(torque) : null, Then = degrees is { } turn ? Angle.FromDegrees(turn) : null },
        ThreadCatalog.Named("M12x1.25"))
    {
        Grade = GradeCatalog.Bolt("10.9", ThreadCatalog.Named("M12x1.25")),
    };

    private static TighteningAssessment Assess(double? torqueNm, double? degrees) => TighteningAssessor.Assess(Setup(torqueNm, degrees));
}
