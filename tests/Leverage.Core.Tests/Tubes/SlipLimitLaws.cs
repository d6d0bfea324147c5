using FsCheck.Xunit;
using Leverage.Tubes;

namespace Leverage.Tests.Tubes;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class SlipLimitLaws
{
    [Property]
    public void Just_inside_the_limit_friction_holds_the_tube_and_just_outside_it_does_not_whatever_the_force(
        Sized friction, Sized hand, Sized overlap, Sized tilt, Sized taper, Sized force)
    {
        TubeHold hold = Hold(friction, hand, overlap, tilt, taper);
        double limit = Math.Atan(SlipLimit.Tangent(hold));
        double n = force.Log(0.1, 5000);
        Assert.True(Outward(hold, n, limit - 1e-4) < 0);
        Assert.True(Outward(hold, n, limit + 1e-4) > 0);
    }

    [Property]
    public void Without_tilt_and_taper_the_limit_is_that_of_a_close_fit(Sized friction, Sized hand, Sized overlap)
    {
        TubeHold hold = Hold(friction, hand, overlap, default, default) with { TiltRad = 0, TaperRad = 0 };
        double close = SlipLimit.CloseFitTangent(hold.Friction, hold.HandToTipMm, hold.OverlapMm);
        Near.Equal(close, SlipLimit.Tangent(hold));
        Near.Equal(hold.Friction * (2 * hold.HandToTipMm + hold.OverlapMm) / hold.OverlapMm, close);
    }

    [Property]
    public void Tilt_and_taper_cost_the_same_angle_and_only_ever_cost(
        Sized friction, Sized hand, Sized overlap, Sized tilt, Sized more)
    {
        TubeHold hold = Hold(friction, hand, overlap, tilt, default) with { TaperRad = 0 };
        double worse = hold.TiltRad + more.Even(0.001, 0.1);
        Assert.True(SlipLimit.Tangent(hold with { TiltRad = worse }) < SlipLimit.Tangent(hold));
        Near.Equal(
            SlipLimit.Tangent(hold with { TiltRad = worse }),
            SlipLimit.Tangent(hold with { TaperRad = worse - hold.TiltRad }), 1e-9);
        Assert.True(SlipLimit.Tangent(hold) <= SlipLimit.CloseFitTangent(hold.Friction, hold.HandToTipMm, hold.OverlapMm));
    }

    [Property]
    public void The_friction_needed_just_holds_the_angle(Sized friction, Sized hand, Sized overlap, Sized tilt, Sized taper)
    {
        TubeHold hold = Hold(friction, hand, overlap, tilt, taper);
        double tangent = SlipLimit.Tangent(hold);
        double needed = SlipLimit.NeededFriction(tangent, hold.HandToTipMm, hold.OverlapMm, hold.TiltRad + hold.TaperRad);
        Near.Equal(hold.Friction, needed, 1e-8);
        Assert.True(SlipLimit.NeededFriction(tangent + 0.01, hold.HandToTipMm, hold.OverlapMm, hold.TiltRad + hold.TaperRad) > needed);
    }

    [Property]
    public void A_pull_up_and_a_push_down_are_mirror_images(Sized force, Sized past, Sized tilt)
    {
        // The bar at an angle below level with a push down, and as much above it with a pull up: the hands' part along the tube.
        var (n, beta, delta) = (force.Log(1, 2000), past.Even(-1.1, 1.1), tilt.Even(0, 0.4));
        double Along(int up) => n * up * Math.Sin(up * (beta + delta));
        double outward = SlipLimit.OutwardPull(n, beta, delta);
        Near.Equal(Along(1), outward);
        Near.Equal(Along(-1), outward);
        Assert.Equal(beta + delta > 0, outward > 0);
    }

    [Property]
    public void More_friction_holds_a_wider_angle(Sized friction, Sized hand, Sized overlap, Sized tilt, Sized taper)
    {
        TubeHold hold = Hold(friction, hand, overlap, tilt, taper);
        Assert.True(SlipLimit.Tangent(hold with { Friction = 1.01 * hold.Friction }) > SlipLimit.Tangent(hold));
    }

    [Property]
    public void A_hand_at_the_tip_or_a_very_long_overlap_leaves_the_plain_friction_angle(Sized friction, Sized hand, Sized tilt)
    {
        TubeHold hold = Hold(friction, hand, new Sized(0.5), tilt, default);
        Near.Equal(hold.Friction, SlipLimit.Tangent(hold with { HandToTipMm = 0 }));
        Near.Equal(hold.Friction, SlipLimit.Tangent(hold with { OverlapMm = 1e12 }), 1e-6);
    }

    [Property]
    public void Without_friction_a_snug_tube_holds_no_angle_and_a_loose_one_walks_off_a_square_pull(
        Sized hand, Sized overlap, Sized tilt)
    {
        TubeHold hold = Hold(default, hand, overlap, tilt, default) with { Friction = 0 };
        Assert.Equal(0, SlipLimit.Tangent(hold with { TiltRad = 0, TaperRad = 0 }));
        double lean = hold.TiltRad + hold.TaperRad;
        Near.Equal(-Math.Tan(lean) * hold.HandToTipMm / hold.OverlapMm, SlipLimit.Tangent(hold));
        Near.Equal(1e-9 * (2 * hold.HandToTipMm + hold.OverlapMm) / hold.OverlapMm,
            SlipLimit.CloseFitTangent(1e-9, hold.HandToTipMm, hold.OverlapMm), 1e-6);
    }

    [Property]
    public void The_angle_falls_as_the_torque_does_while_the_tube_holds_at_all(
        Sized friction, Sized hand, Sized overlap, Sized tilt, Sized taper, Sized running)
    {
        TubeHold hold = Hold(friction, hand, overlap, tilt, taper);
        double tangent = SlipLimit.Tangent(hold);
        double held = SlipLimit.SafeAngle(tangent, hold.TiltRad, 1);
        double release = SlipLimit.SafeAngle(tangent, hold.TiltRad, running.Even(0, 1));
        double snap = SlipLimit.SafeAngle(tangent, hold.TiltRad, 0);
        Near.Equal(Math.Atan(tangent) - hold.TiltRad, held, 1e-9);
        Assert.Equal(-hold.TiltRad, snap, 1e-12);
        if (tangent >= 0)
        {
            Assert.True(release <= held && snap <= release);
        }
        else
        {
            // It walks off a square pull anyway: no state is safe at level.
            Assert.True(held <= 0 && release <= 0);
        }
    }

    /// <summary>
    /// What is left of the outward pull after friction, N, from the forces on the tube: the tip presses square to it, the
    /// mouth's normal leans by tilt and taper and pushes it outward, both rub against the slide.
    /// </summary>
    private static double Outward(TubeHold hold, double forceN, double angleRad)
    {
        double square = forceN * Math.Cos(angleRad);
        double lean = hold.TiltRad + hold.TaperRad;
        double mouthSquare = square * hold.HandToTipMm / hold.OverlapMm;
        double mouthNormal = mouthSquare / (Math.Cos(lean) + hold.Friction * Math.Sin(lean));
        double tip = square + mouthSquare;
        double inward = hold.Friction * tip + hold.Friction * mouthNormal * Math.Cos(lean) - mouthNormal * Math.Sin(lean);
        return forceN * Math.Sin(angleRad) - inward;
    }

    private static TubeHold Hold(Sized friction, Sized hand, Sized overlap, Sized tilt, Sized taper) =>
        new(friction.Log(0.02, 1), hand.Log(1, 2000), overlap.Log(20, 600), tilt.Even(0, 0.4), taper.Even(0, 0.2));
}
