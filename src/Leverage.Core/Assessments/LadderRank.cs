using Leverage.Probability;
using Leverage.Requests;
using MathNet.Numerics.Distributions;

namespace Leverage.Assessments;

/// <summary>Which of two set-ups to take first.</summary>
public static class LadderRank
{
    /// <summary>Chances this near count as alike, and less is no gain (judgement).</summary>
    public const double LeastGain = 0.05;

    /// <summary>A set-up that comes less often than this never outranks one that comes more often (judgement).</summary>
    public const double LeastWorth = 0.20;

    /// <summary>Chance from which no bigger drive is fetched, and no move without a figure is worth reading (judgement).</summary>
    internal const double Enough = 0.90;

    /// <summary>A longer lever may add this much to what breaks, as a share of what it adds to what comes loose (judgement).</summary>
    public const double MostHarm = 0.25;

    /// <summary>Of set-ups with a chance each the one to take: of those within five points of the likeliest, the fewest pieces, no tube or the shortest, the shortest lever.</summary>
    /// <typeparam name="T">What is ranked.</typeparam>
    /// <typeparam name="TSize">What it is ranked by among alike.</typeparam>
    /// <param name="candidates">The candidates, at least one.</param>
    /// <param name="chance">Chance that it comes loose.</param>
    /// <param name="size">How much there is to put together.</param>
    /// <returns>The first.</returns>
    public static T First<T, TSize>(IReadOnlyCollection<T> candidates, Func<T, double> chance, Func<T, TSize> size)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        double best = candidates.Max(chance);
        double least = Math.Max(best - LeastGain, best >= LeastWorth ? LeastWorth : 0);
        return candidates.Where(one => chance(one) >= least).MinBy(size)!;
    }

    /// <summary>Chance that a set-up reaches what the nut takes, if nothing broke: the ratio of two lognormals.</summary>
    internal static double Reaches(NutFigures nut, LooseningRequest request)
    {
        Hands hands = LooseningDefaults.Stand(request, []);
        HandFigures hand = HandFigures.Of(hands);
        if (LeverDefaults.ToolMm(request) is not { } tool || tool <= hands.Stance.GripOffsetMm)
        {
            return 0;
        }

        double nutSigma = LogNormalSpread.SigmaFromP10P90(nut.LowNmm, nut.HighNmm);
        double over = Math.Log(hand.Quantile(0.5) * (tool - hands.Stance.GripOffsetMm) / nut.LikelyNmm);
        return Normal.CDF(0, 1, over / Math.Sqrt(nutSigma * nutSigma + hand.Force.Sigma * hand.Force.Sigma));
    }
}
