namespace Leverage.Probability;

/// <summary>A lognormal strength ready to be read at many log torques.</summary>
internal readonly struct LogNormalCurve
{
    private readonly double _logMedian;
    private readonly double _perSigma;

    internal LogNormalCurve(Strength strength)
    {
        _logMedian = Math.Log(strength.MedianNmm);
        _perSigma = 1 / strength.Sigma;
        Sigma = strength.Sigma;
    }

    /// <summary>σ of the logarithm.</summary>
    internal double Sigma { get; }

    /// <summary>Log torque below which it certainly holds.</summary>
    internal double Low => _logMedian - Strength.Tail * Sigma;

    /// <summary>Log torque above which it has certainly given.</summary>
    internal double High => _logMedian + Strength.Tail * Sigma;

    /// <summary>Survival, and density over the log torque.</summary>
    internal (double Survival, double Density) At(double logTorque)
    {
        var (survival, density) = NormalCurve.At((logTorque - _logMedian) * _perSigma);
        return (survival, density * _perSigma);
    }
}
