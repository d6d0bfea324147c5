using Leverage.Probability;

namespace Leverage.Assessments;

/// <summary>What a person's hands give, worked out once for all levers.</summary>
/// <param name="Force">Spread of the force, N.</param>
/// <param name="CapN">The most it can be, N; infinite for none.</param>
public readonly record struct HandFigures(Spread Force, double CapN)
{
    /// <summary>Force at a share of cases, N, never above the cap.</summary>
    /// <param name="share">Share below, between 0 and 1.</param>
    /// <returns>Force, N.</returns>
    public double Quantile(double share) => Math.Min(CapN, Force.Quantile(share));

    /// <summary>The torque these hands reach on a lever.</summary>
    /// <param name="reachMm">Nut's axis to middle of the hands, mm.</param>
    /// <returns>The scattered torque, N·mm.</returns>
    public Strength Torque(double reachMm) => new(Force.Median * reachMm, Force.Sigma, CapN * reachMm);

    /// <summary>Force a torque takes on a lever, as a share of the likely force: over 1 is more than likely can be given.</summary>
    /// <param name="torqueNmm">Torque at the nut, N·mm.</param>
    /// <param name="reachMm">Nut's axis to middle of the hands, mm.</param>
    /// <returns>The share.</returns>
    public double Effort(double torqueNmm, double reachMm) => torqueNmm / (reachMm * Quantile(0.5));

    /// <summary>The figures of the person at the lever.</summary>
    /// <param name="hands">The person.</param>
    /// <returns>The figures.</returns>
    public static HandFigures Of(Hands hands)
    {
        ArgumentNullException.ThrowIfNull(hands);
        var (force, cap) = hands.Force;
        return new HandFigures(force, cap);
    }
}
