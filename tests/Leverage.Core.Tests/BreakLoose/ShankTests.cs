using FsCheck.Xunit;
using Leverage.BreakLoose;

namespace Leverage.Tests.BreakLoose;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class ShankTests
{
    [Property]
    public void The_limit_at_the_nut_is_the_torque_that_brings_the_shank_to_what_it_stands(
        Sized stands, Sized loosening, Sized thread, Sized grown, Sized extra)
    {
        var (tl, s, w, e) = (loosening.Log(1, 1e6), thread.Even(0.05, 1), grown.Even(0.05, 1), extra.Even(0, 1e5));
        double shank = stands.Log(1, 1e6);
        Near.Equal(shank, Shank.Torque(Shank.LimitAtNut(shank, tl, s, w, e), tl, s, w, e), 1e-9);
    }

    [Property]
    public void The_shank_takes_no_more_than_the_nut_and_more_where_the_nut_takes_more(
        Sized torque, Sized more, Sized loosening, Sized thread, Sized grown, Sized extra)
    {
        var (t, tl, s, w, e) = (torque.Log(1, 1e6), loosening.Log(1, 1e6), thread.Even(0.05, 1), grown.Even(0.05, 1), extra.Even(0, 1e5));
        Assert.InRange(Shank.Torque(t, tl, s, w, e), 0, t * (1 + 1e-12));
        Assert.True(Shank.Torque(t * more.Log(1.001, 3), tl, s, w, e) > Shank.Torque(t, tl, s, w, e));
    }

    /// <summary>Below the extra, in the clean joint and in the rust: the slope of one logarithm over the other.</summary>
    [Theory]
    [InlineData(30e3)]
    [InlineData(90e3)]
    [InlineData(400e3)]
    public void The_slope_is_the_shank_s_torque_over_the_nut_s(double torque)
    {
        var state = new ShankState(100e3, 0.4, 0.7, 50e3, 0.8);
        double slope = (Math.Log(state.Torque(torque * 1.0001)) - Math.Log(state.Torque(torque / 1.0001))) / (2 * Math.Log(1.0001));
        Near.Equal(slope, state.LogSlope(torque, state.Torque(torque)), 1e-6);
    }

    [Theory]
    [InlineData(1.01, 0.5)]
    [InlineData(0.5, 1.01)]
    [InlineData(0, 0.5)]
    [InlineData(0.5, 0)]
    public void A_share_is_above_nothing_and_no_more_than_the_whole(double thread, double grown)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Shank.LimitAtNut(1e5, 1e5, thread, grown, 0));
        if (thread > 1 || grown > 1)
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Shank.Torque(2e5, 1e5, thread, grown, 0));
        }
    }

    /// <summary>A hotter stud lengthens: clamp and clean joint fall by the same share.</summary>
    [Fact]
    public void Heat_takes_off_the_clean_joint_of_the_shank_what_it_takes_off_the_preload()
    {
        Fastener cold = Nuts.Of("used", 120, "M12x1.5", 0.14, "10.9");
        Fastener hot = cold with { Heating = new Heating(HeatedPart.Stud, 60) };
        double left = BreakLooseSpread.Joint(hot).PreloadShare;
        Assert.InRange(left, 0.3, 0.95);
        Near.Equal(left * BreakLooseSpread.ShankOf(cold).LooseningNmm, BreakLooseSpread.ShankOf(hot).LooseningNmm, 1e-12);
        Assert.True(BreakLooseSpread.ShankOf(hot).StandsShare > BreakLooseSpread.ShankOf(cold).StandsShare);
    }

    [Fact]
    public void Of_a_joint_without_a_thread_no_preload_and_no_stretch_is_claimed()
    {
        AssembledJoint joint = BreakLooseSpread.Joint(Nuts.Of("used", 120, null));
        Assert.Equal((false, 0.0, 0.0, 1.0), (joint.FrictionRaised, joint.PreloadN, joint.StressMpa, joint.PreloadShare));
    }

    /// <summary>Tension and torsion on one circle: (σ/Rm)² + (T'/T_p)² = 1.</summary>
    [Property]
    public void Tension_and_torsion_lie_on_one_circle(Sized plastic, Sized share, Sized tensile)
    {
        var (tp, rm, x) = (plastic.Log(1, 1e6), tensile.Log(100, 2000), share.Even(0, 1));
        Near.Equal(1, x * x + Math.Pow(Shank.Stands(tp, x * rm, rm) / tp, 2), 1e-9);
    }

    /// <summary>M12×1.5 10.9 at 120 N·m and 0.14: 322 used, 284 rusted, 220 heat-rusted, by hand.</summary>
    [Theory]
    [InlineData("used", 321.8)]
    [InlineData("rusted", 283.7)]
    [InlineData("heat-rusted", 220.2)]
    public void A_wheel_stud_stands_more_at_the_nut_than_in_its_shank(string condition, double limitNm)
    {
        Fastener nut = Nuts.Of(condition, 120, "M12x1.5", 0.14, "10.9");
        Near.Equal(limitNm, BreakLooseSpread.ShankOf(nut).LimitAtNut(BreakLooseSpread.Stud(nut)!.Value.MedianNmm) / 1000, 3e-4);
        Assert.Equal(0.08, BreakLooseSpread.Stud(nut)!.Value.Sigma);
        Assert.Null(BreakLooseSpread.Stud(nut with { Grade = null }));
        Assert.True(double.IsNaN(BreakLooseSpread.ShankOf(nut with { Grade = null }).StandsShare));
    }

    [Property]
    public void What_is_left_falls_with_the_turn_to_the_rust_s_own_part_and_stays_there(Sized q, Sized clamp, Sized turn, Sized whole)
    {
        var (running, share, phi0) = (q.Even(0, 1), clamp.Even(0, 1), whole.Log(0.01, 3));
        double phi = turn.Even(0, 1) * phi0;
        Assert.Equal(running - running * share * phi / phi0, TorqueLeft.Share(running, share, phi, phi0), 1e-12);
        Assert.Equal(running * (1 - share), TorqueLeft.Share(running, share, 5 * phi0, phi0), 1e-12);
        Assert.Equal(0, TorqueLeft.Share(running, 1.3, phi0, phi0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TorqueLeft.Share(1.001, share, phi, phi0));
    }
}
