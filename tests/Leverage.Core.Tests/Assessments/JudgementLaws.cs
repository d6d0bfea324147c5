using Leverage.Probability;
using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Tests.BreakLoose;

namespace Leverage.Tests.Assessments;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class JudgementLaws
{
    /// <summary>
    /// What gives earlier no longer stays stuck, so that one rule may fall silent; every other rule that fired fires again or
    /// its stop does.
    /// </summary>
    [Property]
    public void A_limit_that_falls_silences_no_rule_but_that_it_may_stay_stuck(Places places, Sized which, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(places);
        LinkLimit[] weaker = [.. links];
        int i = which.Of(Enumerable.Range(0, links.Length).ToArray());
        weaker[i] = links[i] with { LimitNmm = links[i].LimitNmm * by.Even(0.2, 1) };
        Judgement before = Judged(nut, hand, reach, links, around);
        Judgement after = Judged(nut, hand, reach, weaker, around);
        Assert.True(Severity(after.Rules) >= Severity(before.Rules & ~VerdictRules.MayStayStaysTight));
        Assert.True(after.Rules.HasFlag(VerdictRules.MayGive) || !before.Rules.HasFlag(VerdictRules.MayGive));
        Assert.True(after.LowestLimitNmm <= before.LowestLimitNmm);
        Assert.True(after.Safety <= before.Safety);
        if (before.Rules != VerdictRules.MayStayStaysTight)
        {
            Assert.True(after.Verdict >= before.Verdict);
        }
    }

    [Property]
    public void A_hold_that_falls_never_makes_the_verdict_better(Places places, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(places);
        Judgement before = Judged(nut, hand, reach, links, around);
        Judgement after = Judged(nut, hand, reach, links, around with { HoldNmm = by.Even(0, 1) * around.HoldNmm });
        Assert.True(after.Verdict >= before.Verdict);
        Assert.Equal(before.ComesLoose, after.ComesLoose);
    }

    [Property]
    public void A_tube_that_slides_sooner_never_makes_the_verdict_better(Places places, Sized by)
    {
        var (nut, hand, reach, links, around) = Any(places);
        double less = by.Even(0, 0.5);
        Surroundings looser = around with { HeldRad = around.HeldRad - less, ReleaseRad = around.ReleaseRad - less };
        Assert.True(Judged(nut, hand, reach, links, looser).Verdict >= Judged(nut, hand, reach, links, around).Verdict);
    }

    private static int Severity(VerdictRules rules) => (int)VerdictOf.From(rules);

    private static Judgement Judged(NutFigures nut, HandFigures hand, double reach, LinkLimit[] links, Surroundings around) =>
        Judgement.Of(nut, hand, reach, links, around, new double[links.Length]);

    private static (NutFigures Nut, HandFigures Hand, double ReachMm, LinkLimit[] Links, Surroundings Around) Any(Places places)
    {
        Func<Sized> next = places.Reader();
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
        double held = next().Even(0, 1.2);
        return (nut, hand, reach, links, new Surroundings(Near(), held, held - next().Even(0, 0.4), next().Even(0, 0.8), false));
    }
}
