namespace Leverage.Preload;

/// <summary>A known mass hung on a level bar instead of a torque wrench.</summary>
public static class HangingWeight
{
    /// <summary>Standard gravity, m/s² (ISO 80000-3; CGPM 1901).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Where to hang it, x = T/(m·g).</summary>
    /// <param name="torqueNmm">T, torque wanted, N·mm, 0 or more.</param>
    /// <param name="massKg">m, hung mass, kg, above 0.</param>
    /// <returns>x, distance from the nut's axis along the level bar, mm.</returns>
    /// <remarks>
    /// Valid for: a level bar, the mass at rest; the bar's own weight comes on top.
    /// Source: statics; standard gravity of CGPM 1901.
    /// Checked by: shared/checks/adapters.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Distance(double torqueNmm, double massKg) =>
        Require.NotNegative(torqueNmm, nameof(torqueNmm))
            / (Require.Positive(massKg, nameof(massKg)) * StandardGravity);
}
