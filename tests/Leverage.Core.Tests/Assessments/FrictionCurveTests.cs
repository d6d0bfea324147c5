using Leverage.Probability;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class FrictionCurveTests
{
    [Theory]
    [InlineData("M12x1.25", "10.9")]
    [InlineData("M6", "8.8")]
    [InlineData("1/2-20", "SAE 5")]
    public void The_chosen_torque_is_the_assessments_own(string thread, string grade)
    {
        TighteningAssessment assessment = Assess(thread, grade, 0.14, null);
        FrictionCurve curve = FrictionCurveMaker.Of(assessment);
        Assert.Equal(assessment.Torque.NewtonMeters, curve.Chosen.NewtonMeters, 9);
        Assert.True(curve.Spread.Low < curve.Chosen && curve.Chosen < curve.Spread.High);
    }

    [Fact]
    public void Torque_and_yield_limit_rise_with_friction()
    {
        FrictionCurve curve = FrictionCurveMaker.Of(Assess("M12x1.25", "10.9", 0.14, null));
        for (int i = 1; i < curve.Friction.Count; i++)
        {
            Assert.True(curve.Friction[i] > curve.Friction[i - 1]);
            Assert.True(curve.TorqueNmm[i] > curve.TorqueNmm[i - 1]);
            Assert.True(curve.YieldNmm[i] > curve.YieldNmm[i - 1]);
        }
    }

    [Fact]
    public void Just_below_the_named_friction_the_chosen_torque_yields_the_bolt_and_just_above_it_does_not()
    {
        TighteningAssessment assessment = Assess("M12x1.25", "10.9", 0.14, null);
        FrictionCurve curve = FrictionCurveMaker.Of(assessment);
        double edge = Assert.NotNull(curve.YieldsBelow);
        Assert.InRange(edge, curve.Friction[0], curve.Range.Likely);
        var joint = BoltedJoint.Of(assessment.Setup.Thread, assessment.Bearing.Diameter.Millimeters, assessment.Grade.YieldMpa);
        Assert.True(joint.AtTorque(curve.Chosen.NewtonMillimeters, edge - 0.001).YieldShare > 1);
        Assert.True(joint.AtTorque(curve.Chosen.NewtonMillimeters, edge + 0.001).YieldShare < 1);
    }

    [Fact]
    public void A_gentle_torque_yields_at_no_friction_and_a_brutal_one_at_all()
    {
        Assert.Null(FrictionCurveMaker.Of(Assess("M12x1.25", "10.9", 0.14, 10)).YieldsBelow);
        FrictionCurve brutal = FrictionCurveMaker.Of(Assess("M12x1.25", "10.9", 0.14, 900));
        Assert.Equal(brutal.Friction[^1], brutal.YieldsBelow);
    }

    [Fact]
    public void A_torque_asked_about_is_the_chosen_one()
    {
        FrictionCurve curve = FrictionCurveMaker.Of(Assess("M12x1.25", "10.9", 0.14, 100));
        Assert.Equal(100, curve.Chosen.NewtonMeters, 6);
    }

    private static TighteningAssessment Assess(string thread, string grade, double friction, double? torqueNm)
    {
        ScrewThread named = ThreadCatalog.Named(thread);
        return TighteningAssessor.Assess(new TighteningSetup
        {
            Thread = named,
            Grade = GradeCatalog.Bolt(grade, named),
            Friction = FrictionRange.About(friction),
            Torque = torqueNm is { } torque ? Torque.FromNewtonMeters(torque) : null,
        });
    }
}
