namespace Leverage.Levers;

/// <summary>A straight lever on a nut: force, reach and torque.</summary>
public static class Lever
{
    /// <summary>Torque at the nut, T = F·r·cos θ.</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="reachMm">r, nut's axis to middle of the hands, mm, 0 or more.</param>
    /// <param name="angleRad">θ, between the pull and the normal to the lever, rad, short of a right angle.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: the lever square to the nut's axis.
    /// Source: statics.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double forceN, double reachMm, double angleRad) =>
        Require.NotNegative(forceN, nameof(forceN)) * Require.NotNegative(reachMm, nameof(reachMm))
            * Math.Cos(Require.Slope(angleRad, nameof(angleRad)));

    /// <summary>Reach needed for a torque, r = T/(F·cos θ).</summary>
    /// <param name="torqueNmm">T, torque at the nut, N·mm, 0 or more.</param>
    /// <param name="forceN">F, force of the hands, N, above 0.</param>
    /// <param name="angleRad">θ, between the pull and the normal to the lever, rad, short of a right angle.</param>
    /// <returns>r, nut's axis to middle of the hands, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Torque"/>.
    /// Source: statics.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double NeededReach(double torqueNmm, double forceN, double angleRad) =>
        Require.NotNegative(torqueNmm, nameof(torqueNmm))
            / (Require.Positive(forceN, nameof(forceN)) * Math.Cos(Require.Slope(angleRad, nameof(angleRad))));

    /// <summary>Reach of a bar with a tube on it, r = bar + tube − overlap − grip offset.</summary>
    /// <param name="barMm">Square to end of the bar, mm, above 0.</param>
    /// <param name="tubeMm">Length of the tube, mm, 0 with none.</param>
    /// <param name="overlapMm">How far the tube goes on, mm, 0 or more.</param>
    /// <param name="gripOffsetMm">End of the lever to middle of the hands, mm, 0 or more.</param>
    /// <returns>r, mm.</returns>
    /// <remarks>
    /// Valid for: hands at the far end.
    /// Source: geometry.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or nothing is left to hold.</exception>
    public static double Reach(double barMm, double tubeMm, double overlapMm, double gripOffsetMm)
    {
        Require.Positive(barMm, nameof(barMm));
        Require.NotNegative(tubeMm, nameof(tubeMm));
        Require.NotNegative(overlapMm, nameof(overlapMm));
        Require.NotNegative(gripOffsetMm, nameof(gripOffsetMm));
        return Require.Positive(barMm + tubeMm - overlapMm - gripOffsetMm, nameof(gripOffsetMm));
    }

    /// <summary>Torque of the lever's own weight when level, T = m·g·x.</summary>
    /// <param name="massKg">m, mass of bar or tube, kg, 0 or more.</param>
    /// <param name="centreMm">x, nut's axis to its centre of mass, mm, 0 or more.</param>
    /// <returns>T, N·mm; it helps a push down and hinders a lift.</returns>
    /// <remarks>
    /// Valid for: a level lever.
    /// Source: statics; standard gravity of CGPM 1901.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double WeightTorque(double massKg, double centreMm) =>
        Require.NotNegative(massKg, nameof(massKg)) * Preload.HangingWeight.StandardGravity
            * Require.NotNegative(centreMm, nameof(centreMm));
}
