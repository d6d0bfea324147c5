namespace Leverage.Preload;

/// <summary>A torque wrench with an adapter that moves the nut off its square.</summary>
public static class WrenchAdapter
{
    /// <summary>What to set on the wrench, S = T·L/(L + E·cos β).</summary>
    /// <param name="torqueNmm">T, torque wanted at the nut, N·mm, 0 or more.</param>
    /// <param name="wrenchMm">L, wrench square to middle of grip, mm, above 0.</param>
    /// <param name="adapterMm">E, wrench square to nut, mm, 0 or more.</param>
    /// <param name="angleRad">β, adapter against the wrench's length, rad: 0 straight out, π/2 no change, π folded back.</param>
    /// <returns>S, N·mm.</returns>
    /// <remarks>
    /// Valid for: the hand on the grip's mark, the pull square to the wrench, nut still beyond the hand's far side.
    /// Source: torque-wrench manuals' adapter rule (worked examples in the checks); statics.
    /// Checked by: shared/checks/adapters.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the adapter leaves no lever.</exception>
    public static double Setting(double torqueNmm, double wrenchMm, double adapterMm, double angleRad)
    {
        Require.NotNegative(torqueNmm, nameof(torqueNmm));
        Require.Positive(wrenchMm, nameof(wrenchMm));
        Require.NotNegative(adapterMm, nameof(adapterMm));
        Require.Between(angleRad, -Math.PI, Math.PI, nameof(angleRad));
        double arm = Require.Positive(wrenchMm + adapterMm * Math.Cos(angleRad), nameof(adapterMm));
        return torqueNmm * wrenchMm / arm;
    }
}
