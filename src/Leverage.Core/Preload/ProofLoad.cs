namespace Leverage.Preload;

/// <summary>Load a thread carries at a stress.</summary>
public static class ProofLoad
{
    /// <summary>Force, F = S·As: proof load at proof stress, breaking load at tensile strength.</summary>
    /// <param name="stressMpa">S, stress, MPa, 0 or more.</param>
    /// <param name="areaMm2">As, stress area, mm², above 0.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: pure tension on the stress area.
    /// Source: ISO 898-1, tables of proof and minimum ultimate loads.
    /// Checked by: shared/checks/loads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Force(double stressMpa, double areaMm2) =>
        Require.NotNegative(stressMpa, nameof(stressMpa)) * Require.Positive(areaMm2, nameof(areaMm2));
}
