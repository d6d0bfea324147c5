namespace Leverage.Preload;

/// <summary>The bolt's section under tension and torsion together.</summary>
/// <param name="StressDiameterMm">d0, stress diameter, mm, above 0.</param>
/// <param name="PitchDiameterMm">d2, pitch diameter, mm, above 0.</param>
/// <param name="LeadAngleRad">φ, lead angle, rad.</param>
/// <param name="FrictionAngleRad">ρ', friction angle on the flank, rad.</param>
/// <param name="TorsionFactor">m: 1.5 torsion taken plastic (VDI 2230 since 2001), 2 elastic (older tables).</param>
public readonly record struct TensionAndTorsion(
    double StressDiameterMm, double PitchDiameterMm, double LeadAngleRad, double FrictionAngleRad, double TorsionFactor)
{
    /// <summary>Torsion factor with the section fully plastic in torsion, 3/2.</summary>
    public const double Plastic = 1.5;

    /// <summary>Torsion factor with the section elastic in torsion, 2.</summary>
    public const double Elastic = 2;
}

/// <summary>Preload of a bolt tightened to a share of its yield, with tension and thread torsion acting together.</summary>
public static class AssemblyPreload
{
    /// <summary>Preload, F = A0·ν·Rp/√(1 + 3·[m·(d2/d0)·tan(φ + ρ')]²), A0 = π/4·d0².</summary>
    /// <param name="yieldShare">ν, share of yield, above 0 to 1.5; tables use 0.9.</param>
    /// <param name="yieldMpa">Rp, yield or 0.2 % proof strength, MPa, above 0.</param>
    /// <param name="section">Diameters, angles and torsion factor.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: bolts with the thread as weakest section (no waisted shank).
    /// Source: VDI 2230-1 (2001 and later with m = 3/2, earlier m = 2).
    /// Checked by: shared/checks/tightening.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double AtYieldShare(double yieldShare, double yieldMpa, TensionAndTorsion section) =>
        Require.Between(Require.Positive(yieldShare, nameof(yieldShare)), 0, 1.5, nameof(yieldShare))
            * Require.Positive(yieldMpa, nameof(yieldMpa)) * Area(section) / Combined(section);

    /// <summary>Share of yield that a preload uses, ν = F/A0·√(1 + 3·[m·(d2/d0)·tan(φ + ρ')]²)/Rp.</summary>
    /// <param name="preloadN">F, preload, N, 0 or more.</param>
    /// <param name="yieldMpa">Rp, yield or 0.2 % proof strength, MPa, above 0.</param>
    /// <param name="section">Diameters, angles and torsion factor.</param>
    /// <returns>ν, 0 or more; above 1 the bolt has yielded.</returns>
    /// <remarks>
    /// Valid for: as <see cref="AtYieldShare"/>, of which it is the inverse.
    /// Source: VDI 2230-1.
    /// Checked by: shared/checks/tightening.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double YieldShare(double preloadN, double yieldMpa, TensionAndTorsion section) =>
        Require.NotNegative(preloadN, nameof(preloadN)) * Combined(section)
            / (Area(section) * Require.Positive(yieldMpa, nameof(yieldMpa)));

    private static double Area(TensionAndTorsion section)
    {
        Require.Positive(section.StressDiameterMm, nameof(section.StressDiameterMm));
        return Math.PI / 4 * section.StressDiameterMm * section.StressDiameterMm;
    }

    private static double Combined(TensionAndTorsion section)
    {
        double slope = Require.Slope(section.LeadAngleRad + section.FrictionAngleRad, "lead plus friction angle");
        double torsion = Require.Between(section.TorsionFactor, 1, 2, nameof(section.TorsionFactor))
            * Require.Positive(section.PitchDiameterMm, nameof(section.PitchDiameterMm))
            / section.StressDiameterMm * Math.Tan(slope);
        return Math.Sqrt(1 + 3 * torsion * torsion);
    }
}
