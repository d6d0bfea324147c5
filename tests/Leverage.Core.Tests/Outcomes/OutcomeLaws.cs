using Leverage.Probability;
using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Tests.BreakLoose;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Leverage.Tests.Outcomes;

[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 60)]
public sealed class OutcomeLaws
{
    [Property]
    public void More_reach_never_leaves_more_stuck_nor_less_undone_where_nothing_else_moves(Sized seed, Sized more)
    {
        RandomRace race = Race(seed);
        double k = more.Log(1.001, 3);
        var longer = race with { Hand = race.Hand with { MedianNmm = k * race.Hand.MedianNmm, CapNmm = k * race.Hand.CapNmm } };
        var (undone, stuck, gives) = Split(race);
        var (undoneLonger, stuckLonger, givesLonger) = Split(longer);
        Assert.True(stuckLonger <= stuck + 1e-9);
        Assert.True(undoneLonger >= undone - 1e-9);
        Assert.True(givesLonger >= gives - 1e-9);
    }

    [Property]
    public void A_stronger_link_gives_less_often_and_nothing_else_less(Sized seed, Sized which, Sized more)
    {
        RandomRace race = Race(seed);
        if (race.Links.Length == 0)
        {
            return;
        }

        int i = which.Of(Enumerable.Range(0, race.Links.Length).ToArray());
        double k = more.Log(1.001, 3);
        Strength[] links = [.. race.Links];
        links[i] = links[i] with { MedianNmm = k * links[i].MedianNmm };
        var (undone, stuck, gives) = Split(race);
        var stronger = Split(race with { Links = links });
        Assert.True(stronger.ComesLoose >= undone - 1e-9);
        Assert.True(stronger.StaysTight >= stuck - 1e-9);
        Assert.True(stronger.Gives <= gives + 1e-9);
    }

    [Property]
    public void A_tighter_nut_comes_undone_less_often_and_leaves_more_of_everything_else(Sized seed, Sized more)
    {
        RandomRace race = Race(seed);
        Torque more1 = race.Fastener.Prevailing + Torque.FromNewtonMeters(more.Log(0.1, 300));
        var (undone, stuck, gives) = Split(race);
        var tighter = Split(race with { Fastener = race.Fastener with { Prevailing = more1 } });
        Assert.True(tighter.ComesLoose <= undone + 1e-9);
        Assert.True(tighter.StaysTight >= stuck - 1e-9);
        Assert.True(tighter.Gives >= gives - 1e-9);
    }

    [Property]
    public void Every_torque_scaled_alike_leaves_the_chances_as_they_are(Sized seed, Sized scale)
    {
        RandomRace race = Race(seed) with { Fastener = Nuts.Of("used", 100, "M16") };
        double k = scale.Log(0.01, 100);
        Strength Scaled(Strength strength) => strength with { MedianNmm = k * strength.MedianNmm, CapNmm = k * strength.CapNmm };
        var one = Split(race);
        var other = Split(new RandomRace(
            Nuts.Of("used", 100 * k, "M16"), Scaled(race.Hand), [.. race.Links.Select(Scaled)]));
        Assert.Equal(one.ComesLoose, other.ComesLoose, 1e-9);
        Assert.Equal(one.StaysTight, other.StaysTight, 1e-9);
    }

    [Property]
    public void A_nut_held_by_its_locknut_alone_turns_at_that_torque_or_not_at_all(Sized seed, Sized locknut)
    {
        // Then undone is the chance that hand and links all reach it.
        RandomRace race = Race(seed);
        double at = race.Hand.MedianNmm * locknut.Log(0.3, 2);
        Fastener nut = Nuts.Of("rusted", 1e-6 * at / 1000, null) with { Prevailing = Torque.FromNewtonMillimeters(at) };
        double expected = at < race.Hand.CapNmm ? Holds(race.Hand, at) : 0;
        expected = race.Links.Aggregate(expected, (product, link) => product * Holds(link, at));
        Assert.Equal(expected, Split(race with { Fastener = nut }).ComesLoose, 2e-4);
    }

    [Property]
    public void Links_that_never_give_and_a_hand_that_never_stops_change_nothing(Sized seed)
    {
        RandomRace race = Race(seed);
        var plain = Split(race);
        var idle = Split(race with { Links = [.. race.Links, new Strength(1e12, 0.08)] });
        Assert.Equal(plain.ComesLoose, idle.ComesLoose, 1e-9);
        Assert.Equal(plain.StaysTight, idle.StaysTight, 1e-9);
        Assert.Equal(1, Split(race with { Hand = new Strength(1e12, 0.1), Links = [] }).ComesLoose, 1e-9);
    }

    private static RandomRace Race(Sized seed) => RandomRace.Of((int)(seed.Share * 1e6));

    private static (double ComesLoose, double StaysTight, double Gives) Split(RandomRace race)
    {
        double[] gives = new double[race.Links.Length];
        var (undone, stuck) = CompetingRisks.Split(BreakLooseSpread.Torque(race.Fastener), race.Hand, race.Links, gives);
        return (undone, stuck, gives.Sum());
    }

    private static double Holds(Strength strength, double torqueNmm) =>
        Normal.CDF(0, 1, -Math.Log(torqueNmm / strength.MedianNmm) / strength.Sigma);
}
