using FsCheck.Xunit;
using Leverage.Corners;

namespace Leverage.Tests.Corners;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class CornerLaws
{
    private static readonly Func<double, double, double>[] Drivers =
        [CornerHold.SixPoints, CornerHold.RigidJaw, CornerHold.TwelvePoints];

    [Property]
    public void More_play_or_wear_never_holds_more(Sized play, Sized wear, Sized more, Sized worse)
    {
        var (p, w) = (play.Even(0, 0.2), wear.Even(0, 0.13));
        var (q, v) = (more.Even(p, 0.2), worse.Even(w, 0.13));
        Assert.All(Drivers, m =>
        {
            Assert.InRange(m(p, w), 0, 0.349);
            Assert.True(m(q, w) <= m(p, w) && m(p, v) <= m(p, w));
        });
    }

    [Property]
    public void A_hair_more_play_or_wear_changes_it_by_a_hair(Sized play, Sized wear)
    {
        var (p, w) = (play.Even(0, 0.16), wear.Even(0, 0.12));
        Assert.All(Drivers, m =>
        {
            Assert.Equal(m(p, w), m(p + 1e-9, w), 1e-4);
            Assert.Equal(m(p, w), m(p, w + 1e-9), 1e-4);
        });
    }

    [Property]
    public void Six_points_hold_up_to_three_times_what_two_do_and_never_less(Sized play, Sized wear)
    {
        var (p, w) = (play.Even(0, 0.2), wear.Even(0, 0.13));
        Near.Equal(Math.Min(0.349, 3 * CornerHold.RigidJaw(p, w)), CornerHold.SixPoints(p, w));
        Assert.True(CornerHold.SixPoints(p, w) >= CornerHold.RigidJaw(p, w));
    }

    [Property]
    public void A_nut_that_spins_is_held_by_nothing(Sized wear, Sized more)
    {
        double w = wear.Even(0, 0.13);
        double play = HexagonShape.SpinningPlay(w) + more.Even(0, 0.1);
        Assert.All(Drivers, m => Assert.Equal(0, m(play, w)));
        Assert.Equal(0, CornerHold.SpreadingJaw(new JawGrip(5, 18, 330, play, w, 128_000)));
        Near.Equal(Math.PI / 6, HexagonShape.FreeSwing(play, w), 1e-6);
    }

    [Property]
    public void Rounding_takes_the_wear_off_both_corners(Sized wear)
    {
        // An arc of radius r in a corner of 120 degrees stops 2r/√3 − r short of it.
        double w = wear.Even(0, 0.13);
        double gone = 2 * (2 / Math.Sqrt(3) - 1) * HexagonShape.CornerRadius(w);
        Assert.Equal(w * 2 / Math.Sqrt(3), gone, 1e-12);
        Assert.Equal(2 / Math.Sqrt(3) - gone, 1 + HexagonShape.SpinningPlay(w), 1e-12);
    }

    [Property]
    public void The_driver_touches_where_its_face_is_as_far_out_as_the_rounded_corner(Sized play, Sized wear)
    {
        double w = wear.Even(0, 0.12);
        double p = play.Even(0, 1) * HexagonShape.SpinningPlay(w);
        double turn = HexagonShape.FreeSwing(p, w);
        double radius = HexagonShape.CornerRadius(w);
        double outermost = (1 / Math.Sqrt(3) - 2 / Math.Sqrt(3) * radius) * Math.Cos(Math.PI / 6 - turn) + radius;
        Assert.Equal((1 + p) / 2, outermost, 1e-12);
        Assert.InRange(turn, -1e-7, Math.PI / 6);
        Near.Equal(Math.PI / 6, HexagonShape.FreeSwing(HexagonShape.SpinningPlay(w), w), 1e-6);
    }

    [Property]
    public void Twice_the_size_holds_four_times_for_each_millimetre_of_height(Sized play, Sized height, Sized size, Sized yield)
    {
        double m = CornerHold.SixPoints(play.Even(0, 0.15), 0.02);
        var (h, s, re) = (height.Log(1, 50), size.Log(5, 80), yield.Log(200, 1200));
        double torque = CornerHold.Torque(m, h, s, re);
        Near.Equal(4 * torque, CornerHold.Torque(m, h, 2 * s, re));
        Near.Equal(2 * torque, CornerHold.Torque(m, 2 * h, s, re));
        Near.Equal(3 * torque, CornerHold.Torque(m, h, s, 3 * re));
    }

    [Property]
    public void A_jaw_holds_what_a_rigid_one_does_at_the_play_it_has_spread_to(Sized play, Sized wear, Sized test, Sized height)
    {
        double w = wear.Even(0, 0.12);
        var jaw = new JawGrip(height.Log(2, 30), 24, 640, play.Even(0, 0.99) * HexagonShape.SpinningPlay(w), w, test.Log(1e4, 1e6));
        double torque = CornerHold.SpreadingJaw(jaw);
        double spread = jaw.Play + 0.02 * torque / jaw.TestTorqueNmm;
        Near.Equal(CornerHold.Torque(CornerHold.RigidJaw(spread, w), jaw.EngagedHeightMm, 24, 640), torque, 1e-9);
        Assert.True(torque < CornerHold.Torque(CornerHold.RigidJaw(jaw.Play, w), jaw.EngagedHeightMm, 24, 640));
        Assert.True(CornerHold.SpreadingJaw(jaw with { TestTorqueNmm = 2 * jaw.TestTorqueNmm }) > torque);
    }

    [Property]
    public void Play_is_what_the_opening_is_wider(Sized opening, Sized nut, Sized scale)
    {
        var (n, k) = (nut.Even(9, 30), scale.Log(0.1, 10));
        double wide = n + opening.Even(0, 1);
        Assert.Equal(wide, n + 10 * ToolFit.Play(wide, n, 10), 1e-12);
        Assert.Equal(ToolFit.Play(wide, n, 10), ToolFit.Play(k * wide, k * n, k * 10), 1e-12);
    }
}
