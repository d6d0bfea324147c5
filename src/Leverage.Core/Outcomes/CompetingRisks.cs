using Leverage.BreakLoose;
using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>
/// The torque rises until the first of several things: the nut turns, the hand has no more, a link gives, the stud twists
/// off, the wheel turns. A tube slides before any of them or not at all. Each chance is one integral over the log torque,
/// summed over the nut's cases of start torque and lost preload, which nut and stud have in common.
/// </summary>
public static class CompetingRisks
{
    /// <summary>The chances of what happens first, and each risk's own.</summary>
    /// <param name="nut">Torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="risks">What else can happen; at most one stud.</param>
    /// <param name="tube">A tube that may slide; null for none.</param>
    /// <param name="each">Filled with the chance of each risk; as long as <paramref name="risks"/>.</param>
    /// <returns>The chances, which sum to 1.</returns>
    /// <exception cref="ArgumentException">The spans differ in length, there are two studs, or nothing is known of the stud's tension.</exception>
    public static OutcomeShares Split(BreakLooseTorque nut, Strength hand, ReadOnlySpan<Risk> risks, Sliding? tube, Span<double> each)
    {
        ArgumentNullException.ThrowIfNull(nut);
        if (each.Length != risks.Length)
        {
            throw new ArgumentException("One chance is wanted for each risk.", nameof(each));
        }

        int? stud = Stud(risks);
        if (stud is not null && nut.Cases is [{ Shank.StandsShare: double.NaN }, ..])
        {
            throw new ArgumentException("A stud whose thread and grade are not known cannot be judged.", nameof(risks));
        }

        each.Clear();
        var curves = new RiskCurve[stud is null ? risks.Length : risks.Length - 1];
        for (int i = 0, next = 0; i < risks.Length; i++)
        {
            if (i != stud)
            {
                curves[next++] = new RiskCurve(risks[i]);
            }
        }

        Span<LinkShare> shares = stackalloc LinkShare[curves.Length];
        var integral = new RiskIntegral(nut, hand, curves, stud is { } at ? new StudCurve(nut, risks[at].Strength) : null, tube, shares);
        integral.Run();
        double stays = 1 - integral.SlidesOff;
        for (int i = 0, next = 0; i < risks.Length; i++)
        {
            each[i] = stays * (i == stud ? integral.StudTwistsOff : shares[next++].Gives);
        }

        double loose = stays * integral.ComesLoose;
        return OutcomeShares.Of(
            loose,
            stays * integral.StaysTight,
            integral.SlidesOff,
            loose > 0 ? integral.SlidesAsItTurns / loose : 0,
            risks,
            each);
    }

    private static int? Stud(ReadOnlySpan<Risk> risks)
    {
        int? stud = null;
        for (int i = 0; i < risks.Length; i++)
        {
            if (risks[i].Kind == RiskKind.StudTwistsOff)
            {
                stud = stud is null ? i : throw new ArgumentException("A fastener has one stud.", nameof(risks));
            }
        }

        return stud;
    }
}
