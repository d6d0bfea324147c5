using MathNet.Numerics.Distributions;

namespace Leverage.Probability;

/// <summary>A quantity whose logarithm scatters about its median more on one side than on the other, half of it on each.</summary>
/// <param name="Median">Median, any unit, above 0.</param>
/// <param name="SigmaBelow">σ of the logarithm below the median, above 0.</param>
/// <param name="SigmaAbove">σ of the logarithm above the median, above 0.</param>
public readonly record struct SplitLogNormal(double Median, double SigmaBelow, double SigmaAbove)
{
    /// <summary>Normal deviate of the 95th percentile, 1.6449 (standard normal table).</summary>
    public const double P95Deviate = 1.6448536269514722;

    /// <summary>The spread through its 5th, 50th and 95th percentile.</summary>
    /// <param name="p5">5th percentile, above 0.</param>
    /// <param name="p50">Median, above P5.</param>
    /// <param name="p95">95th percentile, above the median.</param>
    /// <returns>The spread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">They do not rise.</exception>
    public static SplitLogNormal Through(double p5, double p50, double p95) => new(
        Require.Positive(p50, nameof(p50)),
        Require.Positive(Math.Log(p50 / Require.Positive(p5, nameof(p5))) / P95Deviate, nameof(p50)),
        Require.Positive(Math.Log(Require.Positive(p95, nameof(p95)) / p50) / P95Deviate, nameof(p95)));

    /// <summary>Chance of less than a value.</summary>
    /// <param name="value">The value, unit of the median.</param>
    /// <returns>0 for nothing or less, 1 for an infinite one.</returns>
    public double Below(double value) => value <= 0
        ? 0
        : Normal.CDF(0, 1, Math.Log(value / Median) / (value < Median ? SigmaBelow : SigmaAbove));

    /// <summary>One value, drawn.</summary>
    /// <param name="random">Where chance comes from.</param>
    internal double Draw(Random random) => At(Normal.Sample(random, 0, 1));

    /// <summary>The value at a normal deviate.</summary>
    internal double At(double deviate) => Median * Math.Exp(deviate * (deviate < 0 ? SigmaBelow : SigmaAbove));
}
