namespace Leverage.Threads;

/// <summary>The worst pair of bolt and tapped hole that medium fit allows: 6g bolt at its least, 6H hole at its widest.</summary>
/// <remarks>The standard rounds its tolerances to steps and takes a mean diameter for each range of sizes; these follow
/// its formulas, and stay within 0.014 mm of the printed limits. Used for inch threads too, where 2A and 2B allow as much
/// or a little less.</remarks>
public static class ThreadTolerance
{
    /// <summary>Width of an internal pitch diameter's tolerance over an external one's of the same grade.</summary>
    private const double InternalOverExternal = 1.32;

    /// <summary>Least major diameter of a 6g bolt, d − es − Td, Td = 180·P^(2/3) − 3.15/√P µm.</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>Ds, mm.</returns>
    /// <remarks>
    /// Valid for: ISO metric threads of medium fit, 0.35 mm pitch and up; within 0.014 mm of the printed limits.
    /// Source: ISO 965-1.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double LeastMajorExternal(double diameterMm, double pitchMm) =>
        Require.Positive(diameterMm, nameof(diameterMm)) - Allowance(pitchMm)
            - (180 * Math.Pow(pitchMm, 2.0 / 3) - 3.15 / Math.Sqrt(pitchMm)) / 1000;

    /// <summary>Least pitch diameter of a 6g bolt, d2 − es − Td2, Td2 = 90·P^0.4·d^0.1 µm.</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>Es, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="LeastMajorExternal"/>.
    /// Source: ISO 965-1.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double LeastPitchExternal(double diameterMm, double pitchMm) =>
        ThreadGeometry.PitchDiameter(diameterMm, pitchMm) - Allowance(pitchMm) - PitchTolerance(diameterMm, pitchMm);

    /// <summary>Largest pitch diameter of a 6H hole, D2 + 1.32·Td2.</summary>
    /// <param name="diameterMm">D, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>En, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="LeastMajorExternal"/>.
    /// Source: ISO 965-1.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double MostPitchInternal(double diameterMm, double pitchMm) =>
        ThreadGeometry.PitchDiameter(diameterMm, pitchMm) + InternalOverExternal * PitchTolerance(diameterMm, pitchMm);

    /// <summary>Largest minor diameter of a 6H hole, D1 + TD1, TD1 = 230·P^0.7 µm, or 433·P − 190·P^1.22 below 1 mm.</summary>
    /// <param name="diameterMm">D, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>Kn, mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="LeastMajorExternal"/>.
    /// Source: ISO 965-1.
    /// Checked by: shared/checks/strip.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double MostMinorInternal(double diameterMm, double pitchMm) =>
        ThreadGeometry.MinorDiameterInternal(diameterMm, pitchMm) + (pitchMm < 1
            ? 433 * pitchMm - 190 * Math.Pow(pitchMm, 1.22)
            : 230 * Math.Pow(pitchMm, 0.7)) / 1000;

    /// <summary>es of position g, 15 + 11·P µm.</summary>
    private static double Allowance(double pitchMm) => (15 + 11 * Require.Positive(pitchMm, nameof(pitchMm))) / 1000;

    private static double PitchTolerance(double diameterMm, double pitchMm) =>
        90 * Math.Pow(pitchMm, 0.4) * Math.Pow(diameterMm, 0.1) / 1000;
}
