using Leverage.BreakLoose;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>Plain Monte Carlo over the same model: the cross-check of <see cref="CompetingRisks"/>. Every input of every case is drawn on its own.</summary>
public static class MonteCarlo
{
    /// <summary>Most samples taken in one run.</summary>
    public const int MostSamples = 10_000_000;

    /// <summary>The chances of what happens first, by drawing, and each risk's own.</summary>
    /// <param name="nut">Draws the torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="risks">What else can happen.</param>
    /// <param name="tube">A tube that may slide; null for none.</param>
    /// <param name="samples">How many draws, 1 to ten million.</param>
    /// <param name="seed">Seed: the same seed gives the same figures.</param>
    /// <param name="each">Filled with the chance of each risk; as long as <paramref name="risks"/>.</param>
    /// <returns>The chances, which sum to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No samples, or too many.</exception>
    public static OutcomeShares Split(
        BreakLooseSampler nut, Strength hand, ReadOnlySpan<Risk> risks, Sliding? tube, int samples, int seed, Span<double> each)
    {
        ArgumentNullException.ThrowIfNull(nut);
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(samples, MostSamples);
        each.Clear();
        var random = new Random(seed);
        var (loose, tight, slid, slidTurning) = (0, 0, 0, 0);
        for (int i = 0; i < samples; i++)
        {
            double friction = tube?.Friction.Draw(random) ?? double.NaN;
            if (tube is not null && friction < tube.LeastToStay)
            {
                slid++;
                continue;
            }

            var (torque, shank) = nut.Draw(random);
            double reached = Math.Min(hand.CapNmm, Draw(random, hand.MedianNmm, hand.Sigma));
            var (weakest, which) = Weakest(random, risks, shank);
            if (which is { } gives && weakest <= Math.Min(torque, reached))
            {
                each[gives]++;
            }
            else if (torque <= reached)
            {
                loose++;
                slidTurning += tube is { LeastAsItTurns: { } least } && friction < least(torque) ? 1 : 0;
            }
            else
            {
                tight++;
            }
        }

        for (int i = 0; i < each.Length; i++)
        {
            each[i] /= samples;
        }

        return OutcomeShares.Of(
            (double)loose / samples, (double)tight / samples, (double)slid / samples, loose > 0 ? (double)slidTurning / loose : 0, risks, each);
    }

    private static (double TorqueNmm, int? Which) Weakest(Random random, ReadOnlySpan<Risk> risks, ShankState shank)
    {
        (double weakest, int? which) = (double.PositiveInfinity, null);
        for (int i = 0; i < risks.Length; i++)
        {
            double median = risks[i].MedianAt is { } at ? at(random.NextDouble()) : risks[i].Strength.MedianNmm;
            double drawn = Draw(random, Math.Max(Risk.LeastNmm, median), risks[i].Strength.Sigma);
            double stands = risks[i].Kind == RiskKind.StudTwistsOff ? shank.LimitAtNut(drawn) : drawn;
            (weakest, which) = stands < weakest ? (stands, i) : (weakest, which);
        }

        return (weakest, which);
    }

    private static double Draw(Random random, double median, double sigma) => LogNormal.Sample(random, Math.Log(median), sigma);
}
