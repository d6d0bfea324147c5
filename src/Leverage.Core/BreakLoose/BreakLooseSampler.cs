using Leverage.Outcomes;

namespace Leverage.BreakLoose;

/// <summary>
/// Draws break-loose torques of the same model as <see cref="BreakLooseTorque"/>, but from its scattered inputs one by
/// one: friction at assembly, preload lost since, growth. The integral uses Gauss points for the first two; this does not.
/// </summary>
public sealed class BreakLooseSampler
{
    /// <summary>Cells of the tables: of preload lost, whose logarithm bends by 2e-8 between two edges, and of the scale.</summary>
    private const int Cells = 256;

    /// <summary>Friction deviates up to which the scale is worked out.</summary>
    private const double Reach = 8;

    private static readonly double[] LogRests =
        [.. Enumerable.Range(0, Cells + 1).Select(i => Math.Log(1 - BreakLooseSpread.MostPreloadLost * i / Cells))];

    /// <summary>Log of the scale by friction; null where the scale is fixed.</summary>
    private readonly NormalTable? _logScale;
    private readonly double _logMedian;
    private readonly double _sigma;
    private readonly double _extraNmm;

    internal BreakLooseSampler(Func<double, double>? scaleAtDeviate, double fixedScaleNmm, Growth growth, double extraNmm)
    {
        _logMedian = Math.Log(growth.Median) + (scaleAtDeviate is null ? Math.Log(fixedScaleNmm) : 0);
        _sigma = Math.Max(growth.Sigma, 1e-3);
        _extraNmm = extraNmm;
        _logScale = scaleAtDeviate is null ? null : new NormalTable(LogScales(scaleAtDeviate));
    }

    /// <summary>The log of one torque, ln N·mm, from 96 random bits.</summary>
    /// <param name="bits">For growth (low half) and friction (high half).</param>
    /// <param name="more">For the preload lost.</param>
    internal double Draw(ulong bits, uint more)
    {
        double log = _logMedian + _sigma * NormalTable.Deviate.At((uint)bits);
        if (_logScale is not null)
        {
            log += _logScale.At((uint)(bits >> 32)) + LogRest(SplitMix.Part * more);
        }

        return _extraNmm == 0 ? log : WithExtra(Math.Exp(log));
    }

    private double WithExtra(double scaled) => Math.Log(Math.Max(BreakLooseTorque.LeastShare * scaled, scaled + _extraNmm));

    /// <summary>The log of the scale between its values at a few hundred deviates: worked out each time it would take looking threads up.</summary>
    private static Func<double, double> LogScales(Func<double, double> scaleAtDeviate)
    {
        double[] logs = [.. Enumerable.Range(0, Cells + 1).Select(i => Math.Log(scaleAtDeviate(Reach * (2.0 * i / Cells - 1))))];
        return deviate => Between(logs, (deviate / Reach + 1) / 2);
    }

    /// <summary>Log of the share of the preload that is left.</summary>
    private static double LogRest(double share) => Between(LogRests, share);

    private static double Between(double[] edges, double share)
    {
        double place = share * Cells;
        int cell = (int)place;
        double low = edges[cell];
        return low + (place - cell) * (edges[cell + 1] - low);
    }
}
