using Leverage.Friction;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using Leverage.Preload;

namespace Leverage.BreakLoose;

/// <summary>Builds the spread of the torque that breaks a fastener loose from what is known of it.</summary>
public static class BreakLooseSpread
{
    /// <summary>Most a joint loses of its preload by settling and relaxation: 10 %, evenly spread from 0 (judgement, within published losses).</summary>
    public const double MostPreloadLost = 0.10;

    /// <summary>Loosening over tightening torque with no thread known: 40 % + 50 % − 10 % of the common split.</summary>
    public const double CommonSplitShare = 0.40 + 0.50 - 0.10;

    /// <summary>Smallest loosening share used: a joint that would undo itself is taken as nearly free.</summary>
    private const double LeastShare = 0.01;

    /// <summary>Gauss–Hermite rule for a standard normal, 7 points (Abramowitz and Stegun, Table 25.10, scaled by √2).</summary>
    internal static readonly (double Deviate, double Weight)[] NormalRule =
    [
        (-3.7504397177257425, 0.0005482688559722179), (-2.3667594107345413, 0.030757123967586497),
        (-1.1544053947399682, 0.24012317860501272), (0, 0.45714285714285713),
        (1.1544053947399682, 0.24012317860501272), (2.3667594107345413, 0.030757123967586497),
        (3.7504397177257425, 0.0005482688559722179),
    ];

    /// <summary>Gauss–Legendre rule on 0 to 1, 3 points (Abramowitz and Stegun, Table 25.4).</summary>
    internal static readonly (double Share, double Weight)[] EvenRule =
    [
        (0.11270166537925831, 5.0 / 18), (0.5, 8.0 / 18), (0.88729833462074169, 5.0 / 18),
    ];

    /// <summary>The spread of a fastener's break-loose torque.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>T = T_L·G + T_extra, or T = T0·G + T_extra, as its condition says.</returns>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread.</exception>
    public static BreakLooseTorque Torque(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        double book = fastener.BookTorque.NewtonMillimeters;
        var scales = fastener.Condition.Basis == GrowthBasis.Book
            ? [(book, 1.0)]
            : Scales(fastener, book);
        return new BreakLooseTorque(scales, GrowthOf(fastener), Extra(fastener) + HeatShift(fastener, book));
    }

    /// <summary>Draws from the same model, input by input, for the Monte Carlo cross-check.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>The sampler.</returns>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread.</exception>
    public static BreakLooseSampler Sampler(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        double book = fastener.BookTorque.NewtonMillimeters;
        double extra = Extra(fastener) + HeatShift(fastener, book);
        if (fastener.Condition.Basis == GrowthBasis.Book)
        {
            return new BreakLooseSampler(null, book, GrowthOf(fastener), extra);
        }

        double sigma = fastener.Friction.Sigma;
        return new BreakLooseSampler(
            deviate => book * Share(fastener.Thread, Math.Min(2, fastener.Friction.Likely * Math.Exp(sigma * deviate))),
            book,
            GrowthOf(fastener),
            extra);
    }

    /// <summary>Torque that holds besides the joint: locknut and thread locker, N·mm.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>T_extra, N·mm.</returns>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread.</exception>
    public static double Extra(Fastener fastener)
    {
        double locker = fastener.Condition.LockerNm;
        if (locker > 0 && fastener.Thread is null)
        {
            throw new Reading.InputException(
                "condition",
                $"'{fastener.Condition.Key}' needs the thread: a locker's grip grows with the diameter.",
                new Reading.Cure("thread", "M24x1.5"));
        }

        return fastener.Prevailing.NewtonMillimeters
            + (fastener.Thread is { } thread ? ThreadLocker.Torque(1000 * locker, thread.DiameterMm) : 0);
    }

    /// <summary>Loosening over tightening torque at one friction, at least a hundredth.</summary>
    /// <param name="thread">The thread; null for the common split.</param>
    /// <param name="friction">Friction at assembly.</param>
    /// <returns>T_L/T0.</returns>
    public static double Share(ScrewThread? thread, double friction) => thread is null
        ? CommonSplitShare
        : Math.Max(LeastShare, JointTorque.LooseningShare(
            thread.Joint(HexagonCatalog.Bearing(thread).BearingMm), JointFriction.Same(friction)));

    private static (double ScaleNmm, double Weight)[] Scales(Fastener fastener, double bookNmm)
    {
        var scales = new List<(double, double)>();
        foreach (var (friction, weight) in Frictions(fastener))
        {
            double share = Share(fastener.Thread, friction);
            foreach (var (lost, lostWeight) in EvenRule)
            {
                scales.Add((bookNmm * share * (1 - MostPreloadLost * lost), weight * lostWeight));
            }
        }

        return [.. scales];
    }

    private static IEnumerable<(double Friction, double Weight)> Frictions(Fastener fastener)
    {
        if (fastener.Thread is null)
        {
            return [(fastener.Friction.Likely, 1)];
        }

        double sigma = fastener.Friction.Sigma;
        return NormalRule.Select(point =>
            (Math.Min(2, fastener.Friction.Likely * Math.Exp(sigma * point.Deviate)), point.Weight));
    }

    private static Growth GrowthOf(Fastener fastener) =>
        fastener.Soaked ? SoakedGrowth(fastener) : fastener.Condition.Growth;

    /// <summary>Soaked growth on the condition's own basis; "clean" is brought to that basis first.</summary>
    private static Growth SoakedGrowth(Fastener fastener)
    {
        Growth clean = Condition.Named("clean").Growth;
        if (fastener.Condition.Basis == GrowthBasis.Book)
        {
            double share = Share(fastener.Thread, fastener.Friction.Likely) * (1 - MostPreloadLost / 2);
            clean = clean with { Median = clean.Median * share };
        }

        return fastener.Condition.Growth.Soaked(clean);
    }

    /// <summary>Torque that heat takes off (below 0) or puts on: the clean joint's part follows the preload, rust does not.</summary>
    private static double HeatShift(Fastener fastener, double bookNmm)
    {
        if (fastener.Heating is not { } heating || fastener.Thread is not { } thread)
        {
            return 0;
        }

        double share = Share(thread, fastener.Friction.Likely);
        double ratio = BoltedGrip.Of(thread, fastener.Grip, fastener.Clamped).ComplianceRatio;
        return bookNmm * share * (heating.PreloadShare(PreloadStress(fastener, thread, bookNmm), ratio) - 1);
    }

    /// <summary>Stress the book torque put into the thread at the likely friction, MPa.</summary>
    internal static double PreloadStress(Fastener fastener, ScrewThread thread, double bookNmm)
    {
        var joint = thread.Joint(HexagonCatalog.Bearing(thread).BearingMm);
        double preload = JointTorque.Preload(bookNmm, joint, JointFriction.Same(fastener.Friction.Likely));
        return preload / thread.StressAreaMm2;
    }
}
