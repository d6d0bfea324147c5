namespace Leverage.Stiffness;

/// <summary>A nut or bolt turned by an angle after a first torque.</summary>
public static class TurnOfNut
{
    /// <summary>Preload after the turn while nothing yields, F = F1 + α/(2π)·P/(1/k_b + 1/k_m).</summary>
    /// <param name="firstPreloadN">F1, preload of the first torque, N, 0 or more.</param>
    /// <param name="angleRad">α, turn after it, rad, 0 or more.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <param name="boltStiffnessNPerMm">k_b, bolt stiffness, N/mm, above 0.</param>
    /// <param name="clampedStiffnessNPerMm">k_m, stiffness of the clamped parts, N/mm, above 0.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: faces in full contact after the first torque, no yielding.
    /// Source: VDI 2230-1, angle-controlled tightening; compliances as Shigley, 9th ed., section 8-4 and 8-5.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Preload(
        double firstPreloadN, double angleRad, double pitchMm, double boltStiffnessNPerMm, double clampedStiffnessNPerMm) =>
        Require.NotNegative(firstPreloadN, nameof(firstPreloadN))
            + Advance(angleRad, pitchMm) / Compliance(boltStiffnessNPerMm, clampedStiffnessNPerMm);

    /// <summary>Turn that makes a preload, or lets go of it, α = 2π·F·(1/k_b + 1/k_m)/P.</summary>
    /// <param name="preloadN">F, preload gained, N, 0 or more.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <param name="boltStiffnessNPerMm">k_b, bolt stiffness, N/mm, above 0.</param>
    /// <param name="clampedStiffnessNPerMm">k_m, stiffness of the clamped parts, N/mm, above 0.</param>
    /// <returns>α, rad.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Preload"/>.
    /// Source: VDI 2230-1, angle-controlled tightening.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Angle(double preloadN, double pitchMm, double boltStiffnessNPerMm, double clampedStiffnessNPerMm) =>
        2 * Math.PI * Require.NotNegative(preloadN, nameof(preloadN)) * Compliance(boltStiffnessNPerMm, clampedStiffnessNPerMm)
            / Require.Positive(pitchMm, nameof(pitchMm));

    /// <summary>How far a nut travels along the bolt, s = α/(2π)·P; past yield all of it stretches the bolt for good.</summary>
    /// <param name="angleRad">α, turn, rad, 0 or more.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>s, mm.</returns>
    /// <remarks>
    /// Valid for: single-start threads.
    /// Source: definition of the pitch, ISO 5408.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Advance(double angleRad, double pitchMm) =>
        Require.NotNegative(angleRad, nameof(angleRad)) / (2 * Math.PI) * Require.Positive(pitchMm, nameof(pitchMm));

    private static double Compliance(double boltStiffnessNPerMm, double clampedStiffnessNPerMm) =>
        1 / Require.Positive(boltStiffnessNPerMm, nameof(boltStiffnessNPerMm))
            + 1 / Require.Positive(clampedStiffnessNPerMm, nameof(clampedStiffnessNPerMm));
}
