namespace Leverage.Tubes;

/// <summary>A round tube in bending.</summary>
public static class TubeSection
{
    /// <summary>Area, A = π/4·(D² − di²), di = D − 2t.</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>A, mm².</returns>
    /// <remarks>
    /// Valid for: round tubes of even wall.
    /// Source: EN 10210-2 annex B.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static double Area(double outsideMm, double wallMm) => Math.PI / 4 * Powers(outsideMm, wallMm, 2);

    /// <summary>Second moment of area, I = π/64·(D⁴ − di⁴).</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>I, mm⁴.</returns>
    /// <remarks>
    /// Valid for: round tubes of even wall.
    /// Source: EN 10210-2 annex B.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static double Inertia(double outsideMm, double wallMm) => Math.PI / 64 * Powers(outsideMm, wallMm, 4);

    /// <summary>Elastic section modulus, Z = 2·I/D.</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>Z, mm³.</returns>
    /// <remarks>
    /// Valid for: round tubes of even wall; times yield it gives the moment at first yield.
    /// Source: EN 10210-2 annex B.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static double ElasticModulus(double outsideMm, double wallMm) => 2 * Inertia(outsideMm, wallMm) / outsideMm;

    /// <summary>Plastic section modulus, Zp = (D³ − di³)/6.</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>Zp, mm³.</returns>
    /// <remarks>
    /// Valid for: tubes compact enough not to buckle first, see <see cref="IsCompact"/>.
    /// Source: EN 10210-2 annex B.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static double PlasticModulus(double outsideMm, double wallMm) => Powers(outsideMm, wallMm, 3) / 6;

    /// <summary>Mass of steel tube, m' = 0.0246615·(D − t)·t.</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <returns>m', kg/m.</returns>
    /// <remarks>
    /// Valid for: steel of 7850 kg/m³.
    /// Source: EN 10220; ASTM A53.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static double MassPerMetre(double outsideMm, double wallMm)
    {
        Bore(outsideMm, wallMm);
        return 0.0246615 * (outsideMm - wallMm) * wallMm;
    }

    /// <summary>Whether the tube reaches its full plastic moment before it buckles: D/t ≤ 50·235/σy.</summary>
    /// <param name="outsideMm">D, outside diameter, mm, above twice the wall.</param>
    /// <param name="wallMm">t, wall, mm, above 0.</param>
    /// <param name="yieldMpa">σy, yield strength, MPa, above 0.</param>
    /// <returns>True for a class 1 section.</returns>
    /// <remarks>
    /// Valid for: structural steel tubes.
    /// Source: EN 1993-1-1 Table 5.2, tubular sections.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or no bore is left.</exception>
    public static bool IsCompact(double outsideMm, double wallMm, double yieldMpa)
    {
        Bore(outsideMm, wallMm);
        return outsideMm / wallMm <= 50 * 235 / Require.Positive(yieldMpa, nameof(yieldMpa));
    }

    private static double Powers(double outsideMm, double wallMm, int power) =>
        Math.Pow(outsideMm, power) - Math.Pow(Bore(outsideMm, wallMm), power);

    private static double Bore(double outsideMm, double wallMm)
    {
        Require.Positive(outsideMm, nameof(outsideMm));
        Require.Positive(wallMm, nameof(wallMm));
        return Require.Positive(outsideMm - 2 * wallMm, nameof(wallMm));
    }
}
