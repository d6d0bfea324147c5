using Leverage.Probability;

namespace Leverage.BreakLoose;

/// <summary>
/// The torque that breaks a joint loose, as a spread: T = s·G + T_shift. It is a weighted list of cases of start torque
/// and preload lost, each with its own s and its own state of the shank; G is scattered alike in all. T_shift is fixed: a
/// locknut's or thread locker's grip, less what heat takes off, which always leaves a hundredth. What the nut and its like
/// have shown cuts it off and moves it.
/// </summary>
/// <remarks>
/// Valid for: like nuts of one machine, each that came cleared of the rest before the next.
/// Source: Bayes' rule: normal mean with known variance, censored and truncated observations (Gelman and others, Bayesian Data Analysis, 3rd ed., sections 2.5 and 8.7; memory).
/// Checked by: shared/checks/shown.csv.
/// </remarks>
public sealed class BreakLooseTorque
{
    /// <summary>Heat can take nearly all of a torque, but never leaves less than this share of it.</summary>
    internal const double LeastShare = 0.01;

    private readonly NutCase[] _cases;
    private readonly GrowthCurve _growth;
    private readonly double _logHeld;

    internal BreakLooseTorque(NutCase[] cases, GrowthCurve growth, double heldNmm = 0)
    {
        (_cases, _growth, _logHeld) = (cases, growth, Math.Log(heldNmm));
        var (low, high, narrowest) = (double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);
        var breaks = new List<double>();
        foreach (NutCase one in cases)
        {
            double least = Math.Exp(one.LogScale + growth.LogLow);
            low = Math.Min(low, Math.Log(Shifted(least, one.ShiftNmm)));
            high = Math.Max(high, Math.Log(Shifted(Math.Exp(one.LogScale + growth.HighAbove(Math.Log(Math.Max(0, heldNmm - one.ShiftNmm)) - one.LogScale)), one.ShiftNmm)));
            narrowest = Math.Min(narrowest, growth.Sigma * least / Math.Max(least, least + one.ShiftNmm));
            breaks.Add(Math.Log(-one.ShiftNmm * LeastShare / (1 - LeastShare)));
        }

        (LogLow, LogHigh, Narrowest) = (Math.Max(low, _logHeld), high, narrowest);

        // Where heat takes nothing off, or nothing was held, there is no logarithm and no jump.
        Breaks = [.. breaks.Append(_logHeld).Where(double.IsFinite).Distinct().Order()];
    }

    /// <summary>Smallest log torque at which the nut can turn, ln N·mm (six sigmas below the lowest median).</summary>
    public double LogLow { get; }

    /// <summary>Largest log torque that matters, ln N·mm (six sigmas above the highest median).</summary>
    public double LogHigh { get; }

    /// <summary>Narrowest spread of the log torque, for choosing steps.</summary>
    public double Narrowest { get; }

    /// <summary>Log torques at which the density jumps: where heat leaves just its least share, and what the nut has held.</summary>
    internal IReadOnlyList<double> Breaks { get; }

    /// <summary>The cases.</summary>
    internal ReadOnlySpan<NutCase> Cases => _cases;

    /// <summary>What holds besides the joint, a locknut or a locker, N·mm.</summary>
    internal double BesidesNmm => Math.Max(0, _cases[0].ShiftNmm);

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
        return Math.Exp(Root.Between(LogLow, LogHigh, u => 1 - share - At(u).Survival));
    }

    /// <summary>The same nut after it has held a torque: what lies below is cut off, and cases that would have come weigh less.</summary>
    /// <param name="torqueNmm">Torque it held, N·mm, 0 or more.</param>
    /// <returns>The spread of what it takes now.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It could not have held that.</exception>
    public BreakLooseTorque HavingHeld(double torqueNmm)
    {
        Require.Between(torqueNmm, 0, Math.Exp(LogHigh), nameof(torqueNmm));
        double held = Math.Max(torqueNmm, Math.Exp(_logHeld));
        double log = Math.Log(held);
        double whole = Require.Positive(At(log).Survival, nameof(torqueNmm));
        var cases = new NutCase[_cases.Length];
        for (int i = 0; i < cases.Length; i++)
        {
            cases[i] = _cases[i] with { Weight = _cases[i].Weight / whole };
        }

        return new BreakLooseTorque(cases, _growth, held);
    }

    /// <summary>The same nut after like nuts of its machine came loose at some torques, each cleared first, or held at others.</summary>
    /// <param name="cameNmm">Torques they came at, N·mm, each above what holds besides the joint.</param>
    /// <param name="heldNmm">Torques they stood without moving, N·mm.</param>
    /// <param name="within">Share of the variance that is nut to nut, 0.01 to 1.</param>
    /// <returns>Each case moved by its own part of what they share, and weighed by how well it explains them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is not above what holds besides the joint; a value is outside its range.</exception>
    public BreakLooseTorque HavingSeen(IReadOnlyList<double> cameNmm, IReadOnlyList<double> heldNmm, double within = LikeNuts.Within)
    {
        ArgumentNullException.ThrowIfNull(cameNmm);
        ArgumentNullException.ThrowIfNull(heldNmm);
        double shift = BesidesNmm;
        double median = _growth.LogMedian;
        var (parts, sigma) = LikeNuts.After(
            [.. _cases.Select(one => new LogNormalPart(one.LogScale + median, one.Weight))],
            _growth.Sigma,
            Require.Between(within, 0.01, 1, nameof(within)),
            [.. cameNmm.Select(came => Math.Log(Require.Positive(came - shift, nameof(cameNmm))))],
            [.. heldNmm.Select(held => Math.Log(Require.NotNegative(held, nameof(heldNmm)) - shift)).Where(double.IsFinite)]);
        NutCase[] cases = [.. parts.Select(one => _cases[one.Prior] with { LogScale = one.Part.LogMedian - median, Weight = one.Part.Weight })];
        return new BreakLooseTorque(cases, new GrowthCurve(new Growth(Math.Exp(median), sigma)), Math.Exp(_logHeld));
    }

    /// <summary>Survival, and density over the log torque, all cases together.</summary>
    internal (double Survival, double Density) At(double logTorque)
    {
        var (survival, density) = (0.0, 0.0);
        foreach (NutCase one in _cases)
        {
            var (above, at) = At(one, logTorque);
            survival += above;
            density += at;
        }

        return (survival, density);
    }

    /// <summary>Survival, and density over the log torque, of one case, times its weight.</summary>
    internal (double Survival, double Density) At(in NutCase one, double logTorque) =>
        logTorque < _logHeld ? (Exact(one, _logHeld).Survival, 0) : Exact(one, logTorque);

    /// <summary>Share of a case's growths that is cut off because the nut has held.</summary>
    internal double ShareCutOff(int which) => 1 - At(_cases[which], _logHeld).Survival / _cases[which].Weight;

    /// <summary>Share of a case's growths, none cut off, that a torque moves.</summary>
    internal double ShareBelow(int which, double logTorque) => 1 - Exact(_cases[which], logTorque).Survival / _cases[which].Weight;

    /// <summary>Torque of a case at a share of its growths, none cut off, N·mm.</summary>
    internal double TorqueAt(int which, double share) =>
        Shifted(Math.Exp(_cases[which].LogScale + _growth.LogAt(share)), _cases[which].ShiftNmm);

    /// <summary>A scaled torque with the fixed part on it.</summary>
    internal static double Shifted(double scaledNmm, double shiftNmm) => Math.Max(LeastShare * scaledNmm, scaledNmm + shiftNmm);

    private (double Survival, double Density) Exact(in NutCase one, double logTorque)
    {
        double log = logTorque;
        double ratio = 1;
        if (one.ShiftNmm != 0)
        {
            double torque = Math.Exp(logTorque);
            double rest = torque - one.ShiftNmm;
            if (rest <= 0)
            {
                return (one.Weight, 0);
            }

            ratio = torque / rest;
            if (rest * LeastShare > torque)
            {
                (rest, ratio) = (torque / LeastShare, 1);
            }

            log = Math.Log(rest);
        }

        var (survival, density) = _growth.At(log - one.LogScale);
        return (one.Weight * survival, one.Weight * density * ratio);
    }
}

/// <summary>One case of a nut: how it was tightened and what it has lost since.</summary>
/// <param name="Weight">Its share of all cases.</param>
/// <param name="LogScale">ln s, what G multiplies, ln N·mm.</param>
/// <param name="ShiftNmm">Fixed part, N·mm.</param>
/// <param name="Shank">State of the bolt or stud.</param>
internal readonly record struct NutCase(double Weight, double LogScale, double ShiftNmm, ShankState Shank);
