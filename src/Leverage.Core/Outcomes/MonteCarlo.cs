using Leverage.Probability;
using Leverage.BreakLoose;

namespace Leverage.Outcomes;

/// <summary>Plain Monte Carlo over the same model: the cross-check of <see cref="CompetingRisks"/>.</summary>
public static class MonteCarlo
{
    /// <summary>Most samples taken in one run.</summary>
    public const int MostSamples = 1_000_000_000;

    /// <summary>2³² over the golden ratio: in such steps the preload lost goes through its range evenly, in no step with anything else.</summary>
    private const uint GoldenStep = 0x9E3779B9;

    /// <summary>The three chances by drawing, and each link's share of the third.</summary>
    /// <param name="nut">Draws the torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="links">Torque each link stands.</param>
    /// <param name="samples">How many draws, 1 to a thousand million.</param>
    /// <param name="seed">Seed: the same seed gives the same figures.</param>
    /// <param name="gives">Filled with the chance that each link gives first; as long as <paramref name="links"/>.</param>
    /// <returns>Chances that it comes undone and that it stays stuck, each 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No samples, or too many.</exception>
    public static (double ComesLoose, double StaysTight) Split(
        BreakLooseSampler nut, Strength hand, ReadOnlySpan<Strength> links, int samples, ulong seed, Span<double> gives)
    {
        ArgumentNullException.ThrowIfNull(nut);
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(samples, MostSamples);
        var minimum = new LinkMinimum(links);
        gives.Clear();
        var (handMedian, handSigma, handCap) = (Math.Log(hand.MedianNmm), hand.Sigma, Math.Log(hand.CapNmm));
        ulong state = SplitMix.Bits(seed);
        uint lost = (uint)state;
        int turned = 0;
        int given = 0;
        for (int i = 0; i < samples; i++)
        {
            double torque = nut.Draw(SplitMix.Bits(state += SplitMix.Step), lost += GoldenStep);
            ulong more = SplitMix.Bits(state += SplitMix.Step);
            double reached = Math.Min(handCap, handMedian + handSigma * NormalTable.Deviate.At((uint)more));
            double weakest = minimum.Draw((uint)(more >> 32));
            if (weakest <= Math.Min(torque, reached))
            {
                gives[minimum.Which(weakest, (SplitMix.Bits(state += SplitMix.Step) >> 32) * SplitMix.Part)]++;
                given++;
            }
            else
            {
                turned += torque <= reached ? 1 : 0;
            }
        }

        for (int i = 0; i < gives.Length; i++)
        {
            gives[i] /= samples;
        }

        return ((double)turned / samples, (double)(samples - turned - given) / samples);
    }
}
