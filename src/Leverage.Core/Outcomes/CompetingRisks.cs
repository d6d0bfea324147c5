using Leverage.Loosening;
using MathNet.Numerics.Integration;

namespace Leverage.Outcomes;

/// <summary>
/// The torque rises until the first of three things: the nut turns, the hand has no more, a link gives. All are
/// independent and scattered, so each chance is one integral over the log torque.
/// </summary>
public static class CompetingRisks
{
    /// <summary>Points of the Gauss–Legendre rule on each panel.</summary>
    private const int Points = 16;

    /// <summary>Panel width in units of the narrowest spread; 16 points hold such a panel to 1e-9.</summary>
    private const double PanelSigmas = 6;

    private static readonly GaussPoint[] Rule = Nodes();

    /// <summary>The three chances, and each link's share of the third.</summary>
    /// <param name="nut">Torque that breaks the joint loose.</param>
    /// <param name="hand">Torque the hand reaches on this lever.</param>
    /// <param name="links">Torque each link stands.</param>
    /// <param name="gives">Filled with the chance that each link gives first; as long as <paramref name="links"/>.</param>
    /// <returns>Chances that it comes undone and that it stays stuck, each 0 to 1.</returns>
    /// <exception cref="ArgumentException">The two spans differ in length.</exception>
    public static (double Undone, double Stuck) Split(
        BreakLooseTorque nut, Strength hand, ReadOnlySpan<Strength> links, Span<double> gives)
    {
        if (gives.Length != links.Length)
        {
            throw new ArgumentException("One chance is wanted for each link.", nameof(gives));
        }

        gives.Clear();
        var (low, high, narrowest) = Range(nut, hand, links);
        int panels = Math.Max(1, (int)Math.Ceiling((high - low) / (PanelSigmas * narrowest)));
        double width = (high - low) / panels;
        Span<double> survivals = stackalloc double[links.Length + 1];
        Span<double> densities = stackalloc double[links.Length + 1];
        double undone = 1 - nut.Survival(Math.Exp(low));
        double stuck = 0;
        for (int panel = 0; panel < panels; panel++)
        {
            foreach (GaussPoint point in Rule)
            {
                double u = low + width * (panel + point.Abscissa);
                double weight = width * point.Weight;
                var (nutHolds, nutTurns) = nut.At(Math.Exp(u));
                Fill(u, hand, links, survivals, densities);
                undone += weight * nutTurns * Product(survivals, -1);
                stuck += weight * nutHolds * densities[^1] * Product(survivals, links.Length);
                for (int i = 0; i < links.Length; i++)
                {
                    gives[i] += weight * nutHolds * densities[i] * Product(survivals, i);
                }
            }
        }

        return (undone, stuck + AtCap(nut, hand, links, survivals, densities));
    }

    /// <summary>A capped hand stops dead at its cap: all that is left there stays stuck.</summary>
    private static double AtCap(
        BreakLooseTorque nut, Strength hand, ReadOnlySpan<Strength> links, Span<double> survivals, Span<double> densities)
    {
        if (double.IsPositiveInfinity(hand.CapNmm))
        {
            return 0;
        }

        Fill(Math.Log(hand.CapNmm), hand, links, survivals, densities);
        return nut.Survival(hand.CapNmm) * Product(survivals, -1);
    }

    private static (double Low, double High, double Narrowest) Range(
        BreakLooseTorque nut, Strength hand, ReadOnlySpan<Strength> links)
    {
        double low = nut.LogLow;
        double high = nut.LogHigh;
        double narrowest = nut.Narrowest;
        Widen(hand, ref low, ref high, ref narrowest);
        foreach (Strength link in links)
        {
            Widen(link, ref low, ref high, ref narrowest);
        }

        high = Math.Min(high, Math.Log(hand.CapNmm));
        return (Math.Min(low, high), high, narrowest);
    }

    private static void Widen(Strength strength, ref double low, ref double high, ref double narrowest)
    {
        double log = Math.Log(strength.MedianNmm);
        low = Math.Min(low, log - Strength.Tail * strength.Sigma);
        high = Math.Min(high, log + Strength.Tail * strength.Sigma);
        narrowest = Math.Min(narrowest, strength.Sigma);
    }

    private static void Fill(
        double u, Strength hand, ReadOnlySpan<Strength> links, Span<double> survivals, Span<double> densities)
    {
        for (int i = 0; i < links.Length; i++)
        {
            (survivals[i], densities[i]) = links[i].At(u);
        }

        (survivals[^1], densities[^1]) = hand.At(u);
    }

    private static double Product(ReadOnlySpan<double> survivals, int without)
    {
        double product = 1;
        for (int i = 0; i < survivals.Length; i++)
        {
            product *= i == without ? 1 : survivals[i];
        }

        return product;
    }

    private static GaussPoint[] Nodes()
    {
        var rule = new GaussLegendreRule(0, 1, Points);
        var nodes = new GaussPoint[Points];
        for (int i = 0; i < Points; i++)
        {
            nodes[i] = new GaussPoint(rule.GetAbscissa(i), rule.GetWeight(i));
        }

        return nodes;
    }

    private readonly record struct GaussPoint(double Abscissa, double Weight);
}
