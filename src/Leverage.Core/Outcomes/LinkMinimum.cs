using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>The strength of the weakest of several links, drawn from tables over the log torque, and which link it is.</summary>
internal sealed class LinkMinimum
{
    private const int Cells = 1024;

    /// <summary>Log torque of what nothing can break.</summary>
    private const double Unbreakable = 1e6;

    private readonly Strength[] _links;
    private readonly double[] _survival = new double[Cells + 1];
    private readonly double[] _shares;
    private readonly double _low;
    private readonly double _perCell;
    private readonly NormalTable _weakest;

    internal LinkMinimum(ReadOnlySpan<Strength> links)
    {
        _links = links.ToArray();
        _shares = new double[_survival.Length * _links.Length];
        if (_links.Length == 0)
        {
            _weakest = new NormalTable(_ => Unbreakable);
            return;
        }

        _low = double.PositiveInfinity;
        double high = double.PositiveInfinity;
        foreach (Strength link in _links)
        {
            double log = Math.Log(link.MedianNmm);
            _low = Math.Min(_low, log - Strength.Tail * link.Sigma);
            high = Math.Min(high, log + Strength.Tail * link.Sigma);
        }

        _perCell = Cells / (high - _low);
        for (int i = 0; i < _survival.Length; i++)
        {
            Fill(i, _low + i / _perCell);
        }

        _weakest = new NormalTable(deviate => LogAt(Normal.CDF(0, 1, -deviate)));
    }

    /// <summary>Log torque at which the first link gives, from 32 random bits.</summary>
    internal double Draw(uint bits) => _weakest.At(bits);

    /// <summary>Which link gives at a drawn log torque.</summary>
    internal int Which(double logTorque, double draw)
    {
        int from = (int)((logTorque - _low) * _perCell) * _links.Length;
        for (int i = 0; i < _links.Length - 1; i++)
        {
            if (draw < _shares[from + i])
            {
                return i;
            }
        }

        return _links.Length - 1;
    }

    /// <summary>Log torque at which this share of cases is left, between two cells in a straight line.</summary>
    private double LogAt(double survival)
    {
        // The last cell whose survival is still above it.
        int cell = 0;
        for (int step = Cells / 2; step > 0; step /= 2)
        {
            cell += _survival[cell + step] > survival ? step : 0;
        }

        double above = _survival[cell];
        double gone = (above - survival) / Math.Max(above - _survival[cell + 1], double.Epsilon);
        return _low + (cell + Math.Clamp(gone, 0, 1)) / _perCell;
    }

    /// <summary>Survival of all links at a log torque, and the running sum of each link's share of the hazard.</summary>
    private void Fill(int cell, double log)
    {
        double product = 1;
        double hazard = 0;
        for (int i = 0; i < _links.Length; i++)
        {
            var (survival, density) = _links[i].At(log);
            product *= survival;
            hazard += survival > 0 ? density / survival : 1e12;
            _shares[cell * _links.Length + i] = hazard;
        }

        _survival[cell] = product;
        for (int i = 0; i < _links.Length; i++)
        {
            _shares[cell * _links.Length + i] /= Math.Max(hazard, double.Epsilon);
        }
    }
}
