using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;

namespace Leverage.Proof;

/// <summary>A pull as a row gives it: all that decides how it ends.</summary>
/// <param name="Fastener">The fastener.</param>
/// <param name="Hand">Torque the hand reaches.</param>
/// <param name="Risks">What else can end it.</param>
/// <param name="Tube">A tube that may slide; null for none.</param>
internal sealed record ChanceSetup(Fastener Fastener, Strength Hand, Risk[] Risks, Sliding? Tube)
{
    /// <summary>The chances by the integral.</summary>
    internal OutcomeShares Chances() =>
        CompetingRisks.Split(BreakLooseSpread.Torque(Fastener), Hand, Risks, Tube, new double[Risks.Length]);

    /// <summary>The chances by drawing.</summary>
    /// <param name="samples">How many draws.</param>
    /// <param name="seed">Their seed.</param>
    internal OutcomeShares Drawn(int samples, int seed) =>
        MonteCarlo.Split(new BreakLooseSampler(Fastener), Hand, Risks, Tube, samples, seed, new double[Risks.Length]);
}
