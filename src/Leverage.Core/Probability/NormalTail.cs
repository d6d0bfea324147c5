using MathNet.Numerics;

namespace Leverage.Probability;

/// <summary>The upper tail of the standard normal, also where it is too small for a double.</summary>
internal static class NormalTail
{
    /// <summary>Deviate from which on the continued fraction is used.</summary>
    private const double Far = 10;

    /// <summary>Chance of more than z.</summary>
    internal static double Above(double z) => 0.5 * SpecialFunctions.Erfc(z / Constants.Sqrt2);

    /// <summary>Logarithm of the chance of more than z; beyond 10 by the continued fraction of Mills' ratio (Abramowitz and Stegun, 26.2.14).</summary>
    internal static double Log(double z)
    {
        if (z < Far)
        {
            return Math.Log(Above(z));
        }

        double fraction = z;
        for (int k = 30; k > 0; k--)
        {
            fraction = z + k / fraction;
        }

        return -z * z / 2 - Math.Log(fraction) - 0.5 * Math.Log(2 * Math.PI);
    }
}
