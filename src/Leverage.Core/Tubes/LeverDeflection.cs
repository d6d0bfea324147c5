namespace Leverage.Tubes;

/// <summary>A tubed lever as a beam.</summary>
/// <param name="ReachMm">L, nut's axis to hand, mm, at least a + c.</param>
/// <param name="HandToTipMm">a, hand to bar tip, mm, 0 or more; 0 with no tube.</param>
/// <param name="OverlapMm">c, tip to mouth, mm, above 0 with a tube, 0 with none.</param>
/// <param name="TubeStiffnessNmm2">E·I of the tube, N·mm², above 0 with a tube.</param>
/// <param name="BarStiffnessNmm2">E·I of the bar, N·mm², above 0.</param>
public readonly record struct LeverBeam(
    double ReachMm, double HandToTipMm, double OverlapMm, double TubeStiffnessNmm2, double BarStiffnessNmm2);

/// <summary>How far the hand moves as bar and tube bend.</summary>
public static class LeverDeflection
{
    /// <summary>How far hand, overlap and bare bar may miss the reach as sums of numbers.</summary>
    private const double Rounding = 1e-12;

    /// <summary>
    /// Deflection at the hand, F/3·{a³/(E·Is) + a²c/(E·Is) + (a + c)²c/(E·Ib) + [L³ − (a + c)³]/(E·Ib)}.
    /// </summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="beam">Lengths and stiffnesses.</param>
    /// <returns>Deflection, mm, without the play.</returns>
    /// <remarks>
    /// Valid for: two-point bearing, small rotations; finite elements find 0 to 4 % more.
    /// Source: unit-load method on the two beams.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double AtHand(double forceN, LeverBeam beam)
    {
        Require.NotNegative(forceN, nameof(forceN));
        double a = Require.NotNegative(beam.HandToTipMm, nameof(beam.HandToTipMm));
        double c = Require.NotNegative(beam.OverlapMm, nameof(beam.OverlapMm));
        double reach = Require.Between(beam.ReachMm, (a + c) * (1 - Rounding), double.MaxValue, nameof(beam.ReachMm));
        double bar = Require.Positive(beam.BarStiffnessNmm2, nameof(beam.BarStiffnessNmm2));
        double onBar = (Square(a + c) * c + Cube(reach) - Cube(a + c)) / bar;
        double onTube = a + c > 0
            ? (Cube(a) + Square(a) * c) / Require.Positive(beam.TubeStiffnessNmm2, nameof(beam.TubeStiffnessNmm2))
            : 0;
        return forceN / 3 * (onBar + onTube);
    }

    private static double Square(double value) => value * value;

    private static double Cube(double value) => value * value * value;
}
