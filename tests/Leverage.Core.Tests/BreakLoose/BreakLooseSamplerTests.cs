using Leverage.BreakLoose;
using MathNet.Numerics.Statistics;

namespace Leverage.Tests.BreakLoose;

/// <summary>Drawn nuts against the spread they are drawn from.</summary>
public static class BreakLooseSamplerTests
{
    public static TheoryData<string, double, double> Kinds => new()
    {
        { "used", 0, 0 }, { "rusted", 0.3, 0 }, { "locked-high", 0, 0 }, { "used", 0, 130e3 }, { "salted", 0.4, 160e3 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public static void Quantiles_of_many_draws_are_those_of_the_spread(string condition, double sigma, double heldNmm)
    {
        Fastener nut = Nuts.Of(condition, 100, "M14x1.5", 0.12, "8.8") with { BookTorqueSigma = sigma };
        var sampler = new BreakLooseSampler(nut, heldNmm);
        var random = new Random(7);
        double[] drawn = [.. Enumerable.Range(0, 100_000).Select(_ => sampler.Draw(random).TorqueNmm)];
        BreakLooseTorque spread = BreakLooseSpread.Torque(nut);
        spread = heldNmm > 0 ? spread.HavingHeld(heldNmm) : spread;
        foreach (double share in new[] { 0.1, 0.5, 0.9 })
        {
            Near.Equal(spread.Quantile(share), drawn.Quantile(share), 0.008);
        }
    }

    [Fact]
    public static void Preload_lost_is_even_from_nothing_to_a_tenth_and_slackens_the_shank()
    {
        Fastener nut = Nuts.Of("used", 100, "M14x1.5", 0.14, "8.8");
        var (random, sampler) = (new Random(3), new BreakLooseSampler(nut));
        double whole = BreakLooseSpread.Joint(nut).LooseningNmm;
        double[] left = [.. Enumerable.Range(0, 20_000).Select(_ => sampler.Draw(random).Shank.LooseningNmm / whole)];
        Assert.InRange(left.Min(), 0.9, 0.9005);
        Assert.InRange(left.Max(), 0.9995, 1);
        Assert.Equal(0.95, left.Mean(), 1e-3);
        Assert.Equal(0.1 / Math.Sqrt(12), left.StandardDeviation(), 5e-4);
    }
}
