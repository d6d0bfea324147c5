using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

/// <summary>What a turn after the first torque adds to what loosens it.</summary>
public sealed class TurnedTests
{
    /// <summary>Figures of tests/Engines/turned.py.</summary>
    [Theory]
    [InlineData(0, 39686.66, 80.5551, false)]
    [InlineData(15, 69364.24, 140.7940, false)]
    [InlineData(90, 103179.58, 209.4317, true)]
    public void The_nut_starts_from_the_preload_that_torque_and_turn_make(double degrees, double newtons, double loosensNm, bool yields)
    {
        AssembledJoint joint = BreakLooseSpread.Joint(M14("clean", degrees));
        Near.Equal(newtons, joint.PreloadN, 1e-5);
        Near.Equal(1000 * loosensNm, joint.LooseningNmm, 1e-5);
        Assert.Equal(yields, joint.TurnedPastYield);
        Near.Equal(newtons / ThreadCatalog.Named("M14x1.5").StressAreaMm2, joint.StressMpa, 1e-5);
    }

    [Fact]
    public void The_whole_spread_grows_with_the_preload()
    {
        BreakLooseTorque plain = BreakLooseSpread.Torque(M14("rusted", 0));
        BreakLooseTorque turned = BreakLooseSpread.Torque(M14("rusted", 15));
        foreach (double share in (double[])[0.1, 0.5, 0.9])
        {
            Near.Equal(69364.24 / 39686.66, turned.Quantile(share) / plain.Quantile(share), 1e-5);
        }
    }

    [Fact]
    public void A_short_grip_gets_there_with_less_turn()
    {
        double At(double mm) => BreakLooseSpread.Joint(M14("clean", 15) with { Grip = Length.FromMillimeters(mm) }).PreloadN;
        Assert.True(At(30) > At(45));
        double aluminium = BreakLooseSpread.Joint(M14("clean", 15) with { Clamped = ClampedMaterial.Named("aluminium") }).PreloadN;
        Assert.True(aluminium < At(45));
    }

    [Fact]
    public void Loosen_and_check_have_one_model_of_it()
    {
        var request = new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(60),
            Then = Angle.FromDegrees(90),
            Thread = ThreadCatalog.Named("M12x1.5"),
            Grade = "10.9",
            Condition = "clean",
        };
        CheckingAssessment quoted = Checking.Assess(new TighteningRequest
        {
            Torque = request.BookTorque,
            Then = request.Then,
            Thread = request.Thread,
            Grade = "10.9",
        });
        Near.Equal(quoted.Result.Loosening.NewtonMillimeters, BreakLooseSpread.Joint(Loosening.Assess(request).Setup.Fastener).LooseningNmm);
    }

    [Fact]
    public void A_turn_without_a_thread_is_refused_and_its_angle_checked()
    {
        var request = new LooseningRequest { BookTorque = Torque.FromNewtonMeters(60), Then = Angle.FromDegrees(90) };
        Assert.Equal(
            "torque: the turn after it is of no use without the thread and its grade. Write: thread M14x1.5",
            Assert.Throws<InputException>(() => Loosening.Assess(request)).Line);
        Assert.Throws<InputException>(() => Loosening.Assess(request with { Thread = ThreadCatalog.Named("M12"), Then = Angle.FromDegrees(-90) }));
        Assert.Equal(
            "torque: a turn is given, but not the torque before it. Write: torque 460Nm",
            Assert.Throws<InputException>(() => Loosening.Assess(request with { Thread = ThreadCatalog.Named("M12"), BookTorque = null })).Line);
    }

    private static Fastener M14(string condition, double degrees) => Nuts.Of(condition, 100, "M14x1.5", grade: "10.9") with
    {
        Then = degrees > 0 ? Angle.FromDegrees(degrees) : null,
        Grip = Length.FromMillimeters(45),
    };
}
