using Leverage.BreakLoose;

namespace Leverage.Tests.Outcomes;

/// <summary>The model drawn in the plainest way: every input of every case, no table, no quadrature, no shared code.</summary>
internal static class NaiveDraws
{
    /// <summary>Shares undone, stuck, and given by each link.</summary>
    internal static double[] Shares(RandomRace race, int samples, int seed)
    {
        var random = new Random(seed);
        double extra = race.ExtraNmm();
        Growth growth = race.Growth();
        double book = race.Fastener.BookTorque.NewtonMillimeters;
        double sigma = Math.Log(1.4) / 1.2815515655446004;
        double[] ends = new double[2 + race.Links.Length];
        for (int i = 0; i < samples; i++)
        {
            double friction = Math.Min(2, race.Fastener.Friction.Likely * Math.Exp(sigma * Normal(random)));
            double lost = 0.1 * random.NextDouble();
            double scale = race.Fastener.Condition.Basis == GrowthBasis.Book
                ? book
                : book * RandomRace.Share(race.Fastener.Thread, race.Fastener.Thread is null ? 0.14 : friction) * (1 - lost);
            double nut = RandomRace.WithExtra(scale * growth.Median * Math.Exp(growth.Sigma * Normal(random)), extra);
            ends[First(race, nut, random)]++;
        }

        return [.. ends.Select(count => count / samples)];
    }

    /// <summary>What ends the pull: 0 the nut turns, 1 the hand has no more, 2 and up a link gives.</summary>
    private static int First(RandomRace race, double nut, Random random)
    {
        double hand = Math.Min(race.Hand.CapNmm, race.Hand.MedianNmm * Math.Exp(race.Hand.Sigma * Normal(random)));
        var (first, least) = nut <= hand ? (0, nut) : (1, hand);
        for (int i = 0; i < race.Links.Length; i++)
        {
            double link = race.Links[i].MedianNmm * Math.Exp(race.Links[i].Sigma * Normal(random));
            (first, least) = link < least ? (2 + i, link) : (first, least);
        }

        return first;
    }

    /// <summary>A standard normal by Box and Muller.</summary>
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
