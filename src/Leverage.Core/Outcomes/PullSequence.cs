using Leverage.BreakLoose;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>One pull of a sequence on the same nut.</summary>
/// <param name="Nut">What the nut takes by then: what was done to it changes its growth, never which nut it is.</param>
/// <param name="Hand">Torque the hand reaches on this lever; strength is one draw for the day.</param>
/// <param name="Risks">What else can happen, each with the key of the thing it happens to.</param>
/// <param name="Tube">The tube, if it may slide.</param>
/// <param name="TubeKey">The tube and the surface it sits on; blank for none.</param>
public sealed record Pull(
    BreakLooseTorque Nut, Strength Hand, IReadOnlyList<(string Key, Risk Risk)> Risks, Sliding? Tube = null, string TubeKey = "");

/// <summary>Where things stand after a pull.</summary>
/// <param name="ComesLoose">Chance that the nut has come loose by then.</param>
/// <param name="Breaks">Chance that something has broken, slid off or turned by then.</param>
public readonly record struct ByThen(double ComesLoose, double Breaks);

/// <summary>
/// One pull after another until the nut comes, something breaks or the list ends. The nut, the person's strength and each
/// thing's own strength are drawn once and stay what they are: a bar that has stood 300 N·m stands them again.
/// </summary>
public static class PullSequence
{
    /// <summary>Deviates of the person's strength beyond which nothing is counted: 3 in 100 000.</summary>
    private const double Strongest = 4.2;

    /// <summary>Steps those are cut into: as many as hold a nut of usual scatter, and more for one that scatters less than the hand by far.</summary>
    private const int LeastSteps = 36;
    private const int MostSteps = 400;

    /// <summary>Gauss–Legendre rule over the growths of a nut that comes at one pull.</summary>
    private static readonly (double Abscissa, double Weight)[] Even = GaussNodes.Of(5);

    /// <summary>The chances after each pull: the first as <see cref="CompetingRisks"/> has it, what follows in proportion.</summary>
    /// <param name="pulls">The pulls, in order.</param>
    /// <returns>One state a pull, neither chance ever falling.</returns>
    public static IReadOnlyList<ByThen> Run(IReadOnlyList<Pull> pulls)
    {
        ArgumentNullException.ThrowIfNull(pulls);
        if (pulls.Count == 0)
        {
            return [];
        }

        OutcomeShares first = First(pulls[0]);
        var states = new ByThen[pulls.Count];
        states[0] = new ByThen(first.ComesLoose, Math.Max(0, first.Gives + first.SlidesOff + first.WheelTurns));
        if (pulls.Count > 1)
        {
            var (loose, breaks) = Sum(pulls);
            double left = 1 - loose[0] - breaks[0];
            double scale = left > 0 ? Math.Max(0, first.StaysTight) / left : 0;
            for (int i = 1; i < states.Length; i++)
            {
                states[i] = new ByThen(states[i - 1].ComesLoose + scale * loose[i], states[i - 1].Breaks + scale * breaks[i]);
            }
        }

        return states;
    }

    private static OutcomeShares First(Pull pull)
    {
        Risk[] risks = [.. pull.Risks.Select(risk => risk.Risk)];
        return CompetingRisks.Split(pull.Nut, pull.Hand, risks, pull.Tube, new double[risks.Length]);
    }

    /// <summary>At each pull the share of all cases that comes loose, and the share in which something breaks: summed over cases and strengths, exact in the growth.</summary>
    private static (double[] Loose, double[] Breaks) Sum(IReadOnlyList<Pull> pulls)
    {
        var (keys, prepared) = PreparedPull.Of(pulls);
        var (loose, breaks) = (new double[pulls.Count], new double[pulls.Count]);
        Span<Stood> stood = stackalloc Stood[keys];
        BreakLooseTorque nut = pulls[0].Nut;
        var reaches = new Reach[pulls.Count];
        int steps = (int)Math.Clamp(2 * Strongest * pulls.Max(pull => pull.Hand.Sigma) / nut.Narrowest, LeastSteps, MostSteps);
        for (int i = 0; i <= steps; i++)
        {
            double strength = Strongest * (2.0 * i / steps - 1);
            double share = Normal.PDF(0, 1, strength) * 2 * Strongest / steps;
            for (int pull = 0; pull < reaches.Length; pull++)
            {
                reaches[pull] = prepared[pull].Reaches(strength);
            }

            for (int which = 0; which < nut.Cases.Length; which++)
            {
                stood.Clear();
                Fight(prepared, which, nut.ShareCutOff(which), reaches, nut.Cases[which].Weight * share, stood, loose, breaks);
            }
        }

        return (loose, breaks);
    }

    /// <summary>One case of the nut and one person. The nuts still tight at a pull are those of more growth than any pull has moved.</summary>
    private static void Fight(
        PreparedPull[] pulls, int which, double tightFrom, Reach[] all, double weight, Span<Stood> stood, double[] loose, double[] breaks)
    {
        for (int i = 0; i < pulls.Length && weight > 0; i++)
        {
            PreparedPull pull = pulls[i];
            Reach reaches = all[i];
            double moves = Math.Max(tightFrom, pull.ShareBelow(which, reaches));
            double whole = weight * (1 - tightFrom);
            double comes = weight * pull.StaysOn * Coming(pull, which, tightFrom, moves, reaches, stood);
            weight *= pull.StaysOn * pull.Survives(which, reaches, stood, keep: true);
            tightFrom = moves;
            loose[i] += comes;
            breaks[i] += Math.Max(0, whole - comes - weight * (1 - tightFrom));
        }
    }

    /// <summary>Share of growths between two that turn with everything standing what they take.</summary>
    private static double Coming(PreparedPull pull, int which, double from, double to, in Reach reaches, Span<Stood> stood)
    {
        // What stands the whole pull stands whatever less the nut takes.
        if (!(to > from) || pull.Survives(which, reaches, stood, keep: false) >= 1)
        {
            return to - from;
        }

        double sum = 0;
        foreach (var (abscissa, weight) in Even)
        {
            double share = from + (to - from) * abscissa;
            sum += weight * pull.Survives(which, Reach.Of(Math.Min(reaches.Nmm, pull.Takes(which, share))), stood, keep: false);
        }

        return (to - from) * sum;
    }
}
