namespace Leverage.Tubes;

/// <summary>Local denting of a tube where a bar's end presses on it.</summary>
public static class TubeDent
{
    /// <summary>Resistance at a dent depth, R = (σy·t²/4)·√(D/t)·c1·(w/D)^c2, c1 = 22 + 1.2·B/D, c2 = 1.925/(3.5 + B/D).</summary>
    /// <param name="yieldMpa">σy, yield of the tube, MPa, above 0.</param>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <param name="contactMm">B, length of the contact along the tube, mm, 0 or more; 0 for a bar's edge.</param>
    /// <param name="depthShare">w/D, dent depth as a share of the diameter, above 0 to 0.5.</param>
    /// <returns>R, N.</returns>
    /// <remarks>
    /// Valid for: the tube away from its ends; finite elements find 1.5 to 2.1 times this at the bar's tip and
    /// 0.8 to 1.2 times at the free mouth, where 0.7 of it is used.
    /// Source: DNV-RP-C204, local denting of tubular members.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Resistance(
        double yieldMpa, double outsideMm, double wallMm, double contactMm, double depthShare)
    {
        Require.Positive(outsideMm - 2 * Require.Positive(wallMm, nameof(wallMm)), nameof(outsideMm));
        double spread = Require.NotNegative(contactMm, nameof(contactMm)) / Require.Positive(outsideMm, nameof(outsideMm));
        double depth = Require.Between(Require.Positive(depthShare, nameof(depthShare)), 0, 0.5, nameof(depthShare));
        return Characteristic(yieldMpa, wallMm) * Math.Sqrt(outsideMm / wallMm)
            * (22 + 1.2 * spread) * Math.Pow(depth, 1.925 / (3.5 + spread));
    }

    /// <summary>Force at the mouth that starts to mark the lip, R = σy·t²/3.6.</summary>
    /// <param name="yieldMpa">σy, yield of the tube, MPa, above 0.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>R, N: a mark, not a failure.</returns>
    /// <remarks>
    /// Valid for: sharp-edged mouths on bars of about half the bore.
    /// Source: finite elements, lip stress of 2.5 to 3.8 R/t² (converged).
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double MarkForce(double yieldMpa, double wallMm) => Characteristic(yieldMpa, wallMm) / 0.9;

    private static double Characteristic(double yieldMpa, double wallMm) =>
        Require.Positive(yieldMpa, nameof(yieldMpa)) * Require.Positive(wallMm, nameof(wallMm)) * wallMm / 4;
}
