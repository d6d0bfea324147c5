using Leverage.Probability;

namespace Leverage.BreakLoose;

/// <summary>One lognormal of a mixture.</summary>
/// <param name="LogMedian">Logarithm of the median, ln N·mm.</param>
/// <param name="Sigma">σ of the logarithm, above 0.</param>
/// <param name="Weight">Its share; the shares of a mixture sum to 1.</param>
public readonly record struct LogNormalPart(double LogMedian, double Sigma, double Weight);

/// <summary>
/// How like nuts that came or held shift what the next one takes. The log torque of a nut is its part's median plus what is
/// common to the machine plus its own, both normal; nuts that came shift the common part normal–normal, nuts that held
/// weigh it by the chance that a nut stands so much.
/// </summary>
internal static class LikeNuts
{
    /// <summary>Nodes over the common part, and how many of its σ they reach either way: weights beyond are below 1e-10.</summary>
    private const int Nodes = 193;
    private const double Reach = 7;

    /// <summary>The next nut's mixture.</summary>
    /// <param name="prior">What was believed before.</param>
    /// <param name="within">Share of each part's variance that is nut to nut, above 0 to 1.</param>
    /// <param name="cameLog">Log torques at which like nuts came.</param>
    /// <param name="heldLog">Log torques like nuts stood.</param>
    internal static LogNormalPart[] After(
        IReadOnlyList<LogNormalPart> prior, double within, IReadOnlyList<double> cameLog, IReadOnlyList<double> heldLog)
    {
        if (cameLog.Count + heldLog.Count == 0)
        {
            return [.. prior];
        }

        var parts = new List<(double LogMedian, double Sigma, double LogWeight)>();
        foreach (LogNormalPart part in prior)
        {
            double own = within * part.Sigma * part.Sigma;
            double common = part.Sigma * part.Sigma - own;
            double total = own + cameLog.Count * common;
            double gap = cameLog.Sum(log => log - part.LogMedian);
            double left = common * own / total;
            double square = cameLog.Sum(log => Math.Pow(log - part.LogMedian, 2));

            // ln of the normal density of all that came, by the common part's own: constants alike for all parts left out.
            double evidence = cameLog.Count == 0 ? 0 : -0.5 * (square / own - common * gap * gap / (own * total)
                + (cameLog.Count - 1) * Math.Log(own) + Math.Log(total));
            Add(parts, part.LogMedian + common * gap / total, Math.Sqrt(left), Math.Sqrt(own), Math.Log(part.Weight) + evidence, heldLog);
        }

        double most = parts.Max(part => part.LogWeight);
        double sum = parts.Sum(part => Math.Exp(part.LogWeight - most));
        return [.. parts.Select(part => new LogNormalPart(part.LogMedian, part.Sigma, Math.Exp(part.LogWeight - most) / sum)).Where(part => part.Weight > 1e-15)];
    }

    private static void Add(
        List<(double LogMedian, double Sigma, double LogWeight)> parts,
        double middle, double common, double own, double logWeight, IReadOnlyList<double> heldLog)
    {
        if (heldLog.Count == 0)
        {
            parts.Add((middle, Math.Sqrt(common * common + own * own), logWeight));
            return;
        }

        double step = 2 * Reach / (Nodes - 1);
        for (int i = 0; i < Nodes; i++)
        {
            double deviate = i * step - Reach;
            double place = middle + common * deviate;
            double density = step / Math.Sqrt(2 * Math.PI);
            double weight = logWeight - deviate * deviate / 2 + Math.Log(density);
            foreach (double log in heldLog)
            {
                weight += NormalTail.Log((log - place) / own);
            }

            parts.Add((place, own, weight));
        }
    }
}
