using Leverage.Outcomes;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

/// <summary>The tables Monte Carlo draws the weakest link from, against its survival and hazards worked out directly.</summary>
public static class LinkMinimumTests
{
    private static readonly Strength[] Links = [new(500e3, 0.08), new(560e3, 0.12), new(470e3, 0.2)];

    [Fact]
    public static void Survival_is_the_product_of_the_links()
    {
        var minimum = new LinkMinimum(Links);
        for (double log = Math.Log(100e3); log < Math.Log(1500e3); log += 0.00731)
        {
            Assert.Equal(All(log), minimum.Survival(log), 2e-5);
        }
    }

    [Fact]
    public static void Without_links_nothing_gives() => Assert.Equal(1, new LinkMinimum([]).Survival(20));

    [Fact]
    public static void The_link_that_gives_is_drawn_by_its_share_of_the_hazard()
    {
        var minimum = new LinkMinimum(Links);
        for (double log = Math.Log(330e3); log < Math.Log(640e3); log += 0.00531)
        {
            double survival = All(log);
            if (survival is < 1e-6 or > 1 - 1e-6)
            {
                continue;
            }

            double[] hazards = [.. Links.Select(link => Hazard(link, log))];
            double first = hazards[0] / hazards.Sum();
            double second = first + hazards[1] / hazards.Sum();
            Assert.Equal(0, minimum.Which(survival, Math.Max(0, first - 0.01)) * (first > 0.01 ? 1 : 0));
            Assert.Equal(1, second - first > 0.03 ? minimum.Which(survival, (first + second) / 2) : 1);
            Assert.Equal(2, second < 0.98 ? minimum.Which(survival, second + 0.01) : 2);
        }
    }

    private static double Hazard(Strength link, double log) =>
        Normal.PDF(0, 1, Deviate(link, log)) / link.Sigma / Normal.CDF(0, 1, -Deviate(link, log));

    private static double All(double log) => Links.Aggregate(1.0, (all, link) => all * Normal.CDF(0, 1, -Deviate(link, log)));

    private static double Deviate(Strength link, double log) => (log - Math.Log(link.MedianNmm)) / link.Sigma;
}
