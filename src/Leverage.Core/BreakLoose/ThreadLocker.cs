namespace Leverage.BreakLoose;

/// <summary>Thread locker: torque of its own, on top of the joint's.</summary>
public static class ThreadLocker
{
    /// <summary>Diameter of the thread the figures were measured on, 3/8 in, mm.</summary>
    public const double MeasuredDiameterMm = 9.53;

    /// <summary>Break torque scaled to a thread, T = T_3/8·(d/9.53 mm)².</summary>
    /// <param name="measuredNmm">T_3/8, break torque on 3/8-16, N·mm, 0 or more.</param>
    /// <param name="diameterMm">d, nominal diameter, mm, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: nut height in proportion to diameter; the scaling is a judgement.
    /// Source: published break torques on 3/8-16 (tables/lockers.csv).
    /// Checked by: shared/checks/lockers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double measuredNmm, double diameterMm)
    {
        double ratio = Require.Positive(diameterMm, nameof(diameterMm)) / MeasuredDiameterMm;
        return Require.NotNegative(measuredNmm, nameof(measuredNmm)) * ratio * ratio;
    }
}
