using Leverage.Probability;
using MathNet.Numerics.RootFinding;

namespace Leverage.BreakLoose;

/// <summary>
/// The torque that breaks a nut loose, after what it and its like have shown: a mixture of lognormals cut off below what it
/// has held, moved up by what holds besides the joint.
/// </summary>
/// <remarks>
/// Valid for: like nuts of one machine, each that came cleared of the rest before the next.
/// Source: Bayes' rule: normal mean with known variance, censored and truncated observations (Gelman and others, Bayesian Data Analysis, 3rd ed., sections 2.5 and 8.7; memory).
/// Checked by: shared/checks/shown.csv.
/// </remarks>
public sealed class ShownTorque
{
    /// <summary>Deviates beyond which a part is taken as certain.</summary>
    private const double Tail = Strength.Tail;

    private readonly LogNormalPart[] _parts;
    private readonly double _extraNmm;
    private readonly double _logFloor = double.NegativeInfinity;
    private readonly SurvivalCurve _curve;

    /// <summary>What the next nut takes.</summary>
    /// <param name="prior">What was believed before, of the torque without the extra: at least one part, shares summing to 1.</param>
    /// <param name="extraNmm">T_extra, N·mm, 0 or more: locker and locknut.</param>
    /// <param name="shown">What was shown.</param>
    /// <param name="within">Share of each part's variance that is nut to nut, 0.01 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; a nut came below the extra torque.</exception>
    public ShownTorque(IReadOnlyList<LogNormalPart> prior, double extraNmm, Shown shown, double within = Shown.Within)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(shown);
        _extraNmm = Require.NotNegative(extraNmm, nameof(extraNmm));
        foreach (LogNormalPart part in prior)
        {
            Require.Finite(part.LogMedian, nameof(prior));
            Require.Positive(part.Sigma, nameof(prior));
            Require.Positive(part.Weight, nameof(prior));
        }

        _parts = LikeNuts.After(
            prior,
            Require.Between(within, 0.01, 1, nameof(within)),
            [.. shown.CameNmm.Select(came => Math.Log(Require.Positive(came - extraNmm, nameof(shown))))],
            [.. shown.AlikeHeldNmm.Select(held => Require.NotNegative(held, nameof(shown)) - extraNmm).Where(rest => rest > 0).Select(rest => Math.Log(rest))]);
        if (Require.NotNegative(shown.HeldNmm, nameof(shown)) - extraNmm is > 0 and var stood)
        {
            _logFloor = Math.Log(stood);
            _parts = Standing(_parts, _logFloor);
        }

        Narrowest = _parts.Min(part => part.Sigma);
        double lowest = Math.Exp(Math.Max(_logFloor, _parts.Min(part => part.LogMedian - Tail * part.Sigma)));
        double highest = Math.Exp(_parts.Max(Highest));
        LogLow = Math.Log(lowest + _extraNmm);
        LogHigh = Math.Log(highest + _extraNmm);
        _curve = new SurvivalCurve(LogLow, LogHigh, Narrowest * lowest / (lowest + _extraNmm), Exact);
    }

    /// <summary>Smallest log torque at which anything can happen, ln N·mm; where it has held, that torque: the density begins there with a step.</summary>
    public double LogLow { get; }

    /// <summary>Largest log torque that matters, ln N·mm.</summary>
    public double LogHigh { get; }

    /// <summary>Narrowest σ of its parts, for choosing steps.</summary>
    public double Narrowest { get; }

    /// <summary>Chance that it needs more than a torque.</summary>
    /// <param name="torqueNmm">Torque at the nut, N·mm, above 0.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public double Survival(double torqueNmm) => Exact(Math.Log(Require.Positive(torqueNmm, nameof(torqueNmm)))).Survival;

    /// <summary>The torque below which a share of such nuts comes loose.</summary>
    /// <param name="share">Share, between 0 and 1.</param>
    /// <returns>Torque, N·mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double Quantile(double share)
    {
        Require.Between(share, 1e-6, 1 - 1e-6, nameof(share));
        return Math.Exp(Brent.FindRoot(log => 1 - share - Exact(log).Survival, LogLow - 1e-9, LogHigh, 1e-12, 200));
    }

    /// <summary>Survival, and density over the log torque, within 1e-8.</summary>
    internal (double Survival, double Density) At(double logTorque) =>
        logTorque <= LogLow ? (1, 0) : _curve.At(logTorque) ?? (0, 0);

    /// <summary>The parts weighed by their chance of standing so much.</summary>
    private static LogNormalPart[] Standing(LogNormalPart[] parts, double logFloor)
    {
        double[] logs = [.. parts.Select(part => Math.Log(part.Weight) + NormalTail.Log((logFloor - part.LogMedian) / part.Sigma))];
        double most = logs.Max();
        double sum = logs.Sum(log => Math.Exp(log - most));
        return [.. parts.Select((part, i) => part with { Weight = Math.Exp(logs[i] - most) / sum })];
    }

    /// <summary>Where a part, cut off below the floor, has one in 1e11 left.</summary>
    private double Highest(LogNormalPart part)
    {
        double from = Math.Max(0, (_logFloor - part.LogMedian) / part.Sigma);
        return part.LogMedian + part.Sigma * Math.Sqrt(from * from + Tail * Tail);
    }

    private SurvivalCurve.Node Exact(double logTorque)
    {
        double torque = Math.Exp(logTorque);
        double rest = torque - _extraNmm;
        double log = rest > 0 ? Math.Log(rest) : double.NegativeInfinity;
        if (rest <= 0 || log < _logFloor)
        {
            return new SurvivalCurve.Node(1, 0, 0);
        }

        double ratio = torque / rest;
        var (survival, density, slope) = (0.0, 0.0, 0.0);
        foreach (LogNormalPart part in _parts)
        {
            double z = (log - part.LogMedian) / part.Sigma;
            double atFloor = double.IsFinite(_logFloor) ? NormalTail.Log((_logFloor - part.LogMedian) / part.Sigma) : 0;
            double steepness = ratio / part.Sigma;
            double at = part.Weight * Math.Exp(-z * z / 2 - atFloor) / Math.Sqrt(2 * Math.PI) * steepness;
            survival += part.Weight * Math.Exp(NormalTail.Log(z) - atFloor);
            density += at;
            slope += at * (1 - ratio - z * steepness);
        }

        return new SurvivalCurve.Node(survival, density, slope);
    }
}
