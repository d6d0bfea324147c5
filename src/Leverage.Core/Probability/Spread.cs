namespace Leverage.Probability;

/// <summary>A lognormal quantity of any unit.</summary>
/// <param name="Median">Median, above 0.</param>
/// <param name="Sigma">σ of the natural logarithm, 0 or more.</param>
public readonly record struct Spread(double Median, double Sigma)
{
    /// <summary>The value at a share of cases.</summary>
    /// <param name="share">Share below, between 0 and 1.</param>
    /// <returns>The value, unit of the median.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share) => LogNormalSpread.Quantile(Median, Sigma, share);
}
