using Leverage.Loosening;

namespace Leverage.Outcomes;

/// <summary>Plain Monte Carlo over the same model: the cross-check of <see cref="CompetingRisks"/>.</summary>
public static class MonteCarlo
{
    /// <summary>Most samples taken in one run.</summary>
    public const int MostSamples = 1_000_000_000;

    /// <summary>The three chances by drawing, and each link's share of the third.</summary>
    /// <param name="nut">Draws the torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="links">Torque each link stands.</param>
    /// <param name="samples">How many draws, 1 to a thousand million.</param>
    /// <param name="seed">Seed: the same seed gives the same figures.</param>
    /// <param name="gives">Filled with the chance that each link gives first; as long as <paramref name="links"/>.</param>
    /// <returns>Chances that it comes undone and that it stays stuck, each 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No samples, or too many.</exception>
    public static (double Undone, double Stuck) Split(
        BreakLooseSampler nut, Strength hand, ReadOnlySpan<Strength> links, int samples, ulong seed, Span<double> gives)
    {
        ArgumentNullException.ThrowIfNull(nut);
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(samples, MostSamples);
        var minimum = new LinkMinimum(links);
        gives.Clear();
        var random = new Xoshiro(seed);
        var (handMedian, handSigma, handCap) = (Math.Log(hand.MedianNmm), hand.Sigma, Math.Log(hand.CapNmm));
        int undone = 0;
        int stuck = 0;
        for (int i = 0; i < samples; i++)
        {
            double torque = nut.Draw(ref random);
            ulong bits = random.Next();
            double reached = Math.Min(handCap, handMedian + handSigma * NormalTable.At((uint)(bits >> 32)));
            double strong = (uint)bits * (1.0 / (1UL << 32));
            bool turns = torque <= reached;
            if (strong >= minimum.Survival(turns ? torque : reached))
            {
                gives[minimum.Which(strong, random.NextDouble())]++;
            }
            else if (turns)
            {
                undone++;
            }
            else
            {
                stuck++;
            }
        }

        for (int i = 0; i < gives.Length; i++)
        {
            gives[i] /= samples;
        }

        return ((double)undone / samples, (double)stuck / samples);
    }
}
