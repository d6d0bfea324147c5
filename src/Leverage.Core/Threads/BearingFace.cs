namespace Leverage.Threads;

/// <summary>The ring on which a head or nut turns.</summary>
public static class BearingFace
{
    /// <summary>Mean friction diameter, Db = (dw + dh)/2.</summary>
    /// <param name="faceMm">dw, diameter of the washer face, mm, above the hole.</param>
    /// <param name="holeMm">dh, clearance hole, mm, above 0.</param>
    /// <returns>Db, mm.</returns>
    /// <remarks>
    /// Valid for: flat ring faces; the exact ring integral is at most 2 % larger for usual nuts.
    /// Source: VDI 2230-1; ISO 16047.
    /// Checked by: shared/checks/tightening.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the hole is the larger.</exception>
    public static double MeanDiameter(double faceMm, double holeMm)
    {
        Require.Positive(holeMm, nameof(holeMm));
        Require.Positive(Require.Finite(faceMm, nameof(faceMm)) - holeMm, nameof(faceMm));
        return (faceMm + holeMm) / 2;
    }
}
