using MathNet.Numerics.RootFinding;

namespace Leverage.Probability;

/// <summary>Where a function that rises or falls passes 0, by Brent's method.</summary>
internal static class Root
{
    /// <summary>How near, in the function's argument.</summary>
    private const double Accuracy = 1e-12;

    private const int MostSteps = 200;

    /// <summary>The argument between two at which it is 0; it is of unlike signs there.</summary>
    internal static double Between(double low, double high, Func<double, double> function) =>
        Brent.FindRoot(function, low, high, Accuracy, MostSteps);

    /// <summary>The same, or null where it does not change its sign between them.</summary>
    internal static double? Find(double low, double high, Func<double, double> function) =>
        Brent.TryFindRoot(function, low, high, Accuracy, MostSteps, out double root) ? root : null;
}
