using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>A risk ready to be read at many log torques: one lognormal, or the mean of several where a further input is even.</summary>
internal readonly struct RiskCurve
{
    /// <summary>Gauss points over the even input.</summary>
    private const int Points = 8;

    private static readonly (double Abscissa, double Weight)[] Even = GaussNodes.Of(Points);
    private readonly LogNormalCurve _one;
    private readonly (double Weight, LogNormalCurve Curve)[]? _parts;

    internal RiskCurve(Risk risk)
    {
        _one = new LogNormalCurve(risk.Strength);
        (Low, High, Sigma) = (_one.Low, _one.High, _one.Sigma);
        if (risk.MedianAt is not { } median)
        {
            return;
        }

        // Where the input leaves nothing to stand on, that part of the cases is one more curve.
        double stands = Root.Find(0, 1, share => median(share) - Risk.LeastNmm) ?? 1;
        _parts = new (double, LogNormalCurve)[stands < 1 ? Points + 1 : Points];
        (Low, High) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < _parts.Length; i++)
        {
            double strength = i < Points ? Math.Max(Risk.LeastNmm, median(stands * Even[i].Abscissa)) : Risk.LeastNmm;
            var curve = new LogNormalCurve(risk.Strength with { MedianNmm = strength });
            _parts[i] = (i < Points ? stands * Even[i].Weight : 1 - stands, curve);
            (Low, High) = (Math.Min(Low, curve.Low), Math.Max(High, curve.High));
        }
    }

    /// <summary>σ of the logarithm.</summary>
    internal double Sigma { get; }

    /// <summary>Log torque below which it certainly holds.</summary>
    internal double Low { get; }

    /// <summary>Log torque above which it has certainly given.</summary>
    internal double High { get; }

    /// <summary>Survival, and density over the log torque.</summary>
    internal (double Survival, double Density) At(double logTorque)
    {
        if (_parts is null)
        {
            return _one.At(logTorque);
        }

        var (survival, density) = (0.0, 0.0);
        foreach (var (weight, curve) in _parts)
        {
            var (above, at) = curve.At(logTorque);
            survival += weight * above;
            density += weight * at;
        }

        return (survival, density);
    }
}
