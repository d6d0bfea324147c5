using Leverage.Probability;
using Leverage.BreakLoose;

namespace Leverage.Outcomes;

/// <summary>
/// The torque rises until the first of three things: the nut turns, the hand has no more, a link gives. All are
/// independent and scattered, so each chance is one integral over the log torque.
/// </summary>
public static class CompetingRisks
{
    /// <summary>The three chances, and each link's share of the third.</summary>
    /// <param name="nut">Torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="links">Torque each link stands.</param>
    /// <param name="gives">Filled with the chance that each link gives first; as long as <paramref name="links"/>.</param>
    /// <returns>Chances that it comes undone and that it stays stuck, each 0 to 1.</returns>
    /// <exception cref="ArgumentException">The two spans differ in length.</exception>
    public static (double ComesLoose, double StaysTight) Split(
        BreakLooseTorque nut, Strength hand, ReadOnlySpan<Strength> links, Span<double> gives)
    {
        ArgumentNullException.ThrowIfNull(nut);
        if (gives.Length != links.Length)
        {
            throw new ArgumentException("One chance is wanted for each link.", nameof(gives));
        }

        gives.Clear();
        var runner = new LogNormalCurve(hand);
        double high = Math.Min(Math.Min(nut.LogHigh, runner.High), Math.Log(hand.CapNmm));
        Span<LogNormalCurve> curves = stackalloc LogNormalCurve[links.Length];
        for (int i = 0; i < links.Length; i++)
        {
            curves[i] = new LogNormalCurve(links[i]);
            high = Math.Min(high, curves[i].High);
        }

        var race = new Race(nut, runner, curves, gives, stackalloc double[3 * links.Length]);
        race.Run(high);
        return (race.ComesLoose, double.IsPositiveInfinity(hand.CapNmm) ? race.StaysTight : race.StaysTight + race.Left(hand.CapNmm));
    }
}
