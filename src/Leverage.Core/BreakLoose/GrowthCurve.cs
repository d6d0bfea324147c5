using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.BreakLoose;

/// <summary>What ln G is like: a normal, or a density given on an even grid once a nut has shown something.</summary>
public sealed class GrowthCurve
{
    private readonly double _logMedian;
    private readonly double _low;
    private readonly double _step;
    private readonly double[]? _density;
    private readonly double[]? _survival;

    /// <summary>The lognormal of a condition.</summary>
    /// <param name="growth">Median and σ; a σ below a thousandth is taken as one.</param>
    public GrowthCurve(Growth growth)
    {
        _logMedian = Math.Log(growth.Median);
        Sigma = Math.Max(growth.Sigma, 1e-3);
        (LogLow, LogHigh) = (_logMedian - 6 * Sigma, _logMedian + 6 * Sigma);
    }

    /// <summary>Any density of ln G, straight between the points of an even grid; it is scaled to hold the whole.</summary>
    /// <param name="logLow">ln G of the first point.</param>
    /// <param name="step">Distance of two points, above 0.</param>
    /// <param name="density">Density at each point, 0 or more, any scale; at least two points.</param>
    public GrowthCurve(double logLow, double step, IReadOnlyList<double> density)
    {
        ArgumentNullException.ThrowIfNull(density);
        Require.Positive(step, nameof(step));
        if (density.Count < 2)
        {
            throw new ArgumentOutOfRangeException(nameof(density), "a grid has at least two points");
        }

        (_low, _step) = (logLow, step);
        (LogLow, LogHigh) = (logLow, logLow + step * (density.Count - 1));
        _density = [.. density];
        _survival = new double[density.Count];
        for (int i = density.Count - 2; i >= 0; i--)
        {
            _survival[i] = _survival[i + 1] + step * (_density[i] + _density[i + 1]) / 2;
        }

        double whole = _survival[0] > 0
            ? _survival[0]
            : throw new ArgumentOutOfRangeException(nameof(density), "the density holds nothing");
        for (int i = 0; i < _density.Length; i++)
        {
            (_density[i], _survival[i]) = (_density[i] / whole, _survival[i] / whole);
        }

        Sigma = Math.Max(Deviation(_density, step), 1e-3);
    }

    /// <summary>ln of the median of G.</summary>
    internal double LogMedian => _logMedian;

    /// <summary>σ of ln G.</summary>
    public double Sigma { get; }

    /// <summary>ln G below which nothing lies that matters.</summary>
    public double LogLow { get; }

    /// <summary>ln G above which nothing lies that matters.</summary>
    public double LogHigh { get; }

    /// <summary>Chance of more than g, and density over ln g.</summary>
    /// <param name="logGrowth">ln g.</param>
    /// <returns>Survival and density.</returns>
    public (double Survival, double Density) At(double logGrowth)
    {
        if (_density is null || _survival is null)
        {
            var (above, at) = NormalCurve.At((logGrowth - _logMedian) / Sigma);
            return (above, at / Sigma);
        }

        double place = (logGrowth - _low) / _step;
        if (!(place > 0 && place < _density.Length - 1))
        {
            return (place > 0 ? 0 : 1, 0);
        }

        int cell = (int)place;
        double share = place - cell;
        double density = _density[cell] + share * (_density[cell + 1] - _density[cell]);
        return (_survival[cell + 1] + _step * (1 - share) * (density + _density[cell + 1]) / 2, density);
    }

    /// <summary>ln g below which a share lies.</summary>
    /// <param name="share">The share, between 0 and 1.</param>
    internal double LogAt(double share)
    {
        if (_survival is null)
        {
            return Normal.InvCDF(_logMedian, Sigma, share);
        }

        var (from, to) = (0, _survival.Length - 1);
        while (to - from > 1)
        {
            int middle = (from + to) / 2;
            (from, to) = _survival[middle] > 1 - share ? (middle, to) : (from, middle);
        }

        double inCell = _survival[from] - _survival[to];
        return _low + _step * (from + (inCell > 0 ? (_survival[from] - (1 - share)) / inCell : 0));
    }

    /// <summary>One G, drawn.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <returns>ln g.</returns>
    internal double Draw(Random random)
    {
        if (_survival is null || _density is null)
        {
            return Normal.Sample(random, _logMedian, Sigma);
        }

        // By rejection under the density's highest point: slow, plain, and no inverse of a table.
        double most = _density.Max();
        while (true)
        {
            double log = LogLow + (LogHigh - LogLow) * random.NextDouble();
            if (most * random.NextDouble() < At(log).Density)
            {
                return log;
            }
        }
    }

    private static double Deviation(double[] density, double step)
    {
        var (mean, square) = (0.0, 0.0);
        for (int i = 0; i < density.Length; i++)
        {
            mean += step * density[i] * i * step;
            square += step * density[i] * i * step * i * step;
        }

        return Math.Sqrt(Math.Max(0, square - mean * mean));
    }
}
