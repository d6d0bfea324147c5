using Leverage.BreakLoose;
using Leverage.Probability;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;

namespace Leverage.Assessments;

/// <summary>What a nut takes, worked out once for all levers.</summary>
/// <param name="Spread">Spread of the break-loose torque.</param>
/// <param name="LowNmm">10th percentile, N·mm.</param>
/// <param name="LikelyNmm">Median, N·mm.</param>
/// <param name="HighNmm">90th percentile, N·mm.</param>
/// <param name="RunningShare">q, torque once moving over torque to start.</param>
public sealed record NutFigures(
    BreakLooseTorque Spread, double LowNmm, double LikelyNmm, double HighNmm, double RunningShare)
{
    /// <summary>Chance to hold a torque below which it is taken for a slip of the pen (judgement).</summary>
    private const double LeastHeld = 1e-6;

    /// <summary>The joint as it was made.</summary>
    public AssembledJoint Joint { get; init; }

    /// <summary>State of the bolt or stud before anything was lost.</summary>
    public ShankState Shank { get; init; }

    /// <summary>Torque that twists it off without tension; null where its strength is not known.</summary>
    public Strength? Stud { get; init; }

    /// <summary>Torque at the nut that twists it off, N·mm; null where its strength is not known.</summary>
    public double? StudLimitNmm => Stud is { } stud ? Shank.LimitAtNut(stud.MedianNmm) : null;

    /// <summary>Turn after which all clamp is gone, rad; null where the thread is not known.</summary>
    public double? ClampGoneRad { get; init; }

    /// <summary>Share of the break-loose torque that is left after a turn.</summary>
    /// <param name="turnedRad">φ, rad.</param>
    /// <param name="torqueNmm">Torque that broke it loose, N·mm.</param>
    /// <returns>q while the clamp is not known to go, else less.</returns>
    public double ShareLeft(double turnedRad, double torqueNmm) => ClampGoneRad is { } gone && gone > 0
        ? TorqueLeft.Share(RunningShare, Joint.LooseningNmm / torqueNmm, turnedRad, gone)
        : RunningShare;

    /// <summary>The figures of a fastener.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <returns>Its figures.</returns>
    /// <exception cref="InputException">It cannot have held what it is said to have, or like nuts have come at.</exception>
    public static NutFigures Of(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        BreakLooseTorque spread = Shown(fastener);
        AssembledJoint joint = BreakLooseSpread.Joint(fastener);
        return new NutFigures(
            spread, spread.Quantile(0.1), spread.Quantile(0.5), spread.Quantile(0.9), fastener.Condition.RunningShare)
        {
            Joint = joint,
            ClampGoneRad = fastener.Thread is { } thread
                ? BoltedGrip.Of(thread, fastener.Grip, fastener.Clamped).AngleRad(joint.PreloadN)
                : null,
            Shank = BreakLooseSpread.ShankOf(fastener),
            Stud = BreakLooseSpread.Stud(fastener),
        };
    }

    /// <summary>
    /// The figures once it is soaked. It stays as tight among its kind as it has shown itself dry: past that share of all soaked nuts it
    /// is still fast. Like nuts came dry, each as far from the median of its own state.
    /// </summary>
    internal static NutFigures Soaked(Fastener dry)
    {
        Fastener wet = dry with { Soaked = true, HeldNmm = 0 };
        if (dry.CameNmm.Count > 0)
        {
            BreakLooseTorque before = BreakLooseSpread.Torque(dry);
            double besides = before.BesidesNmm;
            double left = (BreakLooseSpread.Torque(wet).Quantile(0.5) - besides) / (before.Quantile(0.5) - besides);
            wet = wet with { CameNmm = [.. dry.CameNmm.Select(came => besides + left * (came - besides))] };
        }

        NutFigures soaked = Of(wet);
        double share = 1 - Shown(dry with { HeldNmm = 0 }).Survival(dry.HeldNmm);
        return share > LeastHeld ? Of(wet with { HeldNmm = soaked.Spread.Quantile(share) }) : soaked;
    }

    /// <summary>What it takes after what it and like nuts have shown; what none of its kind could show is refused.</summary>
    private static BreakLooseTorque Shown(Fastener fastener)
    {
        BreakLooseTorque spread = BreakLooseSpread.Torque(fastener);
        if (fastener.CameNmm.Count > 0)
        {
            spread = fastener.CameNmm.Min() > spread.BesidesNmm
                ? spread.HavingSeen(fastener.CameNmm, [])
                : throw new InputException(LooseningFields.Came.Name, "a nut comes loose above what its locknut or locker holds alone. Check both.");
        }

        return fastener.HeldNmm <= 0 ? spread
            : spread.Survival(fastener.HeldNmm) >= LeastHeld ? spread.HavingHeld(fastener.HeldNmm)
            : throw new InputException(LooseningFields.Held.Name, "no nut tightened to this torque holds that much. Check both.");
    }
}
