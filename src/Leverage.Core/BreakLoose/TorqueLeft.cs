namespace Leverage.BreakLoose;

/// <summary>Torque once the nut moves.</summary>
public static class TorqueLeft
{
    /// <summary>Share of the break-loose torque that is left after a turn, q·[1 − min(1, T_L/T)·min(1, φ/φ0)].</summary>
    /// <param name="runningShare">q, torque once moving over torque to start, 0 to 1.</param>
    /// <param name="clampShare">T_L/T, the clamp's own torque over the break-loose torque, 0 or more.</param>
    /// <param name="turnedRad">φ, turn since it broke loose, rad, 0 or more.</param>
    /// <param name="unclampedRad">φ0, turn at which all clamp is gone, rad, above 0.</param>
    /// <returns>The share, 0 to q; past φ0 only what rust adds.</returns>
    /// <remarks>
    /// Valid for: the clamp let go in step with the turn; q by condition, not measured.
    /// Source: the nut's travel by its pitch against the compliance of bolt and clamped parts, VDI 2230-1.
    /// Checked by: shared/checks/breaking-loose.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Share(double runningShare, double clampShare, double turnedRad, double unclampedRad) =>
        Require.Between(runningShare, 0, 1, nameof(runningShare))
            * (1 - Math.Min(1, Require.NotNegative(clampShare, nameof(clampShare)))
                * Math.Min(1, Require.NotNegative(turnedRad, nameof(turnedRad)) / Require.Positive(unclampedRad, nameof(unclampedRad))));
}
