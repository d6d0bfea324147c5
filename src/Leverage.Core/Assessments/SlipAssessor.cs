using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;

namespace Leverage.Assessments;

/// <summary>Judges when a slipped-over extension comes off.</summary>
public static class SlipAssessor
{
    private static readonly string[] States = ["dry", "oily", "greasy"];

    /// <summary>What a tube on a bar means.</summary>
    /// <param name="setup">Bar, tube, overlap and hands.</param>
    /// <returns>The assessment.</returns>
    public static SlipAssessment Assess(SlipSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        TubeLimits limits = TubeLimits.Of(setup.Tube);
        HandFigures hands = HandFigures.Of(setup.Hands);
        double hand = hands.Quantile(0.5);
        SlipRow Row(double overlap, double friction) => RowAt(setup, limits, overlap, friction);
        double low = setup.GripFriction.Low;
        double[] overlaps = [.. TubeAssessor.Overlaps(setup.Bar, setup.Tube, setup.Hands.Stance.GripOffsetMm)];
        SlipRow here = Row(setup.Overlap.Millimeters, low);
        SlipRow[] rows = [.. overlaps.Select(overlap => Row(overlap, low))];
        return new SlipAssessment
        {
            Setup = setup,
            Here = here,
            Typical = Row(here.OverlapMm, setup.GripFriction.Likely).Checked,
            SnugRad = Math.Atan(SlipLimit.CloseFitTangent(low, here.HandToTipMm, here.OverlapMm)),
            PlayShare = (setup.Tube.Bore - setup.Bar.Diameter!.Value) / setup.Bar.Diameter.Value,
            HandN = hand,
            Rows = rows,
            Curves = [.. States.Select(state => Curve(state, overlaps, Row))],
            Best = Row(
                TubeAssessor.BestOverlap(
                    setup.Bar, setup.Tube, setup.Hands.Stance.GripOffsetMm, low, double.PositiveInfinity, hands.Quantile(0.9)).Millimeters,
                low),
            TippingRatio = setup is { StandOff: { } off, Engagement: { } deep }
                ? SocketTipping.Ratio(off.Millimeters, deep.Millimeters)
                : null,
        };
    }

    private static SlipCurve Curve(string state, double[] overlaps, Func<double, double, SlipRow> row)
    {
        double friction = FrictionRange.OnHandle(state).Low;
        return new SlipCurve(state, friction, [.. overlaps.Select(overlap => row(overlap, friction).Checked.HeldRad)]);
    }

    private static SlipRow RowAt(SlipSetup setup, TubeLimits limits, double overlapMm, double friction)
    {
        LeverGeometry lever = LeverGeometry.WithTube(
            setup.Bar.Length.Millimeters, setup.Tube.Length.Millimeters, overlapMm, setup.Hands.Stance.GripOffsetMm);
        return new SlipRow(
            overlapMm,
            lever.HandToTipMm,
            SlipAngles.Tilt(setup.Bar, setup.Tube, overlapMm),
            SlipAngles.Of(setup.Bar, setup.Tube, lever, friction, setup.RunningShare),
            (2 * lever.HandToTipMm + overlapMm) / overlapMm,
            limits.BendingTorque(lever) / lever.ReachMm,
            limits.TipTorque(lever) / lever.ReachMm,
            limits.MouthTorque(lever) / lever.ReachMm);
    }
}
