namespace Leverage.Stiffness;

/// <summary>Bolt and clamped parts together.</summary>
public static class JointStiffness
{
    /// <summary>How much more bolt and clamped parts give together than the bolt alone, k = 1 + k_b/k_m.</summary>
    /// <param name="boltStiffnessNPerMm">k_b, bolt stiffness, N/mm, above 0.</param>
    /// <param name="clampedStiffnessNPerMm">k_m, stiffness of the clamped parts, N/mm, above 0.</param>
    /// <returns>k, above 1: 1.1 to 1.5 in steel.</returns>
    /// <remarks>
    /// Valid for: elastic joints that stay closed; 1 − 1/k is the joint constant C.
    /// Source: Shigley, 9th ed., section 8-7.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double ComplianceRatio(double boltStiffnessNPerMm, double clampedStiffnessNPerMm) =>
        1 + Require.Positive(boltStiffnessNPerMm, nameof(boltStiffnessNPerMm))
            / Require.Positive(clampedStiffnessNPerMm, nameof(clampedStiffnessNPerMm));
}
