using System.Globalization;

namespace Leverage.Tests;

/// <summary>Compares numbers by their ratio.</summary>
internal static class Near
{
    /// <summary>Fails unless the numbers agree within a share of the larger one.</summary>
    internal static void Equal(double expected, double actual, double share = 1e-10)
    {
        double most = share * Math.Max(Math.Abs(expected), Math.Abs(actual));
        Assert.True(
            Math.Abs(expected - actual) <= most,
            string.Create(CultureInfo.InvariantCulture, $"{actual:R} is not {expected:R} within {share:0.#####E0} of it"));
    }
}
