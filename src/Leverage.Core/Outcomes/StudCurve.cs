using Leverage.BreakLoose;
using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>The stud, case by case of its nut: what it stands depends on the tension still there, what twists it on the clamp.</summary>
internal sealed class StudCurve
{
    private readonly LogNormalCurve _plastic;

    internal StudCurve(BreakLooseTorque nut, Strength plastic)
    {
        _plastic = new LogNormalCurve(plastic);
        (Low, High, Sigma) = (double.PositiveInfinity, double.NegativeInfinity, plastic.Sigma);
        foreach (NutCase one in nut.Cases)
        {
            Low = Math.Min(Low, Math.Log(one.Shank.LimitAtNut(Math.Exp(_plastic.Low))));
            High = Math.Max(High, Math.Log(one.Shank.LimitAtNut(Math.Exp(_plastic.High))));
            Sigma = Math.Min(Sigma, plastic.Sigma * Math.Min(1, one.Shank.ThreadShare / one.Shank.GrownShare));
        }
    }

    /// <summary>Narrowest spread over the log torque at the nut.</summary>
    internal double Sigma { get; }

    /// <summary>Log torque at the nut below which it certainly holds.</summary>
    internal double Low { get; }

    /// <summary>Log torque at the nut above which it has certainly gone.</summary>
    internal double High { get; }

    /// <summary>Survival, and density over the log torque at the nut, in one case.</summary>
    internal (double Survival, double Density) At(in NutCase one, double torqueNmm)
    {
        double shank = one.Shank.Torque(torqueNmm);
        var (survival, density) = _plastic.At(Math.Log(shank / one.Shank.StandsShare));
        return (survival, density * one.Shank.LogSlope(torqueNmm, shank));
    }
}
