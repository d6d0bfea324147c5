using System.Globalization;
using Leverage.Outcomes;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Outcomes;

/// <summary>Two hundred drawn set-ups, each worked out by another engine (tests/Engines/drawn.py), against the integral and against the plain draws.</summary>
public sealed class DrawnSetupsTests(ITestOutputHelper output)
{
    private const int Draws = 20_000;

    /// <summary>0.05 percentage points, as promised of the share that slides as it turns; all that happens first is held twice as close, as far as the other engine's sums reach.</summary>
    private const double Within = 5e-4;

    private static readonly Table Rows = TableReader.Read(
        "drawn-set-ups.csv", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Outcomes", "drawn-set-ups.csv")));

    [Fact]
    public void The_integral_gives_every_chance_the_other_engine_gives()
    {
        Assert.Equal(200, Rows.Rows.Count);
        double worst = 0;
        foreach (var (id, setup, expected) in SetUps())
        {
            double[] found = Of(setup.Chances());
            for (int i = 0; i < expected.Length; i++)
            {
                double apart = Math.Abs(found[i] - expected[i]) * (i == expected.Length - 1 ? 1 : 2);
                worst = Math.Max(worst, apart);
                Assert.True(
                    apart < Within,
                    string.Create(CultureInfo.InvariantCulture, $"{id}, chance {i}: {found[i]:F6}, the other engine {expected[i]:F6}"));
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"worst {worst / Within:P0} of what is allowed"));
    }

    [Fact]
    public void The_plain_draws_differ_from_the_other_engine_by_no_more_than_chance()
    {
        var squares = new List<double>();
        int seed = 1;
        foreach (var (id, setup, expected) in SetUps())
        {
            double[] drawn = Of(setup.Drawn(Draws, seed++));
            for (int i = 0; i < expected.Length; i++)
            {
                double cases = i == expected.Length - 1 ? expected[0] * Draws : Draws;
                if (Math.Min(expected[i], 1 - expected[i]) * cases < 20)
                {
                    continue;
                }

                double score = (drawn[i] - expected[i]) / Math.Sqrt(expected[i] * (1 - expected[i]) / cases);
                squares.Add(score * score);
                Assert.True(Math.Abs(score) < 4.5, string.Create(CultureInfo.InvariantCulture, $"{id}, chance {i}: {score:F1} errors"));
            }
        }

        Assert.InRange(squares.Average(), 0.85, 1.15);
    }

    private static IEnumerable<(string Id, ChanceSetup Setup, double[] Expected)> SetUps()
    {
        var reader = new CheckReader();
        foreach (TableRow row in Rows.Rows)
        {
            yield return (
                row.Key,
                ChanceInputs.Setup(reader.Read(row).Inputs),
                [row.Number("expected"), .. Enum.GetNames<Other>().Select(row.Number)]);
        }
    }

    private static double[] Of(OutcomeShares shares) => [.. RandomPull.Ends(shares), shares.SlidesAsItTurns];

    /// <summary>Columns beside the chance that it comes loose, in the order of <see cref="Of"/>.</summary>
    private enum Other
    {
        StaysTight,
        ToolGives,
        StudTwistsOff,
        CornersRound,
        SlidesOff,
        WheelTurns,
        SlidesAsItTurns,
    }
}
