namespace Leverage.Preload;

/// <summary>The one-number shortcut between torque and preload.</summary>
public static class NutFactor
{
    /// <summary>Torque, T = K·F·d.</summary>
    /// <param name="nutFactor">K, nut factor, above 0; 0.1 to 0.35 in practice.</param>
    /// <param name="preloadN">F, preload, N, 0 or more.</param>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: joints like the one K was measured on; scatter of ±30 % is common.
    /// Source: Shigley, 9th ed., Eq. 8-27.
    /// Checked by: shared/checks/nut-factor.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double nutFactor, double preloadN, double diameterMm) =>
        Require.Positive(nutFactor, nameof(nutFactor)) * Require.NotNegative(preloadN, nameof(preloadN))
            * Require.Positive(diameterMm, nameof(diameterMm));

    /// <summary>Nut factor, K = T/(F·d).</summary>
    /// <param name="torqueNmm">T, tightening torque, N·mm, 0 or more.</param>
    /// <param name="preloadN">F, preload, N, above 0.</param>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <returns>K.</returns>
    /// <remarks>
    /// Valid for: any tightened joint.
    /// Source: Shigley, 9th ed., Eq. 8-27.
    /// Checked by: shared/checks/nut-factor.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FromTorque(double torqueNmm, double preloadN, double diameterMm) =>
        Require.NotNegative(torqueNmm, nameof(torqueNmm))
            / (Require.Positive(preloadN, nameof(preloadN)) * Require.Positive(diameterMm, nameof(diameterMm)));
}
