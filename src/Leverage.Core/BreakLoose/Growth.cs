using Leverage.Probability;

namespace Leverage.BreakLoose;

/// <summary>What the published loosening ratio of a condition refers to.</summary>
public enum GrowthBasis
{
    /// <summary>The theoretical loosening torque of the clean joint.</summary>
    Loosening,

    /// <summary>The torque it was tightened to.</summary>
    Book,
}

/// <summary>How much harder a joint is to break loose than when it was made: a lognormal factor G.</summary>
/// <param name="Median">Median of G, above 0.</param>
/// <param name="Sigma">σ of ln G, 0 or more.</param>
public readonly record struct Growth(double Median, double Sigma)
{
    /// <summary>Share of the growth above 1 that is left after a day's soak in penetrant (judgement).</summary>
    public const double SoakedShare = 0.5;

    /// <summary>Growth through its 10th, 50th and 90th percentile.</summary>
    /// <param name="p10">10th percentile, above 0.</param>
    /// <param name="p50">Median, above 0.</param>
    /// <param name="p90">90th percentile, P10 or more.</param>
    /// <returns>The lognormal factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Growth Through(double p10, double p50, double p90) =>
        new(Require.Positive(p50, nameof(p50)), LogNormalSpread.SigmaFromP10P90(p10, p90));

    /// <summary>The factor at a share of cases.</summary>
    /// <param name="share">Share below, between 0 and 1.</param>
    /// <returns>G.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share) => LogNormalSpread.Quantile(Median, Sigma, share);

    /// <summary>
    /// Growth after a day's soak: half of what lies above 1 goes, percentile by percentile, but it never falls below
    /// the growth of a clean joint (judgement; no controlled measurement was found).
    /// </summary>
    /// <param name="clean">Growth of the same joint clean, on the same basis.</param>
    /// <returns>The soaked factor, lognormal through its own percentiles.</returns>
    public Growth Soaked(Growth clean)
    {
        var (low, median, high) = (SoakedAt(0.1, clean), SoakedAt(0.5, clean), SoakedAt(0.9, clean));

        // As wide above the median as below it at least: else the fit would make the easiest case harder than before.
        Growth fit = Through(low, median, Math.Max(high, median * median / low));

        // A clean joint that scatters more than this one would lift the hardest case: a soak never widens the spread.
        return fit with { Sigma = Math.Min(fit.Sigma, Sigma) };
    }

    private double SoakedAt(double share, Growth clean)
    {
        double now = Quantile(share);
        double soaked = now > 1 ? 1 + SoakedShare * (now - 1) : now;
        return Math.Min(now, Math.Max(soaked, clean.Quantile(share)));
    }
}
