namespace Leverage.Probability;

/// <summary>A scattered torque: what the hand reaches, or what a link stands.</summary>
/// <param name="MedianNmm">Median, N·mm, above 0.</param>
/// <param name="Sigma">σ of the logarithm, above 0.</param>
/// <param name="CapNmm">A torque it never passes, N·mm; infinite for none.</param>
public readonly record struct Strength(double MedianNmm, double Sigma, double CapNmm = double.PositiveInfinity)
{
    /// <summary>Deviates beyond which a lognormal is taken as certain.</summary>
    internal const double Tail = 7;

    /// <summary>The strength at a share of cases, N·mm, never above the cap.</summary>
    /// <param name="share">Share below, between 0 and 1.</param>
    /// <returns>Torque, N·mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share) => Math.Min(CapNmm, LogNormalSpread.Quantile(MedianNmm, Sigma, share));

    /// <summary>Survival, and density over the log torque, below the cap.</summary>
    internal (double Survival, double Density) At(double logTorque)
    {
        var (survival, density) = NormalCurve.At((logTorque - Math.Log(MedianNmm)) / Sigma);
        return (survival, density / Sigma);
    }
}
