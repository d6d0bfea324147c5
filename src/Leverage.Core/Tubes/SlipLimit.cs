namespace Leverage.Tubes;

/// <summary>A tube on a bar as the slide-off check sees it.</summary>
/// <param name="Friction">μ, static friction of tube on bar, 0 to 2.</param>
/// <param name="HandToTipMm">a, hand to bar tip, mm, 0 or more.</param>
/// <param name="OverlapMm">c, tip to mouth, mm, above 0.</param>
/// <param name="TiltRad">δ, tilt from play, rad, 0 or more.</param>
/// <param name="TaperRad">τ, taper of the handle towards its end, rad, 0 straight.</param>
public readonly record struct TubeHold(
    double Friction, double HandToTipMm, double OverlapMm, double TiltRad, double TaperRad);

/// <summary>When a slipped-over tube slides off its bar.</summary>
public static class SlipLimit
{
    /// <summary>Limit for a close-fitting straight bar, tan θ = μ·(2a + c)/c.</summary>
    /// <param name="friction">μ, static friction of tube on bar, 0 to 2.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <returns>tan θ, θ between the pull and the tube's normal.</returns>
    /// <remarks>
    /// Valid for: no play, no taper; unsafe for a loose tube, where <see cref="Tangent"/> rules.
    /// Source: Coulomb friction at the two contacts.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CloseFitTangent(double friction, double handToTipMm, double overlapMm) =>
        Tangent(new TubeHold(friction, handToTipMm, overlapMm, 0, 0));

    /// <summary>Limit with play and taper, tan θ = μ·(a + c)/c + tan(atan μ − δ − τ)·a/c.</summary>
    /// <param name="hold">Friction, lengths, tilt and taper.</param>
    /// <returns>tan θ, θ between the pull and the tube's normal; negative: it walks off under a square pull.</returns>
    /// <remarks>
    /// Valid for: two-point bearing; finite elements agree within 0.1° for two cases and 1.1° for the loosest.
    /// Source: Coulomb friction at tip and mouth, the mouth's normal leaning by tilt and taper.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Tangent(TubeHold hold)
    {
        double friction = Require.Between(hold.Friction, 0, 2, nameof(hold.Friction));
        double ratio = Require.NotNegative(hold.HandToTipMm, nameof(hold.HandToTipMm))
            / Require.Positive(hold.OverlapMm, nameof(hold.OverlapMm));
        double lean = Require.Slope(hold.TiltRad, nameof(hold.TiltRad)) + Require.Slope(hold.TaperRad, nameof(hold.TaperRad));
        double mouth = Require.Slope(Math.Atan(friction) - lean, "friction angle less tilt and taper");
        return friction * (ratio + 1) + Math.Tan(mouth) * ratio;
    }

    /// <summary>Last safe angle of the bar past square in the direction it moves, β = atan(q·tan θ) − δ.</summary>
    /// <param name="tangent">tan θ, from <see cref="Tangent"/> or <see cref="CloseFitTangent"/>.</param>
    /// <param name="tiltRad">δ, tilt of the tube against the bar, rad.</param>
    /// <param name="torqueShare">q, torque still there over torque at break-loose: 1 while it holds, 0 if it snaps.</param>
    /// <returns>β, rad; negative: not even a bar square to the pull is safe.</returns>
    /// <remarks>
    /// Valid for: the body keeps pulling the same way as the torque falls away; below level for a push down, above it for a pull up.
    /// Source: the jam falls with the torque, the outward pull does not.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SafeAngle(double tangent, double tiltRad, double torqueShare) =>
        Math.Atan(Require.Finite(tangent, nameof(tangent)) * Require.Between(torqueShare, 0, 1, nameof(torqueShare)))
            - Require.Slope(tiltRad, nameof(tiltRad));

    /// <summary>Pull along the tube, outward, F_out = F·sin(β + δ).</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="pastSquareRad">β, bar past square in the direction it moves, rad; negative before square.</param>
    /// <param name="tiltRad">δ, tilt of the tube against the bar, rad.</param>
    /// <returns>F_out, N; negative jams the tube on.</returns>
    /// <remarks>
    /// Valid for: pushes down, up and across alike: one is the mirror image or the turned picture of another.
    /// Source: statics.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double OutwardPull(double forceN, double pastSquareRad, double tiltRad) =>
        Require.NotNegative(forceN, nameof(forceN))
            * Math.Sin(Require.Slope(pastSquareRad, nameof(pastSquareRad)) + Require.Slope(tiltRad, nameof(tiltRad)));

    /// <summary>Least friction at which the tube stays on, the μ of tan θ = μ·(a + c)/c + tan(atan μ − δ − τ)·a/c.</summary>
    /// <param name="tangent">tan θ wanted, θ between the pull and the tube's normal: tan(β + δ) over the torque share.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <param name="leanRad">δ + τ, tilt and taper together, rad, 0 or more.</param>
    /// <returns>μ; 0 where it stays on without any.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Tangent"/>, which it undoes: the angle grows with the friction, so one root is meant.
    /// Source: the quadratic in μ of the addition theorem, (1 + k)·L·μ² + (1 + 2k − t·L)·μ − (k·L + t) = 0, k = a/c, L = tan(δ + τ).
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double NeededFriction(double tangent, double handToTipMm, double overlapMm, double leanRad)
    {
        double ratio = Require.NotNegative(handToTipMm, nameof(handToTipMm)) / Require.Positive(overlapMm, nameof(overlapMm));
        double lean = Math.Tan(Require.Slope(Require.NotNegative(leanRad, nameof(leanRad)), nameof(leanRad)));
        double wanted = ratio * lean + Require.Finite(tangent, nameof(tangent));
        if (wanted <= 0)
        {
            return 0;
        }

        // 2c/(b + √(b² + 4ac)): the root above 0, without loss where the lean is 0.
        double b = 1 + 2 * ratio - tangent * lean;
        return 2 * wanted / (b + Math.Sqrt(b * b + 4 * (1 + ratio) * lean * wanted));
    }
}
