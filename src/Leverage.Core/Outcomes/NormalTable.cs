using MathNet.Numerics.Distributions;

namespace Leverage.Outcomes;

/// <summary>Standard normal deviates from random bits: a table of quantiles, exact in the outermost cells.</summary>
internal static class NormalTable
{
    private const int Bits = 12;
    private const int Cells = 1 << Bits;
    private static readonly double[] Quantiles = Build();

    /// <summary>A normal deviate from 32 random bits: 12 choose the cell, 20 the place in it.</summary>
    internal static double At(uint bits)
    {
        int cell = (int)(bits >> (32 - Bits));
        double place = (bits & ((1u << (32 - Bits)) - 1)) * (1.0 / (1u << (32 - Bits)));
        return cell is > 3 and < Cells - 4
            ? Quantiles[cell] + place * (Quantiles[cell + 1] - Quantiles[cell])
            : Normal.InvCDF(0, 1, Math.Clamp((cell + place) / Cells, 1e-12, 1 - 1e-12));
    }

    private static double[] Build()
    {
        var quantiles = new double[Cells + 1];
        for (int i = 0; i <= Cells; i++)
        {
            quantiles[i] = Normal.InvCDF(0, 1, Math.Clamp((double)i / Cells, 1e-12, 1 - 1e-12));
        }

        return quantiles;
    }
}
