using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;

namespace Leverage.Tests.Assessments;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class JudgementLaws
{
    /// <summary>How far two integrals over panels of different borders may stand apart.</summary>
    private const double Rounding = 2e-6;

    [Property]
    public void The_chances_of_a_judged_pull_sum_to_one(Draws draws)
    {
        var (nut, hand, reach, links, around) = Any(draws);
        Judgement judged = Judged(nut, hand, reach, links, around);
        Assert.Equal(1, judged.ComesLoose + judged.StaysTight + judged.Breaks, Rounding);
    }

    [Property]
    public void Raising_a_limit_never_raises_the_chance_that_anything_breaks(Draws draws, Sized which, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(draws);
        LinkLimit[] stronger = [.. links];
        int i = which.Of(Enumerable.Range(0, links.Length).ToArray());
        stronger[i] = links[i] with { LimitNmm = links[i].LimitNmm * by.Even(1, 5) };
        Assert.True(Judged(nut, hand, reach, stronger, around).Breaks <= Judged(nut, hand, reach, links, around).Breaks + Rounding);
    }

    [Property]
    public void Raising_the_hold_never_raises_the_chance_that_anything_breaks(Draws draws, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(draws);
        Strength hold = around.Hold!.Value;
        Circumstances firmer = around with { Hold = hold with { MedianNmm = hold.MedianNmm * by.Even(1, 5) } };
        Assert.True(Judged(nut, hand, reach, links, firmer).Breaks <= Judged(nut, hand, reach, links, around).Breaks + Rounding);
    }

    [Property]
    public void More_friction_of_the_tube_never_raises_the_chance_that_anything_breaks(Draws draws, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(draws);
        SplitLogNormal friction = around.Sliding!.Friction;
        Circumstances rougher = around with
        {
            Sliding = around.Sliding with { Friction = friction with { Median = friction.Median * by.Even(1, 3) } },
        };
        Judgement before = Judged(nut, hand, reach, links, around);
        Judgement after = Judged(nut, hand, reach, links, rougher);
        Assert.True(after.Shares.SlidesOff <= before.Shares.SlidesOff + Rounding);
        Assert.True(after.ComesLoose >= before.ComesLoose - Rounding);
    }

    [Property]
    public void A_strong_pull_is_passed_by_one_in_ten(Draws draws)
    {
        var (nut, hand, reach, _, _) = Any(draws);
        double strong = Judgement.StrongPull(nut, hand, reach);
        Strength reached = hand.Torque(reach);
        Assert.True(strong <= Math.Min(nut.HighNmm, reached.Quantile(0.9)) * (1 + 1e-9));
        if (strong < 0.999 * reached.CapNmm)
        {
            double above = nut.Spread.Survival(strong) * (1 - MathNet.Numerics.Distributions.LogNormal.CDF(
                Math.Log(reached.MedianNmm), reached.Sigma, strong));
            Assert.Equal(0.1, above, 1e-3);
        }
    }

    private static Judgement Judged(NutFigures nut, HandFigures hand, double reach, LinkLimit[] links, Circumstances around) =>
        Judgement.Of(nut, hand, reach, links, around, new double[links.Length]);

    private static (NutFigures Nut, HandFigures Hand, double ReachMm, LinkLimit[] Links, Circumstances Around) Any(Draws draws)
    {
        Func<Sized> next = draws.Reader();
        NutFigures nut = NutFigures.Of(Nuts.Of(next().Of(Nuts.Conditions), 200, "M16"));
        double reach = nut.LikelyNmm / 480 * next().Log(0.4, 4);
        var hand = new HandFigures(new Spread(480, next().Log(0.05, 0.4)), next().Upper(0.5) ? 800 : double.PositiveInfinity);
        double Near() => nut.LikelyNmm * next().Log(0.5, 6);
        LinkLimit[] links =
        [
            .. Enumerable.Range(0, 1 + (int)(next().Share * 4))
                .Select(i => next().Upper(0.5)
                    ? LinkLimit.Least((LinkKind)i, Near(), LimitSource.TestTorque, true)
                    : LinkLimit.Likely((LinkKind)i, Near(), LimitSource.Folds, true)),
        ];
        var around = new Circumstances
        {
            Hold = new Strength(Near(), 0.15),
            Sliding = new Sliding(SplitLogNormal.Through(0.2, 0.3, 0.4), next().Even(0, 0.5)),
        };
        return (nut, hand, reach, links, around);
    }
}
