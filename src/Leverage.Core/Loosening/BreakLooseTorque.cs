using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace Leverage.Loosening;

/// <summary>
/// The torque that breaks a joint loose, as a spread: T = s·G + T_extra. The scale s is scattered by the friction at
/// assembly and by the preload lost since, held as a weighted list; G is lognormal; T_extra is fixed: a locknut's or thread locker's grip,
/// less what heat takes off.
/// </summary>
public sealed class BreakLooseTorque
{
    private readonly double[] _logMedians;
    private readonly double[] _weights;
    private readonly double _sigma;
    private readonly double _extraNmm;

    internal BreakLooseTorque(IReadOnlyList<(double ScaleNmm, double Weight)> scales, Growth growth, double extraNmm)
    {
        _logMedians = new double[scales.Count];
        _weights = new double[scales.Count];
        for (int i = 0; i < scales.Count; i++)
        {
            _logMedians[i] = Math.Log(scales[i].ScaleNmm * growth.Median);
            _weights[i] = scales[i].Weight;
        }

        _sigma = Math.Max(growth.Sigma, 1e-3);
        _extraNmm = extraNmm;
    }

    /// <summary>Smallest log torque at which anything can happen, ln N·mm (six sigmas below the lowest median).</summary>
    public double LogLow => Log(Math.Exp(_logMedians.Min() - 6 * _sigma));

    /// <summary>Largest log torque that matters, ln N·mm (six sigmas above the highest median).</summary>
    public double LogHigh => Log(Math.Exp(_logMedians.Max() + 6 * _sigma));

    /// <summary>Narrowest spread of the log torque, for choosing steps.</summary>
    public double Narrowest
    {
        get
        {
            double scaled = Math.Exp(_logMedians.Min());
            return _sigma * scaled / Math.Max(scaled, scaled + _extraNmm);
        }
    }

    /// <summary>Chance that the joint still holds at a torque.</summary>
    /// <param name="torqueNmm">Torque at the nut, N·mm.</param>
    /// <returns>Share of cases that need more, 0 to 1.</returns>
    public double Survival(double torqueNmm) => At(torqueNmm).Survival;

    /// <summary>Torque below which a share of cases comes loose.</summary>
    /// <param name="share">Share, between 0 and 1.</param>
    /// <returns>Torque, N·mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share)
    {
        Require.Between(share, 1e-6, 1 - 1e-6, nameof(share));
        double log = Brent.FindRoot(u => 1 - share - Survival(Math.Exp(u)), LogLow - 1, LogHigh + 1, 1e-12, 200);
        return Math.Exp(log);
    }

    /// <summary>Log of a scaled torque with the fixed part on it; heat can take nearly all, never below a hundredth.</summary>
    private double Log(double scaledNmm) => Math.Log(Math.Max(0.01 * scaledNmm, scaledNmm + _extraNmm));

    /// <summary>Survival, and density over the log torque, in one go.</summary>
    internal (double Survival, double Density) At(double torqueNmm)
    {
        double rest = torqueNmm - _extraNmm;
        if (rest <= 0)
        {
            return (1, 0);
        }

        double log = Math.Log(rest);
        double survival = 0;
        double density = 0;
        for (int i = 0; i < _weights.Length; i++)
        {
            double z = (log - _logMedians[i]) / _sigma;
            survival += _weights[i] * Normal.CDF(0, 1, -z);
            density += _weights[i] * Normal.PDF(0, 1, z);
        }

        return (survival, density / _sigma * torqueNmm / rest);
    }
}
