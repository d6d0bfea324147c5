using MathNet.Numerics.Integration;

namespace Leverage.Probability;

/// <summary>Points and weights of the Gauss–Legendre rule from 0 to 1: what a mean over an even input is made of.</summary>
internal static class GaussNodes
{
    /// <summary>The nodes; the weights sum to 1.</summary>
    internal static (double Abscissa, double Weight)[] Of(int points)
    {
        var rule = new GaussLegendreRule(0, 1, points);
        return [.. Enumerable.Range(0, points).Select(i => (rule.GetAbscissa(i), rule.GetWeight(i)))];
    }
}
