using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 60)]
public sealed class PullSequenceLaws
{
    [Property]
    public void Neither_chance_ever_falls_and_both_together_never_pass_one(Sized seed, Sized harder)
    {
        IReadOnlyList<ByThen> states = PullSequence.Run([.. Rising(seed, harder.Log(1.01, 2))]);
        Assert.All(states.Zip(states.Skip(1)), pair =>
        {
            Assert.True(pair.Second.ComesLoose >= pair.First.ComesLoose);
            Assert.True(pair.Second.Breaks >= pair.First.Breaks);
        });
        Assert.InRange(states[^1].ComesLoose + states[^1].Breaks, 0, 1 + 1e-4);
    }

    [Property]
    public void The_same_pull_again_changes_nothing(Sized seed)
    {
        Pull pull = Of(RandomPull.Of((int)(seed.Share * 1e6)), 1);
        IReadOnlyList<ByThen> states = PullSequence.Run([pull, pull, pull]);
        Assert.Equal(states[0].ComesLoose, states[2].ComesLoose, 1e-9);
        Assert.Equal(states[0].Breaks, states[2].Breaks, 1e-9);
    }

    /// <summary>The first pull can do nothing at all. The second by hand: nut and hand are one normal of their log difference.</summary>
    [Fact]
    public void A_pull_after_one_that_did_nothing_is_the_normal_of_their_log_difference()
    {
        BreakLooseTorque nut = Cases(0, (1, 500e3));
        ByThen then = PullSequence.Run([new Pull(nut, new Strength(1e3, 0.3), []), new Pull(nut, new Strength(600e3, 0.3), [])])[1];
        Assert.Equal(Normal.CDF(0, 1, Math.Log(1.2) / Math.Sqrt(0.3 * 0.3 + 0.15 * 0.15)), then.ComesLoose, 1e-4);
        Assert.Equal(0, then.Breaks, 1e-9);
    }

    /// <summary>A nut so sharp that the hand alone decides: the share of hands that reach it.</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.008)]
    public void A_nut_that_hardly_scatters_is_met_by_the_hand_s_own_spread(double sigma)
    {
        var nut = new BreakLooseTorque([new NutCase(1, Math.Log(500e3), 0, default)], new GrowthCurve(new Growth(1, sigma)));
        ByThen then = PullSequence.Run([new Pull(nut, new Strength(1e3, 0.4), []), new Pull(nut, new Strength(600e3, 0.4), [])])[1];
        Assert.Equal(Normal.CDF(0, 1, Math.Log(1.2) / Math.Sqrt(0.16 + sigma * sigma)), then.ComesLoose, 1e-4);
    }

    [Fact]
    public void A_hand_never_passes_its_cap_at_a_later_pull()
    {
        BreakLooseTorque nut = Cases(0, (1, 500e3));
        ByThen then = PullSequence.Run([new Pull(nut, new Strength(1e3, 0.3), []), new Pull(nut, new Strength(1e9, 0.3, 550e3), [])])[1];
        Assert.Equal(Normal.CDF(0, 1, Math.Log(1.1) / 0.15), then.ComesLoose, 3e-5);
    }

    /// <summary>A tube that comes into play at the second pull slides in three of ten; the same one again does not slide any more.</summary>
    [Fact]
    public void A_tube_slides_once_and_only_where_it_is_on()
    {
        BreakLooseTorque nut = Cases(0, (1, 500e3));
        var friction = new SplitLogNormal(0.2, 0.2, 0.2);
        var tube = new Sliding(friction, 0.2 * Math.Exp(0.2 * Normal.InvCDF(0, 1, 0.3)));
        Pull bare = new(nut, new Strength(1e3, 0.1), []);
        Pull with = new(nut, new Strength(2e3, 0.1), [], tube, "tube");
        Pull strong = with with { Hand = new Strength(1e9, 0.1) };
        IReadOnlyList<ByThen> states = PullSequence.Run([bare, with, strong]);
        Assert.Equal(0, states[0].Breaks, 1e-9);
        Assert.Equal(0.3, states[1].Breaks, 1e-4);
        Assert.Equal(0.3, states[2].Breaks, 1e-4);
        Assert.Equal(0.7, states[2].ComesLoose, 1e-4);
    }

    /// <summary>A nut that never comes, a hand that hardly scatters: what has stood one pull breaks at the next as often as between the two.</summary>
    [Fact]
    public void What_stood_a_pull_is_judged_by_what_it_has_shown()
    {
        BreakLooseTorque nut = Cases(0, (1, 1e9));
        (string, Risk)[] square = [("square", new Risk(RiskKind.ToolGives, new Strength(800e3, 0.2)))];
        (string, Risk)[] stud = [("stud", new Risk(RiskKind.WheelTurns, new Strength(700e3, 0.1)))];
        double Gone(double torque) => Normal.CDF(0, 1, Math.Log(torque / 800e3) / 0.2);
        IReadOnlyList<ByThen> states = PullSequence.Run([
            new Pull(nut, new Strength(500e3, 1e-3), square), new Pull(nut, new Strength(700e3, 1e-3), square),
            new Pull(nut, new Strength(600e3, 1e-3), square), new Pull(nut, new Strength(700e3, 1e-3), [.. square, .. stud])]);
        Assert.Equal([Gone(500e3), Gone(700e3), Gone(700e3), 1 - (1 - Gone(700e3)) * 0.5], states.Select(state => state.Breaks), (a, b) => Math.Abs(a - b) < 2e-4);
        Assert.All(states, state => Assert.Equal(0, state.ComesLoose, 1e-6));
    }

    internal static BreakLooseTorque Cases(double held, params (double Weight, double Nmm)[] cases) => new BreakLooseTorque(
        [.. cases.Select(one => new NutCase(one.Weight, Math.Log(one.Nmm), 0, default))], new GrowthCurve(new Growth(1, 0.15))).HavingHeld(held);

    [Property]
    public void One_pull_is_the_integral(Sized seed)
    {
        RandomPull random = RandomPull.Of((int)(seed.Share * 1e6));
        OutcomeShares shares = random.Integral().Shares;
        ByThen only = PullSequence.Run([Of(random, 1)])[0];
        Assert.Equal(shares.ComesLoose, only.ComesLoose, 1e-12);
        Assert.Equal(RandomPull.Wrong(shares), only.Breaks, 1e-9);
    }

    [Property]
    public void Growing_pulls_with_nothing_that_breaks_end_where_the_last_alone_does(Sized seed, Sized harder)
    {
        Pull[] pulls = [.. Rising(seed, harder.Log(1.01, 2)).Select(pull => pull with { Risks = [], Tube = null, TubeKey = "" })];
        double last = PullSequence.Run([pulls[^1]])[0].ComesLoose;
        Assert.Equal(last, PullSequence.Run(pulls)[^1].ComesLoose, 0.005);
    }

    [Property]
    public void Growing_pulls_on_the_same_things_end_where_the_last_alone_does(Sized seed, Sized harder)
    {
        Pull[] pulls = [.. Rising(seed, harder.Log(1.01, 2))];
        ByThen last = PullSequence.Run([pulls[^1]])[0];
        ByThen all = PullSequence.Run(pulls)[^1];
        Assert.Equal(last.ComesLoose, all.ComesLoose, 0.005);
        Assert.Equal(last.Breaks, all.Breaks, 0.005);
    }

    [Property]
    public void A_nut_that_has_held_a_pull_is_no_easier_at_the_next(Sized seed)
    {
        Pull pull = Of(RandomPull.Of((int)(seed.Share * 1e6)), 1) with { Risks = [], Tube = null };
        double held = pull.Nut.Quantile(0.3);
        Pull after = pull with { Nut = pull.Nut.HavingHeld(held) };
        Assert.True(PullSequence.Run([after])[0].ComesLoose <= PullSequence.Run([pull])[0].ComesLoose + 1e-6);
        Assert.Equal(1, after.Nut.Survival(held), 1e-9);
    }

    /// <summary>Three pulls of the same person, each harder than the one before.</summary>
    private static IEnumerable<Pull> Rising(Sized seed, double harder)
    {
        RandomPull random = RandomPull.Of((int)(seed.Share * 1e6));
        return [Of(random, 1), Of(random, harder), Of(random, harder * harder)];
    }

    private static Pull Of(RandomPull random, double harder) => new(
        BreakLooseSpread.Torque(random.Fastener),
        new Strength(harder * random.Hand.MedianNmm, random.Hand.Sigma, harder * random.Hand.CapNmm),
        [.. random.Risks.Select((risk, i) => (FormattableString.Invariant($"thing {i}"), risk))],
        random.Tube,
        random.Tube is null ? "" : "tube");
}
