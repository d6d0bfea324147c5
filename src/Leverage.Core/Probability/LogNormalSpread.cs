using MathNet.Numerics.Distributions;

namespace Leverage.Probability;

/// <summary>The lognormal spread used for every scattered input: median and sigma of the logarithm.</summary>
public static class LogNormalSpread
{
    /// <summary>Normal deviate of the 90th percentile, 1.2816 (standard normal table).</summary>
    public const double P90Deviate = 1.2815515655446004;

    /// <summary>Normal deviates from the 5th to the 95th percentile, 2·1.6449 = 3.29.</summary>
    private const double P5ToP95 = 3.2897072539029457;

    /// <summary>Sigma through the 10th and 90th percentile, σ = ln(P90/P10)/2.563.</summary>
    /// <param name="p10">10th percentile, any unit, above 0.</param>
    /// <param name="p90">90th percentile, same unit, P10 or more.</param>
    /// <returns>σ of the natural logarithm.</returns>
    /// <remarks>
    /// Valid for: lognormal quantities.
    /// Source: Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions, chapter 14.
    /// Checked by: shared/checks/spread.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SigmaFromP10P90(double p10, double p90) => LogRatio(p10, p90) / (2 * P90Deviate);

    /// <summary>Sigma through the 5th and 95th percentile, σ = ln(P95/P5)/3.29.</summary>
    /// <param name="p5">5th percentile, any unit, above 0.</param>
    /// <param name="p95">95th percentile, same unit, P5 or more.</param>
    /// <returns>σ of the natural logarithm.</returns>
    /// <remarks>
    /// Valid for: lognormal quantities.
    /// Source: Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions, chapter 14.
    /// Checked by: shared/checks/spread.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SigmaFromP5P95(double p5, double p95) => LogRatio(p5, p95) / P5ToP95;

    /// <summary>Quantile, x = median·exp(σ·z(p)).</summary>
    /// <param name="median">Median, any unit, above 0.</param>
    /// <param name="sigma">σ of the natural logarithm, 0 or more.</param>
    /// <param name="share">p, share below, between 0 and 1.</param>
    /// <returns>x, unit of the median.</returns>
    /// <remarks>
    /// Valid for: lognormal quantities.
    /// Source: Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions, chapter 14.
    /// Checked by: shared/checks/spread.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Quantile(double median, double sigma, double share) =>
        Require.Positive(median, nameof(median)) * Math.Exp(
            Require.NotNegative(sigma, nameof(sigma))
                * Normal.InvCDF(0, 1, Require.Between(share, 1e-300, 1 - 1e-16, nameof(share))));

    private static double LogRatio(double low, double high) =>
        Math.Log(Require.Between(high, Require.Positive(low, nameof(low)), double.MaxValue, nameof(high)) / low);
}
