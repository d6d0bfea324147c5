using Leverage.Probability;

namespace Leverage.BreakLoose;

/// <summary>One lognormal of a mixture whose parts scatter alike.</summary>
/// <param name="LogMedian">Logarithm of the median, ln N·mm.</param>
/// <param name="Weight">Its share; the shares of a mixture sum to 1.</param>
internal readonly record struct LogNormalPart(double LogMedian, double Weight);

/// <summary>
/// How like nuts that came or held shift what the next one takes. The log torque of a nut is its part's median plus what is
/// common to the machine plus its own, both normal; nuts that came shift the common part normal–normal, nuts that held
/// weigh it by the chance that a nut stands so much.
/// </summary>
internal static class LikeNuts
{
    /// <summary>Share of the variance of the logarithm that is nut to nut; the rest is common to like nuts of one machine (judgement).</summary>
    internal const double Within = 0.5;

    /// <summary>Nodes over the common part, and how many of its σ they reach either way: weights beyond are below 1e-10.</summary>
    private const int Nodes = 193;
    private const double Reach = 7;

    /// <summary>The next nut's mixture: each part with which of the prior it is from, and σ of each.</summary>
    /// <param name="prior">What was believed before.</param>
    /// <param name="sigma">σ of each of its parts.</param>
    /// <param name="within">Share of the variance that is nut to nut, above 0 to 1.</param>
    /// <param name="cameLog">Log torques at which like nuts came.</param>
    /// <param name="heldLog">Log torques like nuts stood.</param>
    internal static (IReadOnlyList<(int Prior, LogNormalPart Part)> Parts, double Sigma) After(
        IReadOnlyList<LogNormalPart> prior, double sigma, double within, IReadOnlyList<double> cameLog, IReadOnlyList<double> heldLog)
    {
        double own = within * sigma * sigma;
        double common = sigma * sigma - own;
        double total = own + cameLog.Count * common;
        double left = Math.Sqrt(common * own / total);
        var parts = new List<(int Prior, double LogMedian, double LogWeight)>();
        for (int i = 0; i < prior.Count; i++)
        {
            double median = prior[i].LogMedian;
            double gap = cameLog.Sum(log => log - median);
            double square = cameLog.Sum(log => Math.Pow(log - median, 2));

            // ln of the normal density of all that came, by the common part's own: constants alike for all parts left out.
            double evidence = -0.5 * (square / own - common * gap * gap / (own * total));
            double middle = median + common * gap / total;
            double weight = Math.Log(prior[i].Weight) + evidence;
            parts.AddRange(heldLog.Count == 0 ? [(i, middle, weight)]
                : Grid(left).Select(node => (i, middle + node.From, weight + node.LogWeight
                    + heldLog.Sum(log => NormalTail.Log((log - middle - node.From) / Math.Sqrt(own))))));
        }

        double most = parts.Max(part => part.LogWeight);
        double sum = parts.Sum(part => Math.Exp(part.LogWeight - most));
        return (
            [.. parts.Select(part => (part.Prior, new LogNormalPart(part.LogMedian, Math.Exp(part.LogWeight - most) / sum)))
                .Where(part => heldLog.Count == 0 || part.Item2.Weight > 1e-15)],
            heldLog.Count == 0 ? Math.Sqrt(left * left + own) : Math.Sqrt(own));
    }

    /// <summary>Even nodes over a normal of this σ about 0, and the logarithm of the weight of each, up to what is the same for all.</summary>
    private static IEnumerable<(double From, double LogWeight)> Grid(double sigma)
    {
        const double Step = 2 * Reach / (Nodes - 1);
        for (int i = 0; i < Nodes; i++)
        {
            double deviate = i * Step - Reach;
            yield return (sigma * deviate, -deviate * deviate / 2);
        }
    }
}
