namespace Leverage.LoadPath;

/// <summary>The cross pin of a flex-head bar, in double shear.</summary>
public static class HingePin
{
    /// <summary>Torque the pin stands, T = τ·π/4·d²·w: one shear plane at each side of the tang, w apart.</summary>
    /// <param name="diameterMm">d, pin diameter, mm, above 0.</param>
    /// <param name="planesApartMm">w, distance between the two shear planes (thickness of the tang), mm, above 0.</param>
    /// <param name="shearMpa">τ, shear strength of the pin, MPa, above 0.</param>
    /// <returns>T about the drive's axis, N·mm.</returns>
    /// <remarks>
    /// Valid for: the fork's cheeks bear nothing: a lower estimate where they touch the tang.
    /// Source: double shear of a pin, Shigley, 9th ed., chapter 8; the couple is statics.
    /// Checked by: shared/checks/squares.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double Torque(double diameterMm, double planesApartMm, double shearMpa) =>
        Math.PI / 4 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 2)
            * Require.Positive(planesApartMm, nameof(planesApartMm)) * Require.Positive(shearMpa, nameof(shearMpa));
}
