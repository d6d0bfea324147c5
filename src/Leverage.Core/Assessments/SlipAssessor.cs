using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Tubes;

namespace Leverage.Assessments;

/// <summary>Judges when a slipped-over tube comes off.</summary>
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
        NutFigures? nut = setup.Fastener is { } fastener ? NutFigures.Of(fastener) : null;
        double nutNmm = nut?.HighNmm ?? double.PositiveInfinity;
        double Left(double turnRad, double torqueNmm) => nut?.ShareLeft(turnRad, torqueNmm) ?? setup.Condition.RunningShare;
        double left = Left(setup.TurnRad, nut?.LikelyNmm ?? 1);
        SlipRow Row(double overlap, double friction) => RowAt(setup, limits, overlap, friction, left, nutNmm, hands.Quantile(0.9));
        double low = setup.Surface.Friction.Low;
        double[] overlaps = [.. TubeAssessor.Overlaps(setup.Bar, setup.Tube, setup.Hands.Stance.GripOffsetMm)];
        SlipRow here = Row(setup.Overlap.Millimeters, low);
        SlipRow[] rows = [.. overlaps.Select(overlap => Row(overlap, low))];
        LeverGeometry lever = LeverAt(setup, here.OverlapMm);
        Sliding sliding = Circumstances.SlidingOf(
            setup.Surface.Friction, setup.Bar, setup.Tube, lever, setup.StartPastSquare.Radians, setup.PastSquare.Radians, Left);
        double slides = sliding.Friction.Below(sliding.LeastToStay);
        double turning = sliding.LeastAsItTurns is { } needed
            ? Math.Max(0, sliding.Friction.Below(needed(nut?.LikelyNmm ?? 1)) - slides) / Math.Max(1 - slides, double.Epsilon)
            : 0;
        return new SlipAssessment
        {
            Setup = setup,
            Hand = hands,
            StrongN = nut is null ? hands.Quantile(0.9) : Judgement.StrongPull(nut, hands, lever.ReachMm) / lever.ReachMm,
            EndShare = left,
            ClampGoneRad = nut?.ClampGoneRad,
            SlidesOff = slides,
            SlidesAsItTurns = turning,
            Ruling = VerdictOf.Of(new VerdictFacts
            {
                Pulled = true,
                ToolJudged = true,
                ComesLoose = 1,
                SlidesOff = slides,
                SlidesAsItTurns = turning,
                Tube = Circumstances.Against(limits, lever, nutNmm, hands),
            }),
            Here = here,
            Typical = Row(here.OverlapMm, setup.Surface.Friction.Likely).Checked,
            SnugRad = Math.Atan(SlipLimit.CloseFitTangent(low, here.HandToTipMm, here.OverlapMm)),
            PlayShare = (setup.Tube.Bore - setup.Bar.Diameter!.Value) / setup.Bar.Diameter.Value,
            Rows = rows,
            Curves = [.. States.Select(state => Curve(state, overlaps, Row))],
            Best = Row(TubeAssessor.BestOverlap(setup.Bar, setup.Tube, setup.Hands.Stance.GripOffsetMm, low, nutNmm, hands.Quantile(0.9)).Millimeters, low),
            Least = Array.FindIndex(rows, row => row.TakesStrongPull && row.Checked.HeldRad > setup.StartPastSquare.Radians) is var least and >= 0 ? rows[least] : null,
            TippingRatio = setup is { StandOff: { } off, Engagement: { } deep }
                ? SocketTipping.Ratio(off.Millimeters, deep.Millimeters)
                : null,
        };
    }

    private static SlipCurve Curve(string state, double[] overlaps, Func<double, double, SlipRow> row)
    {
        double friction = HandleSurface.Named(state).Friction.Low;
        return new SlipCurve(state, friction, [.. overlaps.Select(overlap => row(overlap, friction).Checked.HeldRad)]);
    }

    private static LeverGeometry LeverAt(SlipSetup setup, double overlapMm) => LeverGeometry.WithTube(
        setup.Bar.Length.Millimeters, setup.Tube.Length.Millimeters, overlapMm, setup.Hands.Stance.GripOffsetMm);

    private static SlipRow RowAt(SlipSetup setup, TubeLimits limits, double overlapMm, double friction, double endShare, double nutNmm, double handN)
    {
        LeverGeometry lever = LeverAt(setup, overlapMm);
        return new SlipRow(
            overlapMm,
            lever.HandToTipMm,
            SlipAngles.Tilt(setup.Bar, setup.Tube, overlapMm),
            SlipAngles.Of(setup.Bar, setup.Tube, lever, friction, endShare),
            (2 * lever.HandToTipMm + overlapMm) / overlapMm,
            limits.BendingTorque(lever) / lever.ReachMm,
            limits.TipTorque(lever) / lever.ReachMm,
            limits.MouthTorque(lever) / lever.ReachMm)
        {
            ReachMm = lever.ReachMm,
            TakesStrongPull = limits.BreakingTorque(lever) >= Math.Min(nutNmm, handN * lever.ReachMm),
        };
    }
}
