using Leverage.Outcomes;

namespace Leverage.Loosening;

/// <summary>
/// Draws break-loose torques of the same model as <see cref="BreakLooseTorque"/>, but from its scattered inputs one by
/// one: friction at assembly, preload lost since, growth. The integral uses Gauss points for the first two; this does not.
/// </summary>
public sealed class BreakLooseSampler
{
    private const int Cells = 256;
    private const double Reach = 6;

    /// <summary>Log of the scale at friction deviates from −6 to 6; empty where the scale is fixed.</summary>
    private readonly double[] _logScales;
    private readonly double _logMedian;
    private readonly double _sigma;
    private readonly double _extraNmm;

    internal BreakLooseSampler(Func<double, double>? scaleAtDeviate, double fixedScaleNmm, Growth growth, double extraNmm)
    {
        _logMedian = Math.Log(growth.Median) + (scaleAtDeviate is null ? Math.Log(fixedScaleNmm) : 0);
        _sigma = Math.Max(growth.Sigma, 1e-3);
        _extraNmm = extraNmm;
        _logScales = scaleAtDeviate is null ? [] : new double[Cells + 1];
        for (int i = 0; i < _logScales.Length; i++)
        {
            _logScales[i] = Math.Log(scaleAtDeviate!(Reach * (2.0 * i / Cells - 1)));
        }
    }

    /// <summary>The log of one torque, ln N·mm, from 96 random bits.</summary>
    /// <param name="bits">For growth (low half) and friction (high half).</param>
    /// <param name="more">For the preload lost.</param>
    internal double Draw(ulong bits, uint more)
    {
        double log = _logMedian + _sigma * NormalTable.At((uint)bits);
        if (_logScales.Length > 0)
        {
            log += Scale(NormalTable.At((uint)(bits >> 32))) + LogOfRest(BreakLoose.MostPreloadLost * SplitMix.Part * more);
        }

        double scaled = Math.Exp(log);
        return _extraNmm == 0 ? log : Math.Log(Math.Max(BreakLooseTorque.LeastShare * scaled, scaled + _extraNmm));
    }

    private double Scale(double deviate)
    {
        double place = Math.Clamp((deviate / Reach + 1) * (Cells / 2.0), 0, Cells - 1e-9);
        int cell = (int)place;
        return _logScales[cell] + (place - cell) * (_logScales[cell + 1] - _logScales[cell]);
    }

    /// <summary>ln(1 − x) for x up to 0.1, by its series: the rest is under 2e-9.</summary>
    private static double LogOfRest(double x) =>
        -x * (1 + x * (1.0 / 2 + x * (1.0 / 3 + x * (1.0 / 4 + x * (1.0 / 5 + x * (1.0 / 6 + x * (1.0 / 7)))))));
}
