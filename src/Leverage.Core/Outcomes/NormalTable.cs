using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>Standard normal deviates from random bits: a table of quantiles, exact in the outermost cells.</summary>
internal static class NormalTable
{
    private const int Bits = 11;
    private const int Cells = 1 << Bits;

    /// <summary>Cells at each end that are not interpolated.</summary>
    private const int Exact = 2;

    private static readonly double[] Quantiles = Build();

    /// <summary>A normal deviate from 32 random bits: 11 choose the cell, 21 the place in it.</summary>
    internal static double At(uint bits)
    {
        int cell = (int)(bits >> (32 - Bits));
        double place = (bits & ((1u << (32 - Bits)) - 1)) * (1.0 / (1u << (32 - Bits)));
        double low = Quantiles[cell];
        return (uint)(cell - Exact) < Cells - 2 * Exact
            ? low + place * (Quantiles[cell + 1] - low)
            : Tail(cell + place);
    }

    /// <summary>The place in the last cell ends before 1; only all bits 0 would have no deviate.</summary>
    private static double Tail(double cell) => Normal.InvCDF(0, 1, Math.Max(cell / Cells, 1e-12));

    private static double[] Build()
    {
        var quantiles = new double[Cells];
        for (int i = Exact; i <= Cells - Exact; i++)
        {
            quantiles[i] = Normal.InvCDF(0, 1, (double)i / Cells);
        }

        return quantiles;
    }
}
