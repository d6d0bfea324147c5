using Leverage.Stiffness;

namespace Leverage.BreakLoose;

/// <summary>What heat does to a clamped joint, and what it does not.</summary>
public static class HeatedJoint
{
    /// <summary>Linear thermal expansion of carbon steel, 1/K (AISI 1020, 0–100 °C).</summary>
    public const double SteelExpansion = 11.7e-6;

    /// <summary>Linear thermal expansion of aluminium, 1/K (7075, 0–100 °C).</summary>
    public const double AluminiumExpansion = 23.4e-6;

    /// <summary>α·E of steel, MPa/K: 11.7e-6 × 207 000 = 2.42.</summary>
    public const double SteelStressPerKelvin = SteelExpansion * BoltStiffness.SteelModulusMpa;

    /// <summary>Bolt hotter than what it clamps: difference at which the preload is gone, ΔT = σ·k/(α·E).</summary>
    /// <param name="stressMpa">σ, preload stress, MPa, 0 or more.</param>
    /// <param name="complianceRatio">k = 1 + joint compliance over bolt compliance, 1 to 3: 1.1 to 1.5 in steel, to 2.4 in aluminium.</param>
    /// <returns>ΔT, K.</returns>
    /// <remarks>
    /// Valid for: steel bolt, no yielding, joint left cold.
    /// Source: thermal strain and joint stiffness, VDI 2230-1 section 5.4.2; k by Shigley, 9th ed., section 8-7.
    /// Checked by: shared/checks/heat.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double ReleaseTemperature(double stressMpa, double complianceRatio) =>
        Require.NotNegative(stressMpa, nameof(stressMpa))
            * Require.Between(complianceRatio, 1, 3, nameof(complianceRatio)) / SteelStressPerKelvin;

    /// <summary>Clamped part hotter than the bolt: rise of the preload stress, Δσ = α·E·ΔT/k.</summary>
    /// <param name="differenceK">ΔT, clamped part over bolt, K, 0 or more.</param>
    /// <param name="complianceRatio">k = 1 + joint compliance over bolt compliance, 1 to 3.</param>
    /// <returns>Δσ, MPa.</returns>
    /// <remarks>
    /// Valid for: steel bolt and steel joint, no yielding.
    /// Source: thermal strain and joint stiffness, VDI 2230-1 section 5.4.2; k by Shigley, 9th ed., section 8-7.
    /// Checked by: shared/checks/heat.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PreloadRise(double differenceK, double complianceRatio) =>
        SteelStressPerKelvin * Require.NotNegative(differenceK, nameof(differenceK))
            / Require.Between(complianceRatio, 1, 3, nameof(complianceRatio));

    /// <summary>Nut hotter than the stud: the flanks open by α·d2·ΔT in diameter.</summary>
    /// <param name="pitchDiameterMm">d2, pitch diameter, mm, above 0.</param>
    /// <param name="differenceK">ΔT, nut over stud, K, 0 or more.</param>
    /// <returns>Growth of the diameter, mm.</returns>
    /// <remarks>
    /// Valid for: steel nut; the preload barely changes, the gain is the broken rust bond and the oil drawn in.
    /// Source: linear thermal expansion.
    /// Checked by: shared/checks/heat.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double DiametralGrowth(double pitchDiameterMm, double differenceK) =>
        SteelExpansion * Require.Positive(pitchDiameterMm, nameof(pitchDiameterMm))
            * Require.NotNegative(differenceK, nameof(differenceK));

    /// <summary>Steel bolt in aluminium, both warm: clearance opens by (α_al − α_st)·d2·ΔT.</summary>
    /// <param name="pitchDiameterMm">d2, pitch diameter, mm, above 0.</param>
    /// <param name="riseK">ΔT, rise of both, K, 0 or more.</param>
    /// <returns>Clearance gained in diameter, mm.</returns>
    /// <remarks>
    /// Valid for: bolt and housing at the same temperature.
    /// Source: linear thermal expansion.
    /// Checked by: shared/checks/heat.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double AluminiumClearance(double pitchDiameterMm, double riseK) =>
        (AluminiumExpansion - SteelExpansion) * Require.Positive(pitchDiameterMm, nameof(pitchDiameterMm))
            * Require.NotNegative(riseK, nameof(riseK));
}
