using System.Globalization;
using Leverage.Outcomes;

namespace Leverage.Tests.Outcomes;

/// <summary>The integral against the plain drawing of every input, on two hundred set-ups.</summary>
public sealed class OutcomesAgreeTests(ITestOutputHelper output)
{
    private const int SetUps = 200;
    private const int Draws = 40_000;

    [Fact]
    public void On_two_hundred_set_ups_integral_and_draws_differ_by_no_more_than_chance()
    {
        var z = new List<double>();
        double worst = 0;
        for (int seed = 1; seed <= SetUps; seed++)
        {
            RandomPull pull = RandomPull.Of(seed);
            var (exact, each) = pull.Integral();
            var (drawn, eachDrawn) = pull.Drawn(Draws, 1000 + seed);
            double[] wanted = [.. RandomPull.Ends(exact), .. each];
            double[] got = [.. RandomPull.Ends(drawn), .. eachDrawn];
            Compare(wanted, got, Draws, seed);
            int loose = (int)(exact.ComesLoose * Draws);
            if (pull.Tube is not null && loose > 100)
            {
                Compare([exact.SlidesAsItTurns], [drawn.SlidesAsItTurns], loose, seed);
            }
        }

        // Standard scores: none past 4.5 of a few thousand, and as wide on the whole as they should be.
        double meanSquare = z.Average(one => one * one);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{z.Count} scores, worst {worst:F2}, mean square {meanSquare:F3}"));
        Assert.InRange(meanSquare, 0.85, 1.15);

        void Compare(double[] wanted, double[] got, int cases, int seed)
        {
            for (int i = 0; i < wanted.Length; i++)
            {
                double expected = wanted[i] * cases;
                if (expected < 20 || expected > cases - 20)
                {
                    Assert.InRange(got[i] * cases, expected - 30, expected + 30);
                    continue;
                }

                double score = (got[i] - wanted[i]) / Math.Sqrt(wanted[i] * (1 - wanted[i]) / cases);
                z.Add(score);
                worst = Math.Max(worst, Math.Abs(score));
                Assert.True(
                    Math.Abs(score) < 4.5,
                    string.Create(CultureInfo.InvariantCulture, $"set-up {seed}, end {i}: {wanted[i]:F5} drawn {got[i]:F5}, {score:F1} errors"));
            }
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_same_seed_gives_the_same_figures_and_another_one_others(int seed)
    {
        RandomPull pull = RandomPull.Of(seed);
        Assert.Equal(pull.Drawn(10_000, 5).Shares, pull.Drawn(10_000, 5).Shares);
        Assert.NotEqual(pull.Drawn(10_000, 5).Shares, pull.Drawn(10_000, 6).Shares);
    }
}
