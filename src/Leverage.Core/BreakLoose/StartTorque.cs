using Leverage.Probability;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>Where a start torque comes from.</summary>
public enum StartSource
{
    /// <summary>The person gave it.</summary>
    Given,

    /// <summary>From the size of its thread alone.</summary>
    Thread,

    /// <summary>From rows of the table <c>large-nuts</c>.</summary>
    Table,
}

/// <summary>The torque a fastener was tightened to, as far as anybody knows: a lognormal.</summary>
/// <param name="LowNmm">P10, N·mm.</param>
/// <param name="LikelyNmm">P50, N·mm.</param>
/// <param name="HighNmm">P90, N·mm.</param>
/// <param name="Sigma">σ of its logarithm; 0 where it was given.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Rows">The table's rows it was pooled from; none unless from the table.</param>
/// <param name="Thread">The thread it was worked out for; null unless from the thread.</param>
public sealed record StartTorque(
    double LowNmm, double LikelyNmm, double HighNmm, double Sigma, StartSource From, IReadOnlyList<LargeNut> Rows, ScrewThread? Thread)
{
    /// <summary>Least σ of a torque read off a table: a figure for such nuts is not this nut's own, P10 to P90 0.83 to 1.21 of it (judgement).</summary>
    public const double LeastSigma = 0.15;

    /// <summary>The torque as a lognormal, N·mm.</summary>
    public Spread Spread => new(LikelyNmm, Sigma);

    /// <summary>A torque somebody gave.</summary>
    /// <param name="torqueNmm">Torque, N·mm, above 0.</param>
    /// <returns>The torque, without scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public static StartTorque Given(double torqueNmm) =>
        Of(new Spread(Require.Positive(torqueNmm, nameof(torqueNmm)), 0), StartSource.Given, [], null);

    /// <summary>Several rows as one lognormal with the mean and variance of the logarithm of their even mixture.</summary>
    /// <param name="rows">The rows, at least one.</param>
    /// <returns>The torque, its σ at least 0.15.</returns>
    /// <exception cref="ArgumentException">No row.</exception>
    public static StartTorque Pooled(IReadOnlyList<LargeNut> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (rows.Count == 0)
        {
            throw new ArgumentException("at least one row", nameof(rows));
        }

        double mean = rows.Average(row => Math.Log(row.TorqueNmm.Median));
        double variance = rows.Average(row => Math.Pow(Math.Log(row.TorqueNmm.Median) - mean, 2) + Math.Pow(row.TorqueNmm.Sigma, 2));
        return Of(new Spread(Math.Exp(mean), Math.Max(LeastSigma, Math.Sqrt(variance))), StartSource.Table, rows, null);
    }

    /// <summary>A torque from its ends, as P10 and P90.</summary>
    internal static StartTorque Between(double lowNmm, double highNmm, ScrewThread thread) => Of(
        new Spread(Math.Sqrt(lowNmm * highNmm), LogNormalSpread.SigmaFromP10P90(lowNmm, highNmm)), StartSource.Thread, [], thread);

    private static StartTorque Of(Spread torque, StartSource from, IReadOnlyList<LargeNut> rows, ScrewThread? thread) => new(
        torque.Quantile(0.1), torque.Median, torque.Quantile(0.9), torque.Sigma, from, rows, thread);
}
