namespace Leverage.Levers;

/// <summary>Lengths of a bar with or without a tube, once, in millimetres.</summary>
/// <param name="ReachMm">Nut's axis to middle of the hands.</param>
/// <param name="HandToTipMm">a, bar's tip to the hands; 0 with no tube.</param>
/// <param name="OverlapMm">c, tip to mouth; 0 with no tube.</param>
public readonly record struct LeverGeometry(double ReachMm, double HandToTipMm, double OverlapMm)
{
    /// <summary>Whether a tube is on.</summary>
    public bool HasTube => OverlapMm > 0;

    /// <summary>A bar held at its end.</summary>
    /// <param name="barMm">Square to end, mm.</param>
    /// <param name="gripOffsetMm">End to middle of the hands by the stance, mm; never more than a third of the bar.</param>
    /// <returns>The geometry.</returns>
    public static LeverGeometry Bare(double barMm, double gripOffsetMm) =>
        new(Lever.Reach(barMm, 0, 0, Lever.GripOffset(gripOffsetMm, barMm)), 0, 0);

    /// <summary>A bar with a tube held at its end.</summary>
    /// <param name="barMm">Square to end of the bar, mm.</param>
    /// <param name="tubeMm">Length of the tube, mm.</param>
    /// <param name="overlapMm">How far it goes on, mm.</param>
    /// <param name="gripOffsetMm">End to middle of the hands by the stance, mm; never more than a third of the whole.</param>
    /// <returns>The geometry; hands that would stand behind the tip count as at the tip.</returns>
    public static LeverGeometry WithTube(double barMm, double tubeMm, double overlapMm, double gripOffsetMm)
    {
        double offset = Lever.GripOffset(gripOffsetMm, barMm + tubeMm - overlapMm);
        return new(Lever.Reach(barMm, tubeMm, overlapMm, offset), Math.Max(0, tubeMm - overlapMm - offset), overlapMm);
    }
}
