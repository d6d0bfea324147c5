
namespace Leverage.Probability;

/// <summary>Survival and density of a break-loose torque as cubics between nodes over the log torque: made once, read often.</summary>
internal sealed class SurvivalCurve
{
    /// <summary>Nodes in the narrowest spread; the cubic between two is then within 1e-8 of the survival.</summary>
    private const int PerSpread = 32;

    private const int MostCells = 1 << 15;
    private readonly Node[] _nodes;
    private readonly double _low;
    private readonly double _step;

    internal SurvivalCurve(double low, double high, double narrowest, Func<double, Node> exact)
    {
        int cells = (int)Math.Clamp((high - low) / narrowest * PerSpread, 1, MostCells);
        _low = low;
        _step = (high - low) / cells;
        _nodes = new Node[cells + 1];
        for (int i = 0; i <= cells; i++)
        {
            _nodes[i] = exact(low + i * _step);
        }
    }

    /// <summary>Survival and density at a log torque; null outside the nodes.</summary>
    internal (double Survival, double Density)? At(double logTorque)
    {
        double place = (logTorque - _low) / _step;
        if (!(place >= 0 && place < _nodes.Length - 1))
        {
            return null;
        }

        int cell = (int)place;
        ref readonly Node from = ref _nodes[cell];
        ref readonly Node to = ref _nodes[cell + 1];
        var weights = new HermiteWeights(place - cell, _step);
        return (
            weights.Between(from.Survival, -from.Density, to.Survival, -to.Density),
            weights.Between(from.Density, from.Slope, to.Density, to.Slope));
    }

    /// <summary>One node.</summary>
    /// <param name="Survival">Chance that the joint still holds.</param>
    /// <param name="Density">Density over the log torque.</param>
    /// <param name="Slope">Slope of the density over the log torque.</param>
    internal readonly record struct Node(double Survival, double Density, double Slope);
}
