using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Stiffness;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>A joint as one torque left it, before it lost any preload.</summary>
/// <param name="Friction">μa, friction at assembly; raised where the torque asked for more than yield.</param>
/// <param name="FrictionRaised">Whether it was raised: friction was higher than given, or the bolt has stretched.</param>
/// <param name="FrictionNow">μn, friction now.</param>
/// <param name="PreloadN">F, N; 0 with no thread known.</param>
/// <param name="StressMpa">σ = F/As, MPa; 0 with no thread known.</param>
/// <param name="LooseningNmm">T_L of the joint without rust, N·mm.</param>
/// <param name="BookNmm">What a growth on the book basis multiplies, N·mm.</param>
/// <param name="ThreadShare">s, share of T_L that sits in the thread.</param>
/// <param name="PreloadShare">Preload after heating over preload before; 1 where nothing is heated.</param>
public readonly record struct AssembledJoint(
    double Friction,
    bool FrictionRaised,
    double FrictionNow,
    double PreloadN,
    double StressMpa,
    double LooseningNmm,
    double BookNmm,
    double ThreadShare,
    double PreloadShare)
{
    /// <summary>Whether the turn after the torque took the bolt past yield.</summary>
    public bool TurnedPastYield { get; init; }
}

/// <summary>A fastener's joint, ready to be tightened to any torque.</summary>
public sealed class JointAssembly
{
    /// <summary>Least friction of a joint whose lubricant is gone (as <see cref="FrictionRange.Default"/>; judgement).</summary>
    public const double WornFriction = FrictionRange.Default;

    /// <summary>Share of a tightening torque that stretches the bolt where no thread is known.</summary>
    internal const double CommonPitchPart = 0.10;

    /// <summary>Share of it that is friction of the thread.</summary>
    internal const double CommonThreadPart = 0.40;

    /// <summary>Share of it that is friction of the face.</summary>
    internal const double CommonFacePart = 0.50;

    /// <summary>Loosening over tightening torque with no thread known: both frictions less the pitch.</summary>
    public const double CommonSplitShare = CommonThreadPart + CommonFacePart - CommonPitchPart;

    /// <summary>The thread's share of that: its friction less the pitch.</summary>
    public const double CommonThreadShare = (CommonThreadPart - CommonPitchPart) / CommonSplitShare;

    /// <summary>Smallest loosening share used: a joint that would undo itself is taken as nearly free.</summary>
    private const double LeastShare = 0.01;

    private readonly Fastener _fastener;
    private readonly Joint _joint;
    private readonly double _stressDiameterMm;
    private readonly double _complianceRatio;
    private readonly BoltedGrip _grip;
    private readonly BoltedJoint? _turned;

    /// <summary>The joint of a fastener.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <exception cref="Reading.InputException">A turn without a thread or a grade, or a grip that is none for its thread.</exception>
    public JointAssembly(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        _fastener = fastener;
        if (fastener is { Then: not null } and not { Thread: not null, Grade.YieldMpa: > 0 })
        {
            throw new Reading.InputException(
                "torque", "the turn after it is of no use without the thread and its grade.", new Reading.Cure("thread", "M14x1.5"));
        }

        if (fastener.Thread is not { } thread)
        {
            return;
        }

        _joint = thread.Joint(HexagonCatalog.Bearing(thread).BearingMm);
        _stressDiameterMm = thread.StressDiameterMm;
        if (fastener is { Heating: null, Then: null })
        {
            return;
        }

        _grip = BoltedGrip.Of(thread, fastener.Grip, fastener.Clamped);
        _complianceRatio = _grip.ComplianceRatio;
        _turned = fastener.Then is null ? null : new BoltedJoint(_joint, _stressDiameterMm, fastener.Grade!.YieldMpa, TensionAndTorsion.Plastic);
    }

    /// <summary>Most torque that any friction believed can explain, N·mm; infinite where thread or yield is not known.</summary>
    public double MostNmm => YieldNmm(AssemblyFriction.Most);

    /// <summary>Torques past which a joint begins to follow another rule, N·mm: its friction is raised, passes that of a worn joint, is believed no longer.</summary>
    internal double[] BendsNmm => [YieldNmm(_fastener.Friction.Likely), YieldNmm(WornFriction), MostNmm];

    /// <summary>Torque that just yields the bolt at a friction, N·mm; infinite where thread or yield is not known.</summary>
    private double YieldNmm(double friction) => _fastener.Grade is { YieldMpa: > 0 } grade ? YieldNmm(grade, friction) : double.PositiveInfinity;

    private double YieldNmm(Grade grade, double friction) => _fastener.Thread is { } thread
        ? JointTorque.Tightening(
            AssemblyPreload.AtYieldShare(1, grade.YieldMpa, thread.Section(friction, TensionAndTorsion.Plastic)), _joint, JointFriction.Same(friction))
        : double.PositiveInfinity;

    /// <summary>The weakest of the stronger grades that takes a torque at a friction without yielding; null where none does.</summary>
    internal Grade? TakenBy(double torqueNmm, double friction) => _fastener is { Thread: { } thread, Grade: { } grade }
        ? GradeCatalog.StrongerFor(thread).FirstOrDefault(other => other.YieldMpa > grade.YieldMpa && YieldNmm(other, friction) >= torqueNmm)
        : null;

    /// <summary>The joint as a torque left it.</summary>
    /// <param name="torqueNmm">T0, N·mm, above 0.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="Reading.InputException">No friction up to 1 explains the torque.</exception>
    public AssembledJoint At(double torqueNmm)
    {
        double given = _fastener.Friction.Likely;
        if (_fastener.Thread is not { } thread)
        {
            return new AssembledJoint(given, false, given, 0, 0, CommonSplitShare * torqueNmm, torqueNmm, CommonThreadShare, 1);
        }

        double friction = _fastener.Grade is { YieldMpa: > 0 } grade ? Believed(torqueNmm, grade, given) : given;
        double now = _fastener.KeepsLubricant ? friction : Math.Max(WornFriction, friction);
        double first = JointTorque.Preload(torqueNmm, _joint, JointFriction.Same(friction));
        TurnedJoint? turned = _turned is { } bolt ? TurnedJoint.After(bolt, _grip, first, _fastener.Then!.Value.Radians, friction) : null;
        double preload = turned?.PreloadN ?? first;
        double loosening = JointTorque.Loosening(preload, _joint, JointFriction.Same(now));
        double inThread = loosening - JointTorque.FacePart(preload, now, _joint.BearingDiameterMm);
        double least = LeastShare * JointTorque.Tightening(preload, _joint, JointFriction.Same(now));
        double stress = preload / thread.StressAreaMm2;
        return new AssembledJoint(
            friction,
            friction > given,
            now,
            preload,
            stress,
            Math.Max(least, loosening),
            JointTorque.Tightening(preload, _joint, JointFriction.Same(Math.Max(WornFriction, friction))),
            Math.Max(LeastShare, inThread / Math.Max(least, loosening)),
            _fastener.Heating?.PreloadShare(stress, _complianceRatio) ?? 1)
        {
            TurnedPastYield = turned?.Yields ?? false,
        };
    }

    private double Believed(double torqueNmm, Grade grade, double friction)
    {
        try
        {
            return AssemblyFriction.Believed(torqueNmm, _joint, _stressDiameterMm, grade.YieldMpa, friction);
        }
        catch (Reading.InputException)
        {
            string most = FormattableString.Invariant($"{Math.Floor(MostNmm / 1000)}");
            throw new Reading.InputException(
                "torque",
                $"{_fastener.Thread!.Printed} of grade {grade.Name} takes at most {most} N·m, however rough the thread: look up torque, unit and thread.",
                TakenBy(torqueNmm, AssemblyFriction.Most) is { } stronger ? new Reading.Cure("grade", stronger.Name) : new Reading.Cure("torque", $"{most}Nm"));
        }
    }
}
