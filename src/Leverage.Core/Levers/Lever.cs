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

    /// <summary>End of the tool to the middle of the hands, o = min(o_table, L/3).</summary>
    /// <param name="gripOffsetMm">o_table, offset of the stance, mm, 0 or more.</param>
    /// <param name="toolMm">L, square to end of bar or tube, mm, above 0.</param>
    /// <returns>o, mm.</returns>
    /// <remarks>
    /// Valid for: tools held near their end; a short one is held by its outer third.
    /// Source: judgement; a 150 mm key is held at 100 mm and not at 55.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double GripOffset(double gripOffsetMm, double toolMm) =>
        Math.Min(Require.NotNegative(gripOffsetMm, nameof(gripOffsetMm)), Require.Positive(toolMm, nameof(toolMm)) / 3);

    /// <summary>Length of tool that gives a reach, L = r + o, or 3/2·r where the hands take a third of it.</summary>
    /// <param name="reachMm">r, nut's axis to middle of the hands, mm, 0 or more.</param>
    /// <param name="gripOffsetMm">o, offset of the stance, mm, 0 or more.</param>
    /// <returns>L, square to end, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="GripOffset"/>, which it undoes.
    /// Source: geometry.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double NeededLength(double reachMm, double gripOffsetMm) => Math.Min(
        Require.NotNegative(reachMm, nameof(reachMm)) + Require.NotNegative(gripOffsetMm, nameof(gripOffsetMm)), 1.5 * reachMm);

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
