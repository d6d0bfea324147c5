using Leverage.Probability;
using Leverage.BreakLoose;
using Leverage.Outcomes;

namespace Leverage.Assessments;

/// <summary>The chances drawn by Monte Carlo, beside those of the integral.</summary>
/// <param name="Samples">How many draws.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="ComesLoose">Share that came undone.</param>
/// <param name="StaysTight">Share that stayed stuck.</param>
/// <param name="Gives">Share in which something gave first.</param>
public sealed record CrossCheck(int Samples, ulong Seed, double ComesLoose, double StaysTight, double Gives)
{
    /// <summary>Draws for an assessment.</summary>
    /// <param name="assessment">The assessment; it must have a bar.</param>
    /// <param name="samples">How many draws.</param>
    /// <param name="seed">Their seed.</param>
    /// <returns>The drawn chances, or null where there is no bar.</returns>
    public static CrossCheck? Of(LooseningAssessment assessment, int samples, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever)
        {
            return null;
        }

        Strength[] links = [.. assessment.Links.Select(link => link.Limit.Strength)];
        double[] gives = new double[links.Length];
        var (undone, stuck) = MonteCarlo.Split(
            BreakLooseSpread.Sampler(assessment.Setup.Fastener), assessment.Hand.Torque(lever.ReachMm), links, samples, seed, gives);
        return new CrossCheck(samples, seed, undone, stuck, gives.Sum());
    }

    /// <summary>Standard error of a drawn share.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <returns>√(p(1 − p)/n).</returns>
    public double Error(double share) => Math.Sqrt(share * (1 - share) / Samples);
}
