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
        double? root = Root.Find(0, 1, share => median(share) - Risk.LeastNmm);
        double stands = root ?? 1;
        LogNormalCurve Of(double strength) => new(risk.Strength with { MedianNmm = Math.Max(Risk.LeastNmm, strength) });
        _parts = [.. Even.Select(node => (stands * node.Weight, Of(median(stands * node.Abscissa))))];
        if (root is not null)
        {
            _parts = [.. _parts, (1 - stands, Of(Risk.LeastNmm))];
        }

        (Low, High) = (_parts.Min(part => part.Curve.Low), _parts.Max(part => part.Curve.High));
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
