using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Reading;

namespace Leverage.Assessments;

/// <summary>The chances drawn by Monte Carlo, beside those of the integral.</summary>
/// <param name="Samples">How many draws.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="Shares">What happened first.</param>
public sealed record CrossCheck(int Samples, int Seed, OutcomeShares Shares)
{
    /// <summary>Draws for an assessment: all it judges, and nothing of how it judged it.</summary>
    /// <param name="assessment">The assessment; it must have a bar.</param>
    /// <param name="samples">How many draws.</param>
    /// <param name="seed">Their seed.</param>
    /// <returns>The drawn chances, or null where there is no bar.</returns>
    /// <exception cref="InputException">The nut has shown something: draws that fit it may never come.</exception>
    public static CrossCheck? Of(LooseningAssessment assessment, int samples, int seed)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever)
        {
            return null;
        }

        LooseningSetup setup = assessment.Setup;
        if (setup.Fastener is { HeldNmm: > 0 } or { CameNmm.Count: > 0 })
        {
            throw new InputException("draws", "are of nuts that have shown nothing yet: leave out either the draws or what was held and came.");
        }

        var around = Circumstances.Of(setup, assessment.Nut, assessment.Hand, lever, assessment.Hold?.Capacity);
        Risk[] risks = Judgement.Risks(assessment.Nut, [.. assessment.Links.Select(link => link.Limit)], around);
        OutcomeShares shares = MonteCarlo.Split(
            new BreakLooseSampler(setup.Fastener), assessment.Hand.Torque(lever.ReachMm), risks, around.Sliding, samples, seed, new double[risks.Length]);
        return new CrossCheck(samples, seed, shares);
    }

    /// <summary>Chance that something breaks, slides off or turns first.</summary>
    public double Breaks => Shares.Gives + Shares.SlidesOff + Shares.WheelTurns;

    /// <summary>Standard error of a drawn share.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <returns>√(p(1 − p)/n).</returns>
    public double Error(double share) => Math.Sqrt(share * (1 - share) / Samples);
}
