using Leverage.Threads;

namespace Leverage.Preload;

/// <summary>Torque and preload of a screw joint, with the exact helix.</summary>
public static class JointTorque
{
    /// <summary>Tightening torque, T = F·[d2/2·tan(φ + ρ') + μb·Db/2].</summary>
    /// <param name="preloadN">F, preload, N, 0 or more.</param>
    /// <param name="joint">Thread and bearing face, mm.</param>
    /// <param name="friction">Friction of thread and face.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: any single- or multi-start thread that does not jam (φ + ρ' below a right angle).
    /// Source: VDI 2230-1 and ISO 16047 (their linear form is lower by at most 0.54 % at friction 0.14 and 0.74 % at 0.20); Shigley, 9th ed., Eq. 8-26.
    /// Checked by: shared/checks/power-screws.csv, shared/checks/tightening.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the thread would jam.</exception>
    public static double Tightening(double preloadN, Joint joint, JointFriction friction) =>
        Require.NotNegative(preloadN, nameof(preloadN)) * TighteningArm(joint, friction);

    /// <summary>Loosening torque, T = F·[d2/2·tan(ρ' − φ) + μb·Db/2].</summary>
    /// <param name="preloadN">F, preload still in the joint, N, 0 or more.</param>
    /// <param name="joint">Thread and bearing face, mm.</param>
    /// <param name="friction">Friction of thread and face.</param>
    /// <returns>T, N·mm; negative where the joint would run back by itself.</returns>
    /// <remarks>
    /// Valid for: the same friction as in tightening; age and rust come on top.
    /// Source: VDI 2230-1; Shigley, 9th ed., Eq. 8-2; ISO 16047 for the symbols.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the thread would jam.</exception>
    public static double Loosening(double preloadN, Joint joint, JointFriction friction) =>
        Require.NotNegative(preloadN, nameof(preloadN)) * LooseningArm(joint, friction);

    /// <summary>Preload that a tightening torque buys, F = T/[d2/2·tan(φ + ρ') + μb·Db/2].</summary>
    /// <param name="torqueNmm">T, tightening torque, N·mm, 0 or more.</param>
    /// <param name="joint">Thread and bearing face, mm.</param>
    /// <param name="friction">Friction of thread and face.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Tightening"/>.
    /// Source: VDI 2230-1.
    /// Checked by: shared/checks/tightening.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the thread would jam.</exception>
    public static double Preload(double torqueNmm, Joint joint, JointFriction friction) =>
        Require.NotNegative(torqueNmm, nameof(torqueNmm)) / TighteningArm(joint, friction);

    /// <summary>The part of the tightening torque that stretches the bolt, F·l/(2π).</summary>
    /// <param name="preloadN">F, preload, N, 0 or more.</param>
    /// <param name="leadMm">l, lead, mm, above 0.</param>
    /// <returns>Pitch part, N·mm.</returns>
    /// <remarks>
    /// Valid for: any screw; follows from the work done in one turn.
    /// Source: ISO 16047; VDI 2230-1.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PitchPart(double preloadN, double leadMm) =>
        Require.NotNegative(preloadN, nameof(preloadN)) * Require.Positive(leadMm, nameof(leadMm)) / (2 * Math.PI);

    /// <summary>The part of the torque lost under the head or nut, F·μb·Db/2.</summary>
    /// <param name="preloadN">F, preload, N, 0 or more.</param>
    /// <param name="faceFriction">μb, friction of the bearing face, 0 to 2.</param>
    /// <param name="bearingDiameterMm">Db, mean diameter of the face, mm, 0 or more.</param>
    /// <returns>Face part, N·mm.</returns>
    /// <remarks>
    /// Valid for: flat ring faces.
    /// Source: ISO 16047; Shigley, 9th ed., Eq. 8-6.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FacePart(double preloadN, double faceFriction, double bearingDiameterMm) =>
        Require.NotNegative(preloadN, nameof(preloadN)) * Require.Between(faceFriction, 0, 2, nameof(faceFriction))
            * Require.NotNegative(bearingDiameterMm, nameof(bearingDiameterMm)) / 2;

    /// <summary>Efficiency of raising, e = F·l/(2π·T).</summary>
    /// <param name="preloadN">F, axial force, N, 0 or more.</param>
    /// <param name="leadMm">l, lead, mm, above 0.</param>
    /// <param name="torqueNmm">T, torque that raises it, N·mm, above 0.</param>
    /// <returns>e, 0 to 1 for any real torque.</returns>
    /// <remarks>
    /// Valid for: any screw.
    /// Source: Shigley, 9th ed., Eq. 8-4.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Efficiency(double preloadN, double leadMm, double torqueNmm) =>
        PitchPart(preloadN, leadMm) / Require.Positive(torqueNmm, nameof(torqueNmm));

    /// <summary>Share of the tightening torque that loosening takes, T_L/T_T, at unchanged friction and preload.</summary>
    /// <param name="joint">Thread and bearing face, mm.</param>
    /// <param name="friction">Friction of thread and face.</param>
    /// <returns>The ratio; 0.75 to 0.92 for usual bolts and axle nuts.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Tightening"/>.
    /// Source: quotient of the two torques of VDI 2230-1.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the thread would jam.</exception>
    public static double LooseningShare(Joint joint, JointFriction friction) =>
        LooseningArm(joint, friction) / TighteningArm(joint, friction);

    private static double TighteningArm(Joint joint, JointFriction friction) =>
        joint.PitchDiameterMm / 2 * Math.Tan(Jamming(Lead(joint) + Flank(joint, friction))) + Face(joint, friction);

    private static double LooseningArm(Joint joint, JointFriction friction) =>
        joint.PitchDiameterMm / 2 * Math.Tan(Flank(joint, friction) - Lead(joint)) + Face(joint, friction);

    private static double Lead(Joint joint) => ThreadGeometry.LeadAngle(joint.PitchDiameterMm, joint.LeadMm);

    private static double Flank(Joint joint, JointFriction friction) =>
        ThreadFriction.Angle(friction.Thread, joint.HalfAngleRad);

    private static double Face(Joint joint, JointFriction friction) =>
        FacePart(1, friction.Face, joint.BearingDiameterMm);

    private static double Jamming(double angleRad) => Require.Slope(angleRad, "lead plus friction angle");
}
