using Leverage.Probability;
using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Tests.BreakLoose;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

public sealed class OutcomesAgreeTests
{
    private const int Draws = 60_000;

    /// <summary>Set-ups in which the nut, and something else, each come first in more than 5 % of cases.</summary>
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 100).Where(seed => Integral(RandomRace.Of(seed))[0] is > 0.05 and < 0.95).Take(10)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plain_drawing_of_every_input_gives_the_same_chances_within_its_error(int seed)
    {
        var race = RandomRace.Of(seed);
        Agree(Integral(race), NaiveDraws.Shares(race, Draws, 1000 + seed), Draws);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_cross_check_gives_the_same_chances_within_its_error(int seed)
    {
        var race = RandomRace.Of(seed);
        double[] gives = new double[race.Links.Length];
        var (undone, stuck) = MonteCarlo.Split(
            BreakLooseSpread.Sampler(race.Fastener), race.Hand, race.Links, 4 * Draws, (ulong)seed, gives);
        Agree(Integral(race), [undone, stuck, .. gives], 4 * Draws);
    }

    /// <summary>Friction and lost preload on fine grids, the log torque in small steps: no Gauss points, no tails cut.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_fine_sum_over_all_inputs_gives_the_same_chances_to_a_twentieth_of_a_percent(int seed)
    {
        var race = RandomRace.Of(seed);
        double[] fine = FineSum(race);
        double[] integral = Integral(race);
        Assert.All(fine.Zip(integral), pair => Assert.Equal(pair.First, pair.Second, 5e-4));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(20)]
    public void A_hand_that_fails_at_the_last_hundredth_heat_leaves_is_judged_as_well(double handNm)
    {
        // The density of the nut jumps there, by a factor of a hundred.
        Fastener hot = Nuts.Of("used", 460, "M24x1.5") with { Heating = new Heating(HeatedPart.Stud, 1000) };
        var race = new RandomRace(hot, new Strength(1000 * handNm, 0.28), []);
        Agree(Integral(race), NaiveDraws.Shares(race, Draws, 3), Draws);
        Assert.All(FineSum(race).Zip(Integral(race)), pair => Assert.Equal(pair.First, pair.Second, 5e-4));
        Assert.Equal(1, Integral(race).Sum(), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_chances_sum_to_one(int seed) => Assert.Equal(1, Integral(RandomRace.Of(seed)).Sum(), 1e-6);

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_same_seed_gives_the_same_figures_and_another_one_others(int seed)
    {
        var race = RandomRace.Of(seed);
        (double, double) Drawn(ulong with) => MonteCarlo.Split(
            BreakLooseSpread.Sampler(race.Fastener), race.Hand, race.Links, 10_000, with, new double[race.Links.Length]);
        Assert.Equal(Drawn(5), Drawn(5));
        Assert.NotEqual(Drawn(5), Drawn(6));
    }

    private static double[] Integral(RandomRace race)
    {
        double[] gives = new double[race.Links.Length];
        var (undone, stuck) = CompetingRisks.Split(BreakLooseSpread.Torque(race.Fastener), race.Hand, race.Links, gives);
        return [undone, stuck, .. gives];
    }

    private static void Agree(double[] exact, double[] drawn, int samples)
    {
        for (int i = 0; i < exact.Length; i++)
        {
            double error = Math.Sqrt(Math.Max(exact[i] * (1 - exact[i]), 1.0 / samples) / samples);
            Assert.True(
                Math.Abs(drawn[i] - exact[i]) < 4 * error,
                string.Create(CultureInfo.InvariantCulture, $"end {i}: {exact[i]} drawn {drawn[i]}, standard error {error}"));
        }
    }

    private static double[] FineSum(RandomRace race)
    {
        const int Steps = 1500;
        var (scales, weights) = Scales(race);
        Growth growth = race.Growth();
        double extra = race.ExtraNmm();
        double Nut(double log)
        {
            double rest = Math.Min(Math.Exp(log) - extra, 100 * Math.Exp(log));
            return rest <= 0 ? 1 : scales.Select((scale, i) =>
                weights[i] * Normal.CDF(0, 1, -Math.Log(rest / (scale * growth.Median)) / growth.Sigma)).Sum();
        }

        double[] ends = new double[2 + race.Links.Length];
        double low = Math.Log(Math.Min(race.Hand.MedianNmm, race.Links.Select(link => link.MedianNmm).DefaultIfEmpty(1e9).Min())) - 3;
        double high = Math.Min(Math.Log(race.Hand.CapNmm), Math.Log(race.Hand.MedianNmm) + 3);
        double before = Nut(low);
        ends[0] = 1 - before;
        for (int i = 0; i < Steps; i++)
        {
            var (from, to) = (low + (high - low) * i / Steps, low + (high - low) * (i + 1) / Steps);
            double after = Nut(to);
            Step(race, (before + after) / 2, before - after, from, to, ends);
            before = after;
        }

        ends[1] += double.IsPositiveInfinity(race.Hand.CapNmm) ? 0 : before * Holds(race, high, -1);
        return ends;
    }

    private static void Step(RandomRace race, double nut, double turning, double from, double to, double[] ends)
    {
        double mid = (from + to) / 2;
        ends[0] += turning * Holds(race, mid, -1);
        ends[1] += nut * (Holds(race.Hand, from) - Holds(race.Hand, to)) * Holds(race, mid, 0);
        for (int i = 0; i < race.Links.Length; i++)
        {
            ends[2 + i] += nut * (Holds(race.Links[i], from) - Holds(race.Links[i], to)) * Holds(race, mid, 1 + i);
        }
    }

    /// <summary>Chance that hand and links hold, without one of them: 0 the hand, 1 the first link.</summary>
    private static double Holds(RandomRace race, double log, int without)
    {
        double product = without == 0 ? 1 : Holds(race.Hand, log);
        for (int i = 0; i < race.Links.Length; i++)
        {
            product *= without == 1 + i ? 1 : Holds(race.Links[i], log);
        }

        return product;
    }

    private static double Holds(Strength strength, double log) =>
        Normal.CDF(0, 1, -(log - Math.Log(strength.MedianNmm)) / strength.Sigma);

    private static (double[] Scales, double[] Weights) Scales(RandomRace race)
    {
        double book = race.Fastener.BookTorque.NewtonMillimeters;
        if (race.Fastener.Condition.Basis == GrowthBasis.Book)
        {
            return ([book], [1]);
        }

        const int Frictions = 31;
        const int Losses = 6;
        double sigma = Math.Log(1.4) / 1.2815515655446004;
        var points = Enumerable.Range(0, Frictions).Select(i => -5 + 10.0 * i / (Frictions - 1)).ToArray();
        double total = points.Sum(z => Math.Exp(-z * z / 2)) * Losses;
        var pairs = points.SelectMany(z => Enumerable.Range(0, Losses).Select(k => (
            Scale: book * (1 - 0.1 * (k + 0.5) / Losses) * RandomRace.Share(
                race.Fastener.Thread, Math.Min(2, race.Fastener.Friction.Likely * Math.Exp(sigma * z))),
            Weight: Math.Exp(-z * z / 2) / total))).ToArray();
        return ([.. pairs.Select(pair => pair.Scale)], [.. pairs.Select(pair => pair.Weight)]);
    }
}
