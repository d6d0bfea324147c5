namespace Leverage.Threads;

/// <summary>Diameters, lead angle and stress area of a 60° screw thread of the ISO and Unified families.</summary>
public static class ThreadGeometry
{
    /// <summary>Height of the fundamental triangle per pitch: √3/2 (ISO 68-1).</summary>
    private const double TrianglePerPitch = 0.866025403784439;

    /// <summary>Stress diameter per pitch, (3/4 + 17/12)/2·√3/2 = 13√3/24, printed as 0.9382 in ISO 898-1.</summary>
    private const double StressDiameterPerPitch = 0.9382;

    /// <summary>Stress diameter per pitch for the Unified thread, printed as 0.9743 in ASME B1.1.</summary>
    private const double UnifiedStressDiameterPerPitch = 0.9743;

    /// <summary>Pitch diameter, d2 = d − 3/4·H, H = √3/2·P.</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>d2, mm.</returns>
    /// <remarks>
    /// Valid for: basic profile of ISO metric and Unified threads, no tolerance allowance.
    /// Source: ISO 68-1, ISO 724; ASME B1.1.
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double PitchDiameter(double diameterMm, double pitchMm) =>
        Depth(diameterMm, pitchMm, 0.75 * TrianglePerPitch);

    /// <summary>Root diameter of the external thread, d3 = d − 17/12·H.</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>d3, mm.</returns>
    /// <remarks>
    /// Valid for: rounded root of H/6 (ISO metric); one code's 1.299038·P is not this root.
    /// Source: ISO 68-1, ISO 898-1.
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double RootDiameter(double diameterMm, double pitchMm) =>
        Depth(diameterMm, pitchMm, 17.0 / 12 * TrianglePerPitch);

    /// <summary>Minor diameter of the internal thread, D1 = D − 5/4·H.</summary>
    /// <param name="diameterMm">D, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>D1, mm.</returns>
    /// <remarks>
    /// Valid for: basic profile of ISO metric and Unified threads.
    /// Source: ISO 68-1, ISO 724; ASME B1.1.
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double MinorDiameterInternal(double diameterMm, double pitchMm) =>
        Depth(diameterMm, pitchMm, 1.25 * TrianglePerPitch);

    /// <summary>Stress diameter, d0 = (d2 + d3)/2 = d − 0.9382·P.</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>d0, mm.</returns>
    /// <remarks>
    /// Valid for: ISO metric threads.
    /// Source: ISO 898-1 (the factor as printed there; 13√3/24 to six figures is 0.938194).
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double StressDiameter(double diameterMm, double pitchMm) =>
        Depth(diameterMm, pitchMm, StressDiameterPerPitch);

    /// <summary>Stress area, As = π/4·((d2 + d3)/2)².</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P, pitch, mm, above 0.</param>
    /// <returns>As, mm².</returns>
    /// <remarks>
    /// Valid for: ISO metric threads.
    /// Source: ISO 898-1.
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double StressArea(double diameterMm, double pitchMm) =>
        Circle(StressDiameter(diameterMm, pitchMm));

    /// <summary>Stress area of a Unified thread, As = π/4·(D − 0.9743·P)².</summary>
    /// <param name="diameterMm">D, nominal diameter, mm, above the thread's depth.</param>
    /// <param name="pitchMm">P = 25.4/n for n threads per inch, mm, above 0.</param>
    /// <returns>As, mm².</returns>
    /// <remarks>
    /// Valid for: UNC, UNF and other Unified threads up to 100 ksi tensile strength.
    /// Source: ASME B1.1.
    /// Checked by: shared/checks/threads.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0, or the pitch leaves no core.</exception>
    public static double UnifiedStressArea(double diameterMm, double pitchMm) =>
        Circle(Depth(diameterMm, pitchMm, UnifiedStressDiameterPerPitch));

    /// <summary>Lead angle at the pitch line, tan φ = l/(π·d2).</summary>
    /// <param name="pitchDiameterMm">d2, pitch diameter, mm, above 0.</param>
    /// <param name="leadMm">l, lead, mm, above 0; the pitch for a single-start thread.</param>
    /// <returns>φ, rad.</returns>
    /// <remarks>
    /// Valid for: any screw thread; fasteners are single-start.
    /// Source: VDI 2230-1; Mott, Machine Elements in Mechanical Design, Example 17-1.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double LeadAngle(double pitchDiameterMm, double leadMm) =>
        Math.Atan(Require.Positive(leadMm, nameof(leadMm))
            / (Math.PI * Require.Positive(pitchDiameterMm, nameof(pitchDiameterMm))));

    private static double Depth(double diameterMm, double pitchMm, double perPitch)
    {
        Require.Positive(diameterMm, nameof(diameterMm));
        Require.Positive(pitchMm, nameof(pitchMm));
        return Require.Positive(diameterMm - perPitch * pitchMm, nameof(pitchMm));
    }

    private static double Circle(double diameterMm) => Math.PI / 4 * diameterMm * diameterMm;
}
