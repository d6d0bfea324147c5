using Leverage.LoadPath;
using Leverage.Probability;

namespace Leverage.BreakLoose;

/// <summary>Builds the spread of the torque that breaks a fastener loose from what is known of it.</summary>
public static class BreakLooseSpread
{
    /// <summary>Most a joint loses of its preload by settling and relaxation: 10 %, evenly spread from 0 (judgement, within published losses).</summary>
    public const double MostPreloadLost = 0.10;

    /// <summary>Gauss–Legendre rule on 0 to 1, 3 points (Abramowitz and Stegun, Table 25.4).</summary>
    internal static readonly (double Share, double Weight)[] EvenRule =
    [
        (0.11270166537925831, 5.0 / 18), (0.5, 8.0 / 18), (0.88729833462074169, 5.0 / 18),
    ];

    /// <summary>Deviates of a scattered start torque beyond which nothing is counted, and panels they are cut into at most.</summary>
    private const double Deviates = 4.5;
    private const double MostPanels = 20;

    /// <summary>Widest panel, deviates: five points hold the normal itself to 1e-4 on it.</summary>
    private const double WidestPanel = 2;

    /// <summary>Points of a panel of start torques.</summary>
    private static readonly (double Abscissa, double Weight)[] StartRule = GaussNodes.Of(5);

    /// <summary>The spread of a fastener's break-loose torque.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>T = T_L·G + T_extra, or T = T_book·G + T_extra, as its condition says.</returns>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread, or a torque no bolt like this takes.</exception>
    public static BreakLooseTorque Torque(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        var assembly = new JointAssembly(fastener);
        double extra = Extra(fastener);
        Growth growth = GrowthOf(fastener);
        bool onBook = fastener.Condition.Basis == GrowthBasis.Book;
        bool studJudged = Stud(fastener) is not null;
        // What preload is lost then shows in nothing: one case stands for all.
        var losses = onBook && !studJudged ? [(0.5, 1.0)] : EvenRule;
        var cases = new List<NutCase>();
        foreach (var (torque, weight) in StartTorques(fastener, assembly, studJudged ? Math.Min(growth.Sigma, LinkList.StudScatter) : growth.Sigma))
        {
            AssembledJoint joint = assembly.At(torque);
            double shift = extra + HeatShift(joint);
            foreach (var (share, lostWeight) in losses)
            {
                double left = 1 - MostPreloadLost * share;
                double scale = onBook ? joint.BookNmm : joint.LooseningNmm * left;
                cases.Add(new NutCase(weight * lostWeight, Math.Log(scale), shift, ShankState.Of(joint, fastener, left, extra)));
            }
        }

        return new BreakLooseTorque([.. cases], new GrowthCurve(growth));
    }

    /// <summary>The joint as it was made, at the median of its torque, nothing lost yet.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>Friction, preload and torques.</returns>
    /// <exception cref="Reading.InputException">A torque no bolt like this takes.</exception>
    public static AssembledJoint Joint(Fastener fastener)
    {
        var assembly = new JointAssembly(fastener);
        return assembly.At(Median(fastener, assembly));
    }

    /// <summary>State of the shank before anything was lost: what a table of limits shows.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>The state.</returns>
    /// <exception cref="Reading.InputException">As <see cref="Torque"/>.</exception>
    public static ShankState ShankOf(Fastener fastener) => ShankState.Of(Joint(fastener), fastener, 1, Extra(fastener));

    /// <summary>Torque that twists the bolt or stud off where it has no tension.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>T_p by the least tensile strength, its own median; null where thread or grade is not known.</returns>
    public static Strength? Stud(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        return fastener is { Thread: { } thread, Grade: { TensileMpa: > 0 } grade }
            ? LinkList.Stud(thread, grade).Strength
            : null;
    }

    /// <summary>Torque that holds besides the joint: locknut and thread locker, N·mm.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>T_extra, N·mm.</returns>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread.</exception>
    public static double Extra(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
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

    /// <summary>G of a fastener, after its soak if there was one.</summary>
    /// <remarks>On the basis of the book torque a clean joint lies lower still: there it never is the bound.</remarks>
    internal static Growth GrowthOf(Fastener fastener) =>
        fastener.Soaked ? fastener.Condition.Growth.Soaked(Condition.Named("clean").Growth) : fastener.Condition.Growth;

    /// <summary>Torque that heat takes off (below 0) or puts on: the clean joint's part follows the preload, rust does not.</summary>
    internal static double HeatShift(AssembledJoint joint) => joint.LooseningNmm * (joint.PreloadShare - 1);

    private static double Median(Fastener fastener, JointAssembly assembly)
    {
        double book = fastener.BookTorque.NewtonMillimeters;
        return fastener.BookTorqueSigma > 0 ? Math.Min(book, assembly.MostNmm) : book;
    }

    /// <summary>Start torques and their weights: one where it is given, else Gauss panels of its logarithm, finer than what else scatters and parted at each bend.</summary>
    private static (double TorqueNmm, double Weight)[] StartTorques(Fastener fastener, JointAssembly assembly, double narrowest)
    {
        double book = fastener.BookTorque.NewtonMillimeters;
        double sigma = fastener.BookTorqueSigma;
        if (!(sigma > 0))
        {
            return [(book, 1)];
        }

        double width = Math.Clamp(3 * narrowest / sigma, 2 * Deviates / MostPanels, WidestPanel);
        var points = new List<(double Deviate, double Weight)>();
        double from = -Deviates;
        foreach (double to in assembly.BendsNmm.Select(bend => Math.Log(bend / book) / sigma).Append(Deviates).Where(z => z is > -Deviates and <= Deviates).Order())
        {
            int panels = (int)Math.Ceiling((to - from) / width);
            double step = (to - from) / panels;
            points.AddRange(Enumerable.Range(0, panels).SelectMany(
                panel => StartRule.Select(node => (from + step * (panel + node.Abscissa), step * node.Weight))));
            from = to;
        }

        double whole = points.Sum(one => one.Weight * Math.Exp(-one.Deviate * one.Deviate / 2));
        return [.. points.Select(one => (
            Math.Min(assembly.MostNmm, book * Math.Exp(sigma * one.Deviate)), one.Weight * Math.Exp(-one.Deviate * one.Deviate / 2) / whole))];
    }
}
