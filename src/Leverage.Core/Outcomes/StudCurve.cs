using Leverage.BreakLoose;
using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>The stud, case by case of its nut: what it stands depends on the tension still there, what twists it on the clamp.</summary>
internal sealed class StudCurve
{
    /// <summary>Least jump of a case's density, times its weight, that parts a panel: one below it moves no chance by 1e-6.</summary>
    private const double LeastJump = 1e-4;

    private readonly LogNormalCurve _plastic;
    private readonly double _stands;
    private readonly double _gone;

    internal StudCurve(BreakLooseTorque nut, Strength plastic)
    {
        _plastic = new LogNormalCurve(plastic);
        (_stands, _gone) = (Math.Exp(_plastic.Low), Math.Exp(_plastic.High));
        (Low, High, Sigma) = (double.PositiveInfinity, double.NegativeInfinity, plastic.Sigma);
        var breaks = new List<double>(nut.Breaks);
        foreach (NutCase one in nut.Cases)
        {
            Low = Math.Min(Low, Math.Log(one.Shank.LimitAtNut(_stands)));
            High = Math.Max(High, Math.Log(one.Shank.LimitAtNut(_gone)));
            double clean = one.Shank.ExtraNmm + one.Shank.LooseningNmm;
            if (one.Weight * JumpAt(one.Shank, clean) > LeastJump)
            {
                breaks.Add(Math.Log(clean));
            }

            breaks.Add(Math.Log(one.Shank.ExtraNmm));
            Sigma = Math.Min(Sigma, plastic.Sigma * one.Shank.ThreadShare / one.Shank.GrownShare);
        }

        // With no locknut and no locker there is no logarithm.
        Breaks = [.. breaks.Where(double.IsFinite).Distinct().Order()];
    }

    /// <summary>Log torques at which a density jumps: the nut's, and where the shank begins to take another share of the torque.</summary>
    internal IReadOnlyList<double> Breaks { get; }

    /// <summary>Narrowest spread over the log torque at the nut.</summary>
    internal double Sigma { get; }

    /// <summary>Log torque at the nut below which it certainly holds.</summary>
    internal double Low { get; }

    /// <summary>Log torque at the nut above which it has certainly gone.</summary>
    internal double High { get; }

    /// <summary>Jump of the density over the log torque where the rust's own share sets in.</summary>
    private double JumpAt(in ShankState shank, double cleanNmm)
    {
        double twist = shank.Torque(cleanNmm);
        double density = _plastic.At(Math.Log(twist / shank.StandsShare)).Density;
        return density * Math.Abs(shank.GrownShare - shank.ThreadShare) * cleanNmm / twist;
    }

    /// <summary>Survival, and density over the log torque at the nut, in one case.</summary>
    internal (double Survival, double Density) At(in NutCase one, double torqueNmm)
    {
        double shank = one.Shank.Torque(torqueNmm);
        double load = shank / one.Shank.StandsShare;
        if (load <= _stands || load >= _gone)
        {
            return (load <= _stands ? 1 : 0, 0);
        }

        var (survival, density) = _plastic.At(Math.Log(load));
        return (survival, density * one.Shank.LogSlope(torqueNmm, shank));
    }
}
