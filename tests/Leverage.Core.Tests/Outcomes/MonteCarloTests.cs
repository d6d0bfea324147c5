using Leverage.Probability;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Tests.BreakLoose;

namespace Leverage.Tests.Outcomes;

/// <summary>Counting and limits of the draws; that they agree with the integral is <see cref="OutcomesAgreeTests"/>' part.</summary>
public static class MonteCarloTests
{
    private static readonly BreakLooseSampler Nut = BreakLooseSpread.Sampler(Nuts.Of("used", 100, "M16"));
    private static readonly Strength Giant = new(1e12, 0.1);
    private static readonly Strength Dwarf = new(1e-3, 0.1);

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public static void What_is_certain_comes_in_every_draw(int samples)
    {
        double[] gives = new double[2];
        Assert.Equal((1, 0), MonteCarlo.Split(Nut, Giant, [Giant, Giant], samples, 1, gives));
        Assert.Equal((0, 1), MonteCarlo.Split(Nut, Dwarf, [Giant, Giant], samples, 1, gives));
        Assert.Equal([0, 0], gives);
        Assert.Equal((0, 0), MonteCarlo.Split(Nut, Giant, [Giant, Dwarf], samples, 1, gives));
        Assert.Equal([0, 1], gives);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1_000_000_001)]
    public static void One_draw_at_least_and_a_thousand_million_at_most(int samples) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.Split(Nut, Giant, [], samples, 1, []));
}
