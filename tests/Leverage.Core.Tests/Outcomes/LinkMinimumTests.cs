using Leverage.Probability;
using Leverage.Outcomes;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

/// <summary>The tables Monte Carlo draws the weakest link from, against its survival and hazards worked out directly.</summary>
public static class LinkMinimumTests
{
    private static readonly Strength[] Links = [new(500e3, 0.08), new(560e3, 0.12), new(470e3, 0.2)];

    [Fact]
    public static void The_share_of_draws_above_a_torque_is_the_survival_of_all_links()
    {
        var minimum = new LinkMinimum(Links);
        for (uint i = 1; i < 4096; i++)
        {
            // Bits go through the strengths from the weakest to the strongest.
            Assert.Equal(1 - i / 4096.0, All(minimum.Draw(i << 20)), 1e-4);
        }
    }

    [Fact]
    public static void Without_links_nothing_gives() => Assert.True(new LinkMinimum([]).Draw(0) > 1000);

    [Fact]
    public static void The_link_that_gives_is_drawn_by_its_share_of_the_hazard()
    {
        var minimum = new LinkMinimum(Links);
        for (uint i = 1; i < 4096; i++)
        {
            double log = minimum.Draw(i << 20);
            double[] hazards = [.. Links.Select(link => Hazard(link, log))];
            double first = hazards[0] / hazards.Sum();
            double second = first + hazards[1] / hazards.Sum();
            Assert.Equal(0, first > 0.01 ? minimum.Which(log, first - 0.01) : 0);
            Assert.Equal(1, second - first > 0.02 ? minimum.Which(log, (first + second) / 2) : 1);
            Assert.Equal(2, second < 0.98 ? minimum.Which(log, second + 0.01) : 2);
        }
    }

    private static double Hazard(Strength link, double log) =>
        Normal.PDF(0, 1, Deviate(link, log)) / link.Sigma / Normal.CDF(0, 1, -Deviate(link, log));

    private static double All(double log) => Links.Aggregate(1.0, (all, link) => all * Normal.CDF(0, 1, -Deviate(link, log)));

    private static double Deviate(Strength link, double log) => (log - Math.Log(link.MedianNmm)) / link.Sigma;
}
