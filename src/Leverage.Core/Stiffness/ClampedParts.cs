namespace Leverage.Stiffness;

/// <summary>How far what a bolt clamps gives under it.</summary>
public static class ClampedParts
{
    /// <summary>tan 30°, the half angle of the frusta.</summary>
    private const double FrustumSlope = 0.5774;

    /// <summary>Stiffness, k_m = E·d·A·exp(B·d/l).</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <param name="gripMm">l, clamped length, mm, a tenth of d to 100 d.</param>
    /// <param name="modulusMpa">E of the clamped parts, MPa, above 0.</param>
    /// <param name="factor">A of their material, above 0: 0.78715 steel.</param>
    /// <param name="exponent">B of their material, above 0 to 2: 0.62873 steel.</param>
    /// <returns>k_m, N/mm.</returns>
    /// <remarks>
    /// Valid for: parts of one material, wide under head and nut; the frusta form differs by +10 to −19 % over 1 to 10 d.
    /// Source: Wileman, Choudhury and Green 1991, as Shigley, 9th ed., Eq. 8-23 and Table 8-8.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Stiffness(double diameterMm, double gripMm, double modulusMpa, double factor, double exponent) =>
        Require.Positive(modulusMpa, nameof(modulusMpa)) * Require.Positive(diameterMm, nameof(diameterMm))
            * Require.Positive(factor, nameof(factor))
            * Math.Exp(Require.Between(Require.Positive(exponent, nameof(exponent)), 0, 2, nameof(exponent))
                / Slenderness(diameterMm, gripMm));

    /// <summary>Stiffness by two frusta of 30°, k_m = 0.5774·π·E·d/(2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d))).</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <param name="gripMm">l, clamped length, mm, a tenth of d to 100 d.</param>
    /// <param name="modulusMpa">E of the clamped parts, MPa, above 0.</param>
    /// <returns>k_m, N/mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Stiffness"/>, washer face 1.5 d; shown for comparison, no answer uses it.
    /// Source: Shigley, 9th ed., Eq. 8-22.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FrustaStiffness(double diameterMm, double gripMm, double modulusMpa)
    {
        double d = Require.Positive(diameterMm, nameof(diameterMm));
        double cone = FrustumSlope * d * Slenderness(diameterMm, gripMm);
        double spread = Math.Log(5 * (cone + 0.5 * d) / (cone + 2.5 * d));
        return FrustumSlope * Math.PI * Require.Positive(modulusMpa, nameof(modulusMpa)) * d / (2 * spread);
    }

    private static double Slenderness(double diameterMm, double gripMm) =>
        Require.Between(gripMm / diameterMm, 0.1, 100, nameof(gripMm));
}
