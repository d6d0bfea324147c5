using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;

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

    /// <summary>Each case is split in two alike, or has held as much: what follows must not depend on how the same nut is written.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(250e3)]
    public void A_nut_of_twice_as_many_cases_is_the_same_nut(double held)
    {
        (double Weight, double Nmm)[] parts = [(0.3, 300e3), (0.5, 600e3), (0.2, 1500e3)];
        BreakLooseTorque few = Nut(parts);
        BreakLooseTorque many = Nut([.. parts.SelectMany(part => Enumerable.Repeat((part.Weight / 2, part.Nmm), 2))]);
        (string, Risk)[] risks = [("square", new Risk(RiskKind.ToolGives, new Strength(800e3, 0.1)))];
        ByThen[] Of(BreakLooseTorque first, BreakLooseTorque second) =>
            [.. PullSequence.Run([new Pull(first, new Strength(400e3, 0.2), risks), new Pull(second, new Strength(900e3, 0.2), risks)])];
        ByThen alike = Of(few, few)[1];
        Assert.InRange(alike.ComesLoose, 0.5, 0.9);
        Assert.InRange(alike.Breaks, 0.05, 0.4);
        foreach (ByThen other in (ByThen[])[Of(few, many)[1], Of(many, few)[1], Of(many, many)[1]])
        {
            Assert.Equal(alike.ComesLoose, other.ComesLoose, 1e-6);
            Assert.Equal(alike.Breaks, other.Breaks, 1e-6);
        }

        BreakLooseTorque Nut((double Weight, double Nmm)[] cases) =>
            new BreakLooseTorque([.. cases.Select(one => new NutCase(one.Weight, Math.Log(one.Nmm), 0, default))], new GrowthCurve(new Growth(1, 0.15))).HavingHeld(held);
    }

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
