using Leverage.Probability;
using Leverage.Outcomes;
using MathNet.Numerics.RootFinding;

namespace Leverage.BreakLoose;

/// <summary>
/// The torque that breaks a joint loose, as a spread: T = s·G + T_extra. The scale s is scattered by the friction at
/// assembly and by the preload lost since, held as a weighted list; G is lognormal; T_extra is fixed: a locknut's or
/// thread locker's grip, less what heat takes off, which always leaves a hundredth.
/// </summary>
public sealed class BreakLooseTorque
{
    /// <summary>Heat can take nearly all of a torque, but never leaves less than this share of it.</summary>
    internal const double LeastShare = 0.01;

    private readonly double[] _logMedians;
    private readonly double[] _weights;
    private readonly double _sigma;
    private readonly double _extraNmm;
    private readonly SurvivalCurve? _curve;

    internal BreakLooseTorque((double ScaleNmm, double Weight)[] scales, Growth growth, double extraNmm)
    {
        _logMedians = new double[scales.Length];
        _weights = new double[scales.Length];
        var (lowest, highest) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < scales.Length; i++)
        {
            _logMedians[i] = Math.Log(scales[i].ScaleNmm * growth.Median);
            _weights[i] = scales[i].Weight;
            (lowest, highest) = (Math.Min(lowest, _logMedians[i]), Math.Max(highest, _logMedians[i]));
        }

        _sigma = Math.Max(growth.Sigma, 1e-3);
        _extraNmm = extraNmm;
        double least = Math.Exp(lowest);
        LogLow = Log(least * Math.Exp(-6 * _sigma));
        LogHigh = Log(Math.Exp(highest + 6 * _sigma));
        Narrowest = _sigma * least / Math.Max(least, least + _extraNmm);
    }

    private BreakLooseTorque(BreakLooseTorque exact)
    {
        (_logMedians, _weights, _sigma, _extraNmm) = (exact._logMedians, exact._weights, exact._sigma, exact._extraNmm);
        (LogLow, LogHigh, Narrowest) = (exact.LogLow, exact.LogHigh, exact.Narrowest);
        _curve = new SurvivalCurve(LogLow, LogHigh, Narrowest, exact.Exact);
    }

    /// <summary>Smallest log torque at which anything can happen, ln N·mm (six sigmas below the lowest median).</summary>
    public double LogLow { get; }

    /// <summary>Largest log torque that matters, ln N·mm (six sigmas above the highest median).</summary>
    public double LogHigh { get; }

    /// <summary>Narrowest spread of the log torque, for choosing steps.</summary>
    public double Narrowest { get; }

    /// <summary>Log torque at which heat leaves just its least share: the density jumps there. No torque where nothing is taken off.</summary>
    internal double LogJump => _extraNmm < 0 ? Math.Log(-_extraNmm * LeastShare / (1 - LeastShare)) : double.NegativeInfinity;

    /// <summary>Chance that the joint still holds at a torque.</summary>
    /// <param name="torqueNmm">Torque at the nut, N·mm.</param>
    /// <returns>Share of cases that need more, 0 to 1.</returns>
    public double Survival(double torqueNmm) => At(Math.Log(torqueNmm)).Survival;

    /// <summary>Torque below which a share of cases comes loose.</summary>
    /// <param name="share">Share, between 0 and 1.</param>
    /// <returns>Torque, N·mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share)
    {
        Require.Between(share, 1e-6, 1 - 1e-6, nameof(share));
        double log = Brent.FindRoot(u => 1 - share - At(u).Survival, LogLow - 1, LogHigh + 1, 1e-12, 200);
        return Math.Exp(log);
    }

    /// <summary>Log of a scaled torque with the fixed part on it.</summary>
    private double Log(double scaledNmm) => Math.Log(Math.Max(LeastShare * scaledNmm, scaledNmm + _extraNmm));

    /// <summary>The same spread with its curve worked out beforehand, for judging many levers on one nut.</summary>
    /// <returns>A spread whose chances agree with this one's to 1e-7.</returns>
    public BreakLooseTorque Tabulated() => LogJump > LogLow ? this : new(this);

    /// <summary>Survival, and density over the log torque, in one go.</summary>
    internal (double Survival, double Density) At(double logTorque)
    {
        if (_curve?.At(logTorque) is { } known)
        {
            return known;
        }

        SurvivalCurve.Node exact = Exact(logTorque);
        return (exact.Survival, exact.Density);
    }

    private SurvivalCurve.Node Exact(double logTorque)
    {
        double torque = Math.Exp(logTorque);
        double rest = torque - _extraNmm;
        if (rest <= 0)
        {
            return new SurvivalCurve.Node(1, 0, 0);
        }

        double ratio = torque / rest;
        if (rest * LeastShare > torque)
        {
            (rest, ratio) = (torque / LeastShare, 1);
        }

        double log = Math.Log(rest);
        double steepness = ratio / _sigma;
        var (survival, density, slope) = (0.0, 0.0, 0.0);
        for (int i = 0; i < _weights.Length; i++)
        {
            double z = (log - _logMedians[i]) / _sigma;
            var (above, at) = NormalCurve.At(z);
            survival += _weights[i] * above;
            density += _weights[i] * at;
            slope += _weights[i] * at * (1 - ratio - z * steepness);
        }

        return new SurvivalCurve.Node(survival, density * steepness, slope * steepness);
    }
}
