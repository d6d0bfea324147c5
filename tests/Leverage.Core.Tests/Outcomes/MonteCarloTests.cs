using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;

namespace Leverage.Tests.Outcomes;

/// <summary>Counting and limits of the draws; that they agree with the integral is <see cref="OutcomesAgreeTests"/>' part.</summary>
public static class MonteCarloTests
{
    private static readonly Fastener Nut = Nuts.Of("used", 100, "M16", 0.14, "8.8");
    private static readonly Strength Giant = new(1e12, 0.1);
    private static readonly Strength Dwarf = new(1e-3, 0.1);
    private static readonly Sliding Slick = new(new SplitLogNormal(0.2, 0.1, 0.1), 2);
    private static readonly Sliding Late = new(new SplitLogNormal(0.2, 0.1, 0.1), 0, _ => 2);

    [Fact]
    public static void What_is_certain_comes_in_every_draw()
    {
        Assert.Equal(1, Drawn(Giant, null).ComesLoose);
        Assert.Equal(1, Drawn(Dwarf, null).StaysTight);
        Assert.Equal(1, Drawn(Giant, null, new Risk(RiskKind.ToolGives, Giant), new Risk(RiskKind.WheelTurns, Dwarf)).WheelTurns);
        Assert.Equal(1, Drawn(Giant, null, new Risk(RiskKind.ToolGives, Giant), new Risk(RiskKind.ToolGives, Dwarf)).ToolGives);
        Assert.Equal(1, Drawn(Giant, null, new Risk(RiskKind.StudTwistsOff, Dwarf)).StudTwistsOff);
        Assert.Equal(1, Drawn(Giant, null, new Risk(RiskKind.CornersRound, Giant, play => 0)).CornersRound);
        Assert.Equal(1, Drawn(Giant, Slick, new Risk(RiskKind.ToolGives, Dwarf)).SlidesOff);
        Assert.Equal(1, Drawn(Giant, Late).SlidesAsItTurns);
        Assert.Equal(0, Drawn(Dwarf, Late).SlidesAsItTurns);
        Assert.Equal(1, Drawn(Giant, Late).ComesLoose);
        Assert.Equal(0, Drawn(Dwarf, Late).SlidesAsItTurns);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10_000_001)]
    public static void One_draw_at_least_and_ten_million_at_most(int samples) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.Split(new BreakLooseSampler(Nut), Giant, [], null, samples, 1, []));

    [Fact]
    public static void One_draw_is_one_case()
    {
        OutcomeShares one = MonteCarlo.Split(new BreakLooseSampler(Nut), Giant, [], Late, 1, 1, []);
        Assert.Equal((1, 1), (one.ComesLoose, one.SlidesAsItTurns));
    }

    private static OutcomeShares Drawn(Strength hand, Sliding? tube, params Risk[] risks)
    {
        double[] each = new double[risks.Length];
        OutcomeShares shares = MonteCarlo.Split(new BreakLooseSampler(Nut), hand, risks, tube, 9, 1, each);
        Assert.Equal(shares.Gives + shares.WheelTurns, each.Sum());
        return shares;
    }
}
