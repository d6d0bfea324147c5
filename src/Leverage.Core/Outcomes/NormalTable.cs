using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>Values of a normal deviate's function from random bits: a table over its quantiles, exact in the outermost cells.</summary>
internal sealed class NormalTable
{
    private const int Bits = 11;
    private const int Cells = 1 << Bits;

    /// <summary>Cells at each end that are not interpolated.</summary>
    private const int Exact = 2;

    /// <summary>The deviate itself.</summary>
    internal static readonly NormalTable Deviate = new(deviate => deviate);

    private readonly Func<double, double> _function;
    private readonly double[] _values = new double[Cells];

    /// <summary>A table of a function.</summary>
    internal NormalTable(Func<double, double> function)
    {
        _function = function;
        for (int i = Exact; i <= Cells - Exact; i++)
        {
            _values[i] = function(Normal.InvCDF(0, 1, (double)i / Cells));
        }
    }

    /// <summary>A value from 32 random bits: 11 choose the cell, 21 the place in it.</summary>
    internal double At(uint bits)
    {
        int cell = (int)(bits >> (32 - Bits));
        double place = (bits & ((1u << (32 - Bits)) - 1)) * (1.0 / (1u << (32 - Bits)));
        if ((uint)(cell - Exact) >= Cells - 2 * Exact)
        {
            return Tail(cell + place);
        }

        double low = _values[cell];
        return low + place * (_values[cell + 1] - low);
    }

    /// <summary>The place in the last cell ends before 1; only all bits 0 would have no deviate.</summary>
    private double Tail(double cell) => _function(Normal.InvCDF(0, 1, Math.Max(cell / Cells, 1e-12)));
}
