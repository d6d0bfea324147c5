namespace Leverage.Tubes;

/// <summary>A tube on a round bar, bearing at two points: the bar's tip and the tube's mouth.</summary>
public static class TubeBearing
{
    /// <summary>Reaction at the bar's tip, R = N·(a + c)/c.</summary>
    /// <param name="forceN">N, force square to the tube, N, 0 or more.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <returns>R, N.</returns>
    /// <remarks>
    /// Valid for: a tube loose enough to bear at two points; finite elements find 0.6 to 3.2 % more.
    /// Source: moment balance about the mouth.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TipReaction(double forceN, double handToTipMm, double overlapMm) =>
        Moment(forceN, handToTipMm + Require.Positive(overlapMm, nameof(overlapMm)), handToTipMm) / overlapMm;

    /// <summary>Reaction at the tube's mouth, R = N·a/c.</summary>
    /// <param name="forceN">N, force square to the tube, N, 0 or more.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <returns>R, N.</returns>
    /// <remarks>
    /// Valid for: as <see cref="TipReaction"/>.
    /// Source: moment balance about the tip.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double MouthReaction(double forceN, double handToTipMm, double overlapMm) =>
        Moment(forceN, handToTipMm, handToTipMm) / Require.Positive(overlapMm, nameof(overlapMm));

    /// <summary>Largest bending moment in the tube, at the bar's tip, M = N·a.</summary>
    /// <param name="forceN">N, force square to the tube, N, 0 or more.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <returns>M, N·mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="TipReaction"/>; the skin beside the tip is stressed far higher, a mark and not a fold.
    /// Source: statics.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TubeMoment(double forceN, double handToTipMm) => Moment(forceN, handToTipMm, handToTipMm);

    /// <summary>Bending moment in the bar at the tube's mouth, M = N·(a + c).</summary>
    /// <param name="forceN">N, force square to the tube, N, 0 or more.</param>
    /// <param name="handToTipMm">a, hand to bar tip, mm, 0 or more.</param>
    /// <param name="overlapMm">c, tip to mouth, mm, above 0.</param>
    /// <returns>M, N·mm.</returns>
    /// <remarks>
    /// Valid for: as <see cref="TipReaction"/>; the bar carries more still at the nut.
    /// Source: statics.
    /// Checked by: shared/checks/tube-on-bar.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double BarMomentAtMouth(double forceN, double handToTipMm, double overlapMm) =>
        Moment(forceN, handToTipMm + Require.Positive(overlapMm, nameof(overlapMm)), handToTipMm);

    private static double Moment(double forceN, double armMm, double handToTipMm)
    {
        Require.NotNegative(handToTipMm, nameof(handToTipMm));
        return Require.NotNegative(forceN, nameof(forceN)) * armMm;
    }
}
