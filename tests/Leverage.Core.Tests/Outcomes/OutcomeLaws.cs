using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Leverage.Tests.Outcomes;

[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 150)]
public sealed class OutcomeLaws
{
    private const double Close = 2e-6;

    /// <summary>The worst of 60,000 such pulls misses a sum of 1 by 7e-7.</summary>
    private const double Whole = 2e-6;

    [Property]
    public void The_chances_sum_to_one_and_each_risk_is_in_its_kind(Sized seed)
    {
        var (shares, each) = Pull(seed).Integral();
        Assert.Equal(1, RandomPull.Ends(shares).Sum(), Whole);
        Assert.Equal(shares.Gives + shares.WheelTurns, each.Sum(), 1e-12);
        Assert.All(RandomPull.Ends(shares).Append(shares.SlidesAsItTurns), share => Assert.InRange(share, -1e-9, 1 + Close));
        Assert.All(RandomPull.Ends(Pull(seed).Drawn(200, 1).Shares).Chunk(7), ends => Assert.Equal(1, ends.Sum(), 1e-12));
    }

    [Property]
    public void A_stronger_link_or_hold_gives_less_often_and_leaves_no_more_to_go_wrong(Sized seed, Sized which, Sized more)
    {
        RandomPull pull = Pull(seed);
        if (pull.Risks.Length == 0)
        {
            return;
        }

        int i = which.Of(Enumerable.Range(0, pull.Risks.Length).ToArray());
        double k = more.Log(1.001, 3);
        Risk[] risks = [.. pull.Risks];
        risks[i] = risks[i] with
        {
            Strength = risks[i].Strength with { MedianNmm = k * risks[i].Strength.MedianNmm },
            MedianAt = risks[i].MedianAt is { } median ? play => k * median(play) : null,
        };
        var (before, each) = pull.Integral();
        var (after, eachAfter) = (pull with { Risks = risks }).Integral();
        Assert.True(eachAfter[i] <= each[i] + Close);
        Assert.True(RandomPull.Wrong(after) <= RandomPull.Wrong(before) + Close);
        Assert.InRange(after.ComesLoose - before.ComesLoose, -Close, 1);
        Assert.True(after.StaysTight >= before.StaysTight - Close);
    }

    [Property]
    public void A_rougher_tube_slides_less_often_and_leaves_no_more_to_go_wrong(Sized seed, Sized more)
    {
        RandomPull pull = Pull(seed);
        if (pull.Tube is not { } tube)
        {
            return;
        }

        var rougher = tube with { Friction = tube.Friction with { Median = tube.Friction.Median * more.Log(1.001, 3) } };
        OutcomeShares before = pull.Integral().Shares;
        OutcomeShares after = (pull with { Tube = rougher }).Integral().Shares;
        Assert.True(after.SlidesOff <= before.SlidesOff + 1e-12);
        Assert.True(RandomPull.Wrong(after) <= RandomPull.Wrong(before) + Close);
        Assert.InRange(after.ComesLoose - before.ComesLoose, -Close, 1);
    }

    [Property]
    public void A_tube_that_slides_first_takes_its_share_of_everything_else_alike(Sized seed)
    {
        RandomPull pull = Pull(seed);
        OutcomeShares without = (pull with { Tube = null }).Integral().Shares;
        OutcomeShares with = pull.Integral().Shares;
        Assert.Equal(without.ComesLoose * (1 - with.SlidesOff), with.ComesLoose, Close);
        Assert.Equal(without.Gives * (1 - with.SlidesOff), with.Gives, Close);
        Assert.Equal(pull.Tube?.Friction.Below(pull.Tube.LeastToStay) ?? 0, with.SlidesOff, 1e-12);
    }

    [Property]
    public void More_reach_never_leaves_more_tight_nor_less_loose(Sized seed, Sized more)
    {
        RandomPull pull = Pull(seed);
        double k = more.Log(1.001, 3);
        OutcomeShares before = pull.Integral().Shares;
        OutcomeShares after = (pull with { Hand = pull.Hand with { MedianNmm = k * pull.Hand.MedianNmm, CapNmm = k * pull.Hand.CapNmm } }).Integral().Shares;
        Assert.InRange(before.StaysTight - after.StaysTight, -Close, 1);
        Assert.InRange(after.ComesLoose - before.ComesLoose, -Close, 1);
        Assert.InRange(after.Gives - before.Gives, -Close, 1);
    }

    [Property]
    public void A_nut_held_by_its_locknut_alone_turns_at_that_torque_or_not_at_all(Sized seed, Sized locknut)
    {
        RandomPull pull = Pull(seed);
        double at = pull.Hand.MedianNmm * locknut.Log(0.3, 2);
        Risk[] tools = [.. pull.Risks.Where(risk => risk.Kind is RiskKind.ToolGives or RiskKind.WheelTurns)];
        Fastener nut = Nuts.Of("rusted", 1e-6 * at / 1000, null) with { Prevailing = Torque.FromNewtonMillimeters(at) };
        double expected = tools.Aggregate(
            at < pull.Hand.CapNmm ? Holds(pull.Hand, at) : 0, (product, risk) => product * Holds(risk.Strength, at));
        Assert.Equal(expected, (pull with { Fastener = nut, Risks = tools, Tube = null }).Integral().Shares.ComesLoose, 2e-4);
    }

    [Property]
    public void What_never_happens_changes_nothing(Sized seed)
    {
        RandomPull pull = Pull(seed);
        var (plain, _) = pull.Integral();
        var (idle, each) = (pull with { Risks = [.. pull.Risks, new Risk(RiskKind.ToolGives, new Strength(1e12, 0.08))] }).Integral();
        Assert.Equal(plain.ComesLoose, idle.ComesLoose, Close);
        Assert.Equal(plain.StudTwistsOff, idle.StudTwistsOff, Close);
        Assert.Equal(0, each[^1], 1e-12);
        Assert.Equal(1, (pull with { Hand = new Strength(1e12, 0.1), Risks = [], Tube = null }).Integral().Shares.ComesLoose, Close);
    }

    private static RandomPull Pull(Sized seed) => RandomPull.Of((int)(seed.Share * 1e6));

    private static double Holds(Strength strength, double torqueNmm) =>
        Normal.CDF(0, 1, -Math.Log(torqueNmm / strength.MedianNmm) / strength.Sigma);
}
