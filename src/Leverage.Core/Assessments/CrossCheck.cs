using Leverage.BreakLoose;
using Leverage.Outcomes;

namespace Leverage.Assessments;

/// <summary>The chances drawn by Monte Carlo, beside those of the integral.</summary>
/// <param name="Samples">How many draws.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="Shares">What happened first.</param>
public sealed record CrossCheck(int Samples, int Seed, OutcomeShares Shares)
{
    /// <summary>Draws for an assessment.</summary>
    /// <param name="assessment">The assessment; it must have a bar.</param>
    /// <param name="samples">How many draws.</param>
    /// <param name="seed">Their seed.</param>
    /// <returns>The drawn chances, or null where there is no bar.</returns>
    public static CrossCheck? Of(LooseningAssessment assessment, int samples, int seed)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever)
        {
            return null;
        }

        Risk[] risks = [.. assessment.Links.Select(link => Judgement.RiskOf(link.Limit, assessment.Nut))];
        OutcomeShares shares = MonteCarlo.Split(
            new BreakLooseSampler(assessment.Setup.Fastener),
            assessment.Hand.Torque(lever.ReachMm),
            risks,
            null,
            samples,
            seed,
            new double[risks.Length]);
        return new CrossCheck(samples, seed, shares);
    }

    /// <summary>Standard error of a drawn share.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <returns>√(p(1 − p)/n).</returns>
    public double Error(double share) => Math.Sqrt(share * (1 - share) / Samples);
}
