using Leverage.Threads;

namespace Leverage.Preload;

/// <summary>The geometry that turns preload into torque: thread and bearing face.</summary>
/// <param name="PitchDiameterMm">d2, pitch diameter, mm, above 0.</param>
/// <param name="LeadMm">l, lead, mm, above 0; the pitch for a single-start thread.</param>
/// <param name="HalfAngleRad">β, half the angle between the flanks, rad.</param>
/// <param name="BearingDiameterMm">Db, mean diameter of the bearing face, mm, 0 or more; 0 leaves face friction out.</param>
public readonly record struct Joint(double PitchDiameterMm, double LeadMm, double HalfAngleRad, double BearingDiameterMm);

/// <summary>Friction of a joint as it is tightened or loosened.</summary>
/// <param name="Thread">μt, friction of the thread, 0 to 2.</param>
/// <param name="Face">μb, friction of the bearing face, 0 to 2.</param>
public readonly record struct JointFriction(double Thread, double Face)
{
    /// <summary>The same friction in the thread and under the head.</summary>
    /// <param name="friction">μ, 0 to 2.</param>
    /// <returns>Both frictions equal.</returns>
    public static JointFriction Same(double friction) => new(friction, friction);
}

/// <summary>A thread as the formulas of preload and torque take it.</summary>
public static class ThreadedJoint
{
    extension(ScrewThread thread)
    {
        /// <summary>Thread and bearing face as the torque formulas take them.</summary>
        /// <param name="bearingDiameterMm">Db, mean diameter of the bearing face, mm.</param>
        /// <returns>The joint.</returns>
        public Joint Joint(double bearingDiameterMm) =>
            new(thread.PitchDiameterMm, thread.PitchMm, ThreadFriction.HalfAngle60Rad, bearingDiameterMm);

        /// <summary>The bolt's section under tension and torsion.</summary>
        /// <param name="threadFriction">μt, friction of the thread.</param>
        /// <param name="torsionFactor">1.5 plastic, 2 elastic.</param>
        /// <returns>The section.</returns>
        public TensionAndTorsion Section(double threadFriction, double torsionFactor) => new(
            thread.StressDiameterMm,
            thread.PitchDiameterMm,
            ThreadGeometry.LeadAngle(thread.PitchDiameterMm, thread.PitchMm),
            ThreadFriction.Angle(threadFriction, ThreadFriction.HalfAngle60Rad),
            torsionFactor);
    }
}
