using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.BreakLoose;

/// <summary>What ln G is like: a normal, ready to be read often.</summary>
internal sealed class GrowthCurve
{
    /// <summary>Deviates beyond which nothing lies that matters.</summary>
    private const double Reach = 6;

    /// <summary>The lognormal of a condition.</summary>
    /// <param name="growth">Median and σ; a σ below a thousandth is taken as one.</param>
    internal GrowthCurve(Growth growth)
    {
        LogMedian = Math.Log(growth.Median);
        Sigma = Math.Max(growth.Sigma, 1e-3);
        LogLow = LogMedian - Reach * Sigma;
    }

    /// <summary>ln of the median of G.</summary>
    internal double LogMedian { get; }

    /// <summary>σ of ln G.</summary>
    internal double Sigma { get; }

    /// <summary>ln G below which nothing lies that matters.</summary>
    internal double LogLow { get; }

    /// <summary>ln G above which nothing lies that matters, of what lies above a floor; no floor is no number or −∞.</summary>
    internal double HighAbove(double logFloor)
    {
        double from = Math.Max(0, (logFloor - LogMedian) / Sigma);
        return LogMedian + Sigma * Math.Sqrt(Reach * Reach + from * from);
    }

    /// <summary>Chance of more than g, and density over ln g.</summary>
    internal (double Survival, double Density) At(double logGrowth)
    {
        var (above, at) = NormalCurve.At((logGrowth - LogMedian) / Sigma);
        return (above, at / Sigma);
    }

    /// <summary>ln g below which a share, between 0 and 1, lies.</summary>
    internal double LogAt(double share) => Normal.InvCDF(LogMedian, Sigma, share);
}
