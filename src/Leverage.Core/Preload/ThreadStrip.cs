namespace Leverage.Preload;

/// <summary>Shear of the engaged threads: will the bolt break or the thread strip.</summary>
public static class ThreadStrip
{
    /// <summary>Height of a flank per radial depth in the strip formulas, tan 30° = 0.57735.</summary>
    private const double FlankSlope = 0.57735;

    /// <summary>Shear area of the internal thread, A = π·(L/P)·Ds·[P/2 + 0.57735·(Ds − En)].</summary>
    /// <param name="engagementMm">L, engaged length, mm, 0 or more.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <param name="externalMajorMm">Ds, least major diameter of the bolt, mm, above 0.</param>
    /// <param name="internalPitchDiameterMm">En, largest pitch diameter of the tapped hole, mm, above 0.</param>
    /// <returns>A, mm².</returns>
    /// <remarks>
    /// Valid for: 60° threads, load spread over the whole engagement; best up to one and a half diameters.
    /// Source: FED-STD-H28/2B; ASME B1.1 appendix B.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or no flank is engaged.</exception>
    public static double InternalShearArea(
        double engagementMm, double pitchMm, double externalMajorMm, double internalPitchDiameterMm) =>
        Require.Positive(externalMajorMm, nameof(externalMajorMm)) * Ring(
            engagementMm, pitchMm, externalMajorMm - Require.Positive(internalPitchDiameterMm, nameof(internalPitchDiameterMm)));

    /// <summary>Shear area of the external thread, A = π·(L/P)·Kn·[P/2 + 0.57735·(Es − Kn)].</summary>
    /// <param name="engagementMm">L, engaged length, mm, 0 or more.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <param name="internalMinorMm">Kn, largest minor diameter of the hole, mm, above 0.</param>
    /// <param name="externalPitchDiameterMm">Es, least pitch diameter of the bolt, mm, above 0.</param>
    /// <returns>A, mm².</returns>
    /// <remarks>
    /// Valid for: as <see cref="InternalShearArea"/>.
    /// Source: FED-STD-H28/2B; ASME B1.1 appendix B.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or no flank is engaged.</exception>
    public static double ExternalShearArea(
        double engagementMm, double pitchMm, double internalMinorMm, double externalPitchDiameterMm) =>
        Require.Positive(internalMinorMm, nameof(internalMinorMm)) * Ring(
            engagementMm, pitchMm, Require.Positive(externalPitchDiameterMm, nameof(externalPitchDiameterMm)) - internalMinorMm);

    /// <summary>Engagement at which the bolt breaks as the thread strips, L = F/(τ·a).</summary>
    /// <param name="boltForceN">F, breaking load of the bolt, N, above 0.</param>
    /// <param name="shearStrengthMpa">τ, shear strength of the thread that strips, MPa, above 0.</param>
    /// <param name="shearAreaPerMm">a, its shear area for each mm of engagement, mm²/mm, above 0.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="InternalShearArea"/>; no allowance for bell-mouthing or nut dilation.
    /// Source: FED-STD-H28/2B; Bickford and Nassar, Handbook of Bolts and Bolted Joints.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double EngagementToBreak(double boltForceN, double shearStrengthMpa, double shearAreaPerMm) =>
        Require.Positive(boltForceN, nameof(boltForceN))
            / (Require.Positive(shearStrengthMpa, nameof(shearStrengthMpa))
                * Require.Positive(shearAreaPerMm, nameof(shearAreaPerMm)));

    private static double Ring(double engagementMm, double pitchMm, double radialMm)
    {
        Require.NotNegative(engagementMm, nameof(engagementMm));
        Require.Positive(pitchMm, nameof(pitchMm));
        double height = Require.Positive(pitchMm / 2 + FlankSlope * Require.Finite(radialMm, nameof(radialMm)), nameof(radialMm));
        return Math.PI * engagementMm / pitchMm * height;
    }
}
