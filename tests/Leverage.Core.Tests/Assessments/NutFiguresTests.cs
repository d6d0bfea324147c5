using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Probability;
using Leverage.Reading;
using Leverage.Tests.BreakLoose;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What a nut takes after what it and its like have shown, and what a tube and a lever make of it.</summary>
public static class NutFiguresTests
{
    private static readonly Fastener Rusted = Nuts.Of("rusted", 100, "M16", 0.14, "8.8");

    /// <summary>One like nut is evidence: with half the variance common, the median moves by half its distance on the logarithm.</summary>
    [Theory]
    [InlineData(1.5)]
    [InlineData(0.7)]
    public static void One_like_nut_moves_what_is_expected_half_way(double times)
    {
        NutFigures alone = NutFigures.Of(Rusted);
        NutFigures told = NutFigures.Of(Rusted with { CameNmm = [times * alone.LikelyNmm] });
        Near.Equal(alone.LikelyNmm * Math.Sqrt(times), told.LikelyNmm, 0.02);
    }

    [Fact]
    public static void A_nut_like_it_comes_above_what_its_locknut_alone_holds() => Assert.Throws<InputException>(
        () => NutFigures.Of(Rusted with { Prevailing = Torque.FromNewtonMeters(20), CameNmm = [20e3] }));

    /// <summary>Below what the joint itself takes there is no more left of its torque than at that.</summary>
    [Fact]
    public static void What_came_easier_than_the_joint_goes_as_the_joint()
    {
        NutFigures nut = NutFigures.Of(Nuts.Of("used", 100, "M16", 0.14, "8.8") with { Grip = Length.FromMillimeters(40) });
        double turn = nut.ClampGoneRad!.Value / 2, loosening = nut.Joint.LooseningNmm;
        Assert.Equal(nut.ShareLeft(turn, loosening), nut.ShareLeft(turn, loosening / 2), 1e-12);
        Assert.True(nut.ShareLeft(turn, 2 * loosening) > nut.ShareLeft(turn, loosening));
    }

    /// <summary>The likely pull decides between no and care, the pull of one in ten between care and yes; a nut that takes less than either decides instead.</summary>
    [Theory]
    [InlineData(0.999, 1e9, Safe.No)]
    [InlineData(1.001, 1e9, Safe.Care)]
    [InlineData(1.665, 1e9, Safe.Care)]
    [InlineData(1.669, 1e9, Safe.Yes)]
    [InlineData(0.5, 0.499, Safe.Yes)]
    [InlineData(0.5, 0.501, Safe.No)]
    public static void A_tube_is_judged_by_the_likely_and_by_the_strong_pull(double stands, double nut, Safe safe)
    {
        var lever = LeverGeometry.WithTube(600, 1000, 250, 95);
        var limits = new TubeLimits(1e6, double.PositiveInfinity, double.PositiveInfinity, LimitSource.Folds, false);
        double torque = limits.BreakingTorque(lever), sigma = Math.Log(1.667) / 1.2815515655446004;
        var hand = new HandFigures(new Spread(torque / stands / lever.ReachMm, sigma), double.PositiveInfinity);
        Assert.Equal(safe, Circumstances.Against(limits, lever, nut * torque / stands, hand));
    }

    /// <summary>A bar of unknown thickness has no spring: what is let loose is the push alone, 30 N for a quarter of a second on 82 kg.</summary>
    [Fact]
    public static void A_bar_nobody_measured_lets_nothing_loose()
    {
        LooseningAssessment a = SampleRequests.Judged(SampleRequests.AxleNut with
        {
            Tube = null,
            Overlap = null,
            BarDiameter = null,
            Drive = null,
            BookTorque = Torque.FromNewtonMeters(15),
            Condition = "clean",
            Thread = null,
        });
        Assert.Null(a.Release!.Energy);
        Near.Equal(a.Judgement.StrongPullNmm / a.Lever!.Value.ReachMm * 0.25 / 82, a.Release.Snaps.MetersPerSecond, 1e-9);
    }
}
