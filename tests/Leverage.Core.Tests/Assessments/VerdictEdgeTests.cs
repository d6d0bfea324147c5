using FsCheck.Xunit;
using Leverage.Assessments;

namespace Leverage.Tests.Assessments;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class VerdictEdgeTests
{
    private static readonly VerdictFacts Calm = new(
        DemandLikelyNmm: 600, DemandHighNmm: 900, LowestLimitNmm: 1000, HoldNmm: 1000, HeldRad: 0.8, ReleaseRad: 0.7,
        BelowLevelRad: 0.5, StaysTight: 0.1, Gives: 0.01, OnStands: false);

    /// <summary>Each rule with its figure on the edge, where it is silent, and just past it, where it fires.</summary>
    public static TheoryData<VerdictFacts, VerdictRules, Verdict> Edges => new()
    {
        { Calm, VerdictRules.None, Verdict.Go },
        { Calm with { LowestLimitNmm = 600 }, VerdictRules.LinkBelowHigh, Verdict.Care },
        { Calm with { LowestLimitNmm = 599.999 }, VerdictRules.LinkBelowLikely, Verdict.Stop },
        { Calm with { LowestLimitNmm = 900 }, VerdictRules.None, Verdict.Go },
        { Calm with { LowestLimitNmm = 899.999 }, VerdictRules.LinkBelowHigh, Verdict.Care },
        { Calm with { HoldNmm = 600 }, VerdictRules.HoldBelowHigh, Verdict.Care },
        { Calm with { HoldNmm = 599.999 }, VerdictRules.HoldBelowLikely, Verdict.Stop },
        { Calm with { HoldNmm = 900 }, VerdictRules.None, Verdict.Go },
        { Calm with { HoldNmm = 899.999 }, VerdictRules.HoldBelowHigh, Verdict.Care },
        { Calm with { HeldRad = 0.5, ReleaseRad = 0.5 }, VerdictRules.None, Verdict.Go },
        { Calm with { HeldRad = 0.499, ReleaseRad = 0.4 }, VerdictRules.SlidesWhileHeld, Verdict.Stop },
        { Calm with { ReleaseRad = 0.499 }, VerdictRules.SlidesAtRelease, Verdict.Care },
        { Calm with { OnStands = true }, VerdictRules.OnStands, Verdict.Stop },
        { Calm with { Gives = 0.05 }, VerdictRules.None, Verdict.Go },
        { Calm with { Gives = 0.0501 }, VerdictRules.MayGive, Verdict.Care },
        { Calm with { StaysTight = 0.50 }, VerdictRules.None, Verdict.Go },
        { Calm with { StaysTight = 0.5001 }, VerdictRules.MayStayStaysTight, Verdict.Care },
        {
            new VerdictFacts(1, 2, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, 0.5, 0, 0, false),
            VerdictRules.None, Verdict.Go
        },
    };

    [Theory]
    [MemberData(nameof(Edges))]
    public void A_rule_fires_past_its_edge_and_not_on_it(VerdictFacts facts, VerdictRules rules, Verdict verdict)
    {
        Assert.Equal(rules, VerdictOf.Fired(facts));
        Assert.Equal(verdict, VerdictOf.From(VerdictOf.Fired(facts)));
    }

    [Property]
    public void No_figure_that_worsens_makes_the_verdict_better(Places places, Sized which, Sized by)
    {
        VerdictFacts facts = Any(places);
        double k = by.Even(0, 1);
        VerdictFacts worse = ((int)(which.Share * 8)) switch
        {
            0 => facts with { LowestLimitNmm = k * facts.LowestLimitNmm },
            1 => facts with { HoldNmm = k * facts.HoldNmm },
            2 => facts with { HeldRad = k * facts.HeldRad, ReleaseRad = Math.Min(facts.ReleaseRad, k * facts.HeldRad) },
            3 => facts with { ReleaseRad = k * facts.ReleaseRad },
            4 => facts with { BelowLevelRad = facts.BelowLevelRad + k },
            5 => facts with { StaysTight = facts.StaysTight + k },
            6 => facts with { Gives = facts.Gives + k },
            _ => facts with { OnStands = true },
        };
        Assert.True(VerdictOf.From(VerdictOf.Fired(worse)) >= VerdictOf.From(VerdictOf.Fired(facts)));
    }

    [Fact]
    public void Any_stop_outweighs_every_care()
    {
        const VerdictRules Cares = VerdictRules.LinkBelowHigh | VerdictRules.HoldBelowHigh | VerdictRules.SlidesAtRelease
            | VerdictRules.MayGive | VerdictRules.MayStayStaysTight;
        Assert.Equal(Verdict.Care, VerdictOf.From(Cares));
        foreach (VerdictRules stop in (VerdictRules[])
            [VerdictRules.LinkBelowLikely, VerdictRules.HoldBelowLikely, VerdictRules.SlidesWhileHeld, VerdictRules.OnStands])
        {
            Assert.Equal(Verdict.Stop, VerdictOf.From(stop));
            Assert.Equal(Verdict.Stop, VerdictOf.From(stop | Cares));
        }
    }

    private static VerdictFacts Any(Places places)
    {
        Func<Sized> next = places.Reader();
        double likely = next().Log(10, 1000);
        double held = next().Even(-0.5, 1.2);
        return new VerdictFacts(
            likely, likely * next().Log(1, 3), likely * next().Log(0.3, 5), likely * next().Log(0.3, 5),
            held, held - next().Even(0, 0.5), next().Even(0, 1), next().Even(0, 1), next().Even(0, 0.2), next().Upper(0.2));
    }
}
