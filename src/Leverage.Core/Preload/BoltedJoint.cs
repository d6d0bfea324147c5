using Leverage.Threads;

namespace Leverage.Preload;

/// <summary>A bolt or stud with its nut, as the numbers of tightening need it; no allocation, for use in loops.</summary>
/// <param name="Joint">Thread and bearing face, mm.</param>
/// <param name="StressDiameterMm">d0, stress diameter, mm, above 0.</param>
/// <param name="YieldMpa">Rp, yield or 0.2 % proof strength, MPa, above 0.</param>
/// <param name="TorsionFactor">m, 1.5 torsion taken plastic, 2 elastic.</param>
public readonly record struct BoltedJoint(Joint Joint, double StressDiameterMm, double YieldMpa, double TorsionFactor)
{
    /// <summary>The joint of a thread and a strength.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearingMm">Db, mean diameter of the bearing face, mm.</param>
    /// <param name="yieldMpa">Rp, yield or 0.2 % proof strength, MPa.</param>
    /// <param name="torsionFactor">m, 1.5 torsion taken plastic, 2 elastic.</param>
    /// <returns>The joint.</returns>
    public static BoltedJoint Of(
        ScrewThread thread, double bearingMm, double yieldMpa, double torsionFactor = TensionAndTorsion.Plastic) =>
        new(thread.Joint(bearingMm), Math.Sqrt(thread.StressAreaMm2 * 4 / Math.PI), yieldMpa, torsionFactor);

    /// <summary>The joint tightened to a share of its yield.</summary>
    /// <param name="yieldShare">ν, above 0 to 1.5.</param>
    /// <param name="friction">μ of thread and face, 0 to 2.</param>
    /// <returns>Preload and torques.</returns>
    public TighteningPoint AtYieldShare(double yieldShare, double friction) =>
        AtPreload(AssemblyPreload.AtYieldShare(yieldShare, YieldMpa, Section(friction)), friction);

    /// <summary>The joint at a preload.</summary>
    /// <param name="preloadN">F, N, 0 or more.</param>
    /// <param name="friction">μ of thread and face, 0 to 2.</param>
    /// <returns>Preload and torques.</returns>
    public TighteningPoint AtPreload(double preloadN, double friction)
    {
        var both = JointFriction.Same(friction);
        return new TighteningPoint(
            friction,
            preloadN,
            JointTorque.Tightening(preloadN, Joint, both),
            JointTorque.PitchPart(preloadN, Joint.LeadMm),
            JointTorque.FacePart(preloadN, friction, Joint.BearingDiameterMm),
            JointTorque.Loosening(preloadN, Joint, both),
            AssemblyPreload.YieldShare(preloadN, YieldMpa, Section(friction)));
    }

    /// <summary>The joint tightened with a torque.</summary>
    /// <param name="torqueNmm">T, N·mm, 0 or more.</param>
    /// <param name="friction">μ of thread and face, 0 to 2.</param>
    /// <returns>Preload and torques.</returns>
    public TighteningPoint AtTorque(double torqueNmm, double friction) =>
        AtPreload(JointTorque.Preload(torqueNmm, Joint, JointFriction.Same(friction)), friction);

    private TensionAndTorsion Section(double friction) => new(
        StressDiameterMm,
        Joint.PitchDiameterMm,
        ThreadGeometry.LeadAngle(Joint.PitchDiameterMm, Joint.LeadMm),
        ThreadFriction.Angle(friction, Joint.HalfAngleRad),
        TorsionFactor);
}

/// <summary>One tightened state of a <see cref="BoltedJoint"/>.</summary>
/// <param name="Friction">μ of thread and face.</param>
/// <param name="PreloadN">F, N.</param>
/// <param name="TorqueNmm">T, N·mm.</param>
/// <param name="PitchPartNmm">F·P/2π, what stretches the bolt, N·mm.</param>
/// <param name="FacePartNmm">Friction under the head or nut, N·mm.</param>
/// <param name="LooseningNmm">Torque that loosens it at the same preload and friction, N·mm.</param>
/// <param name="YieldShare">Share of yield, tension and torsion together.</param>
public readonly record struct TighteningPoint(
    double Friction,
    double PreloadN,
    double TorqueNmm,
    double PitchPartNmm,
    double FacePartNmm,
    double LooseningNmm,
    double YieldShare)
{
    /// <summary>Friction in the thread: what pitch and face leave of the torque, N·mm.</summary>
    public double ThreadPartNmm => TorqueNmm - PitchPartNmm - FacePartNmm;
}
