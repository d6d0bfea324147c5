using FsCheck.Xunit;
using Leverage.Tubes;

namespace Leverage.Tests.Tubes;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class TubeBearingLaws
{
    [Property]
    public void The_reactions_balance_force_and_moment_on_the_tube(Sized force, Sized hand, Sized overlap)
    {
        var (n, a, c) = Sizes(force, hand, overlap);
        double tip = TubeBearing.TipReaction(n, a, c);
        double mouth = TubeBearing.MouthReaction(n, a, c);
        Assert.Equal(n, tip - mouth, 1e-9 * tip);

        // About any point: hand at 0, tip at a, mouth at a + c.
        foreach (double about in (ReadOnlySpan<double>)[0, a, a + c, 17])
        {
            double moment = n * (0 - about) - tip * (a - about) + mouth * (a + c - about);
            Assert.Equal(0, moment, 1e-9 * tip * (a + c + 17));
        }
    }

    [Property]
    public void The_bar_passes_force_and_moment_on_to_the_nut(Sized force, Sized hand, Sized overlap, Sized bare)
    {
        var (n, a, c) = Sizes(force, hand, overlap);
        double reach = a + c + bare.Even(0, 1500);
        double tip = TubeBearing.TipReaction(n, a, c);
        double mouth = TubeBearing.MouthReaction(n, a, c);
        double torque = tip * (reach - a) - mouth * (reach - a - c);
        Assert.Equal(n * reach, torque, 1e-9 * tip * reach);
    }

    [Property]
    public void Moments_are_the_same_from_either_side(Sized force, Sized hand, Sized overlap)
    {
        var (n, a, c) = Sizes(force, hand, overlap);
        Near.Equal(TubeBearing.MouthReaction(n, a, c) * c, TubeBearing.TubeMoment(n, a));
        Near.Equal(TubeBearing.TipReaction(n, a, c) * c, TubeBearing.BarMomentAtMouth(n, a, c));
        Assert.True(TubeBearing.TubeMoment(n, a) <= TubeBearing.BarMomentAtMouth(n, a, c));
    }

    [Property]
    public void Reactions_grow_in_step_with_force_and_ease_with_overlap(Sized force, Sized hand, Sized overlap, Sized more)
    {
        var (n, a, c) = Sizes(force, hand, overlap);
        double k = more.Log(1.01, 5);
        Near.Equal(k * TubeBearing.TipReaction(n, a, c), TubeBearing.TipReaction(k * n, a, c));
        Near.Equal(TubeBearing.TipReaction(n, a, c), TubeBearing.TipReaction(n, k * a, k * c));
        Assert.True(TubeBearing.TipReaction(n, a, k * c) < TubeBearing.TipReaction(n, a, c));
        Near.Equal(TubeBearing.MouthReaction(n, a, c) / k, TubeBearing.MouthReaction(n, a, k * c));
    }

    [Fact]
    public void Hands_at_the_tip_load_the_tip_alone()
    {
        Assert.Equal(200, TubeBearing.TipReaction(200, 0, 100));
        Assert.Equal(0, TubeBearing.MouthReaction(200, 0, 100));
        Assert.Equal(0, TubeBearing.TubeMoment(200, 0));
    }

    [Property]
    public void Tilt_takes_up_the_play_over_the_overlap(Sized bar, Sized play, Sized overlap, Sized scale)
    {
        double d = bar.Log(5, 50);
        double gap = play.Log(0.01, 30);
        double c = overlap.Log(10, 1000);
        double k = scale.Log(0.1, 10);
        double tilt = TubePlay.Tilt(d + gap, d, c);
        Near.Equal(gap, c * Math.Tan(tilt), 1e-9);
        Near.Equal(tilt, TubePlay.Tilt(k * (d + gap), k * d, k * c), 1e-9);
        Assert.True(TubePlay.Tilt(d + gap, d, 1.1 * c) < tilt);
        Assert.Equal(0, TubePlay.Tilt(d, d, c));
        Assert.Throws<ArgumentOutOfRangeException>(() => TubePlay.Tilt(0.999 * d, d, c));
    }

    private static (double ForceN, double HandToTipMm, double OverlapMm) Sizes(Sized force, Sized hand, Sized overlap) =>
        (force.Log(1, 2000), hand.Log(1, 3000), overlap.Log(10, 1000));
}
