namespace Leverage.Stiffness;

/// <summary>Stretch of a bolt within what it clamps.</summary>
public static class BoltStiffness
{
    /// <summary>E of a steel bolt, MPa (Shigley, 9th ed., Table 8-8).</summary>
    public const double SteelModulusMpa = 207_000;

    /// <summary>Stiffness, k_b = Ad·At·E/(Ad·lt + At·ld), Ad = π/4·d².</summary>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <param name="stressAreaMm2">At, stress area, mm², above 0.</param>
    /// <param name="threadedMm">lt, threaded length within the grip, mm, above 0.</param>
    /// <param name="shankMm">ld, plain shank within the grip, mm, 0 or more.</param>
    /// <param name="modulusMpa">E of the bolt, MPa, above 0.</param>
    /// <returns>k_b, N/mm.</returns>
    /// <remarks>
    /// Valid for: elastic bolts; head and nut taken as rigid.
    /// Source: Shigley, 9th ed., Table 8-7 and Eq. 8-17.
    /// Checked by: shared/checks/stiffness.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double InGrip(
        double diameterMm, double stressAreaMm2, double threadedMm, double shankMm, double modulusMpa)
    {
        double shankAreaMm2 = Math.PI / 4 * Math.Pow(Require.Positive(diameterMm, nameof(diameterMm)), 2);
        double stretch = Require.Positive(threadedMm, nameof(threadedMm)) / Require.Positive(stressAreaMm2, nameof(stressAreaMm2))
            + Require.NotNegative(shankMm, nameof(shankMm)) / shankAreaMm2;
        return Require.Positive(modulusMpa, nameof(modulusMpa)) / stretch;
    }
}
