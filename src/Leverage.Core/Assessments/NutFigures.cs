using Leverage.Probability;
using Leverage.BreakLoose;

namespace Leverage.Assessments;

/// <summary>What a nut takes, worked out once for all levers.</summary>
/// <param name="Spread">Spread of the break-loose torque.</param>
/// <param name="LowNmm">10th percentile, N·mm.</param>
/// <param name="LikelyNmm">Median, N·mm.</param>
/// <param name="HighNmm">90th percentile, N·mm.</param>
/// <param name="RunningShare">q, torque once moving over torque to start.</param>
public sealed record NutFigures(
    BreakLooseTorque Spread, double LowNmm, double LikelyNmm, double HighNmm, double RunningShare)
{
    /// <summary>The same figures with the spread's curve worked out beforehand, for judging many levers on this nut.</summary>
    /// <returns>Figures whose chances agree with these to 1e-7.</returns>
    public NutFigures Tabulated() => this with { Spread = Spread.Tabulated() };

    /// <summary>The figures of a fastener.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>Its figures.</returns>
    public static NutFigures Of(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        BreakLooseTorque spread = BreakLooseSpread.Torque(fastener);
        return new NutFigures(
            spread, spread.Quantile(0.1), spread.Quantile(0.5), spread.Quantile(0.9), fastener.Condition.RunningShare);
    }
}
