namespace Leverage.Levers;

/// <summary>A solid round bar in bending and torsion.</summary>
public static class RoundBar
{
    /// <summary>Second moment of area, I = π/64·d⁴.</summary>
    /// <param name="diameterMm">d, diameter, mm, above 0.</param>
    /// <returns>I, mm⁴.</returns>
    /// <remarks>
    /// Valid for: solid round sections.
    /// Source: Gere, Mechanics of Materials, 7th ed., appendix on areas.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double Inertia(double diameterMm) =>
        Math.PI / 64 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 4);

    /// <summary>Elastic section modulus, Z = π/32·d³.</summary>
    /// <param name="diameterMm">d, diameter, mm, above 0.</param>
    /// <returns>Z, mm³.</returns>
    /// <remarks>
    /// Valid for: solid round sections; times yield it gives the moment at first yield.
    /// Source: Gere, Mechanics of Materials, 7th ed., chapter 5.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double ElasticModulus(double diameterMm) =>
        Math.PI / 32 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 3);

    /// <summary>Plastic section modulus, Zp = d³/6.</summary>
    /// <param name="diameterMm">d, diameter, mm, above 0.</param>
    /// <returns>Zp, mm³.</returns>
    /// <remarks>
    /// Valid for: solid round sections; 1.70 times the elastic modulus.
    /// Source: Gere, Mechanics of Materials, 7th ed., section 6.10.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double PlasticModulus(double diameterMm) =>
        Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 3) / 6;

    /// <summary>Fully plastic torque, T = π/12·d³·τ.</summary>
    /// <param name="diameterMm">d, diameter, mm, above 0.</param>
    /// <param name="shearMpa">τ, shear strength, MPa, above 0: 0.577·Rm for the torque that twists a bolt off.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: solid round sections without tension.
    /// Source: Gere, Mechanics of Materials, 7th ed., torsion of an elastoplastic bar; 0.577 is von Mises' 1/√3.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double PlasticTorque(double diameterMm, double shearMpa) =>
        Math.PI / 12 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 3)
            * Require.Positive(shearMpa, nameof(shearMpa));

    /// <summary>Mass of a length of steel bar, m = ρ·π/4·d²·L with ρ = 7850 kg/m³.</summary>
    /// <param name="diameterMm">d, diameter, mm, above 0.</param>
    /// <param name="lengthMm">L, length, mm, 0 or more.</param>
    /// <returns>m, kg.</returns>
    /// <remarks>
    /// Valid for: carbon and alloy steel.
    /// Source: density of EN 10305 and EN 10210 mass formulas.
    /// Checked by: shared/checks/tubes.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Mass(double diameterMm, double lengthMm) =>
        7.85e-6 * Math.PI / 4 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 2)
            * Require.NotNegative(lengthMm, nameof(lengthMm));
}
