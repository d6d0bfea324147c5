namespace Leverage.Tubes;

/// <summary>The slack of a tube on a bar.</summary>
public static class TubePlay
{
    /// <summary>Tilt of the tube against the bar before anything bears, δ = atan((bore − bar)/c).</summary>
    /// <param name="boreMm">Bore of the tube, mm, the bar's diameter or more.</param>
    /// <param name="barMm">Diameter of the bar, mm, above 0.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <returns>δ, rad.</returns>
    /// <remarks>
    /// Valid for: sharp edges; the exact rotation differs by under 1 % up to 0.2 rad.
    /// Source: geometry; finite-element column of exact tilt in shared/checks.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the bar does not fit.</exception>
    public static double Tilt(double boreMm, double barMm, double overlapMm)
    {
        Require.Positive(barMm, nameof(barMm));
        double play = Require.NotNegative(Require.Finite(boreMm, nameof(boreMm)) - barMm, nameof(boreMm));
        return Math.Atan(play / Require.Positive(overlapMm, nameof(overlapMm)));
    }
}
