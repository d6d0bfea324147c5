using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out what a tube does on its bar.</summary>
internal static class TubeAssessor
{
    /// <summary>Step of the search for the best overlap, mm.</summary>
    private const double StepMm = 5;

    internal static TubeAssessment? Assess(LooseningSetup setup, NutFigures nut, Judgement judged, LeverGeometry? lever)
    {
        if (setup is not { Tube: { } tube, Bar: { } bar } || lever is not { } geometry)
        {
            return null;
        }

        double force = judged.StrongPullNmm / geometry.ReachMm;
        double mouth = TubeBearing.MouthReaction(force, geometry.HandToTipMm, geometry.OverlapMm);
        var (low, typical) = (setup.Surface.Friction.Low, setup.Surface.Friction.Likely);
        double left = nut.ShareLeft(setup.TurnRad, nut.LikelyNmm);
        return new TubeAssessment(
            setup.Overlap,
            Length.FromMillimeters(geometry.HandToTipMm),
            Force.FromNewtons(TubeBearing.TipReaction(force, geometry.HandToTipMm, geometry.OverlapMm)),
            Force.FromNewtons(mouth),
            Torque.FromNewtonMillimeters(TubeBearing.TubeMoment(force, geometry.HandToTipMm)),
            Angle.FromRadians(SlipAngles.Tilt(bar, tube, geometry.OverlapMm)),
            (tube.Bore - bar.Diameter!.Value) / bar.Diameter.Value,
            low,
            SlipAngles.Of(bar, tube, geometry, low, left),
            typical,
            SlipAngles.Of(bar, tube, geometry, typical, left),
            BestOverlap(bar, tube, setup.Hands.Stance.GripOffsetMm, low, nut.HighNmm, HandFigures.Of(setup.Hands).Quantile(0.9)),
            tube.Wall is { } wall && mouth > TubeDent.MarkForce(tube.Yield.Megapascals, wall.Millimeters))
        {
            EndShare = left,
            BreaksAtN = TubeLimits.Of(tube).BreakingTorque(geometry) / geometry.ReachMm,
        };
    }

    /// <summary>
    /// The overlap with the widest safe angle of those the tube stands at the hard demand, what the nut or the hands give at
    /// most; where it stands none, the overlap at which it stands most. The one definition of what is best.
    /// </summary>
    internal static Length BestOverlap(Bar bar, Tube tube, double gripOffsetMm, double friction, double nutNmm, double handN)
    {
        TubeLimits limits = TubeLimits.Of(tube);
        double best = 0;
        var bestScore = (Stands: -1, Value: double.NegativeInfinity);
        foreach (double overlap in Overlaps(bar, tube, gripOffsetMm))
        {
            LeverGeometry lever = LeverGeometry.WithTube(
                bar.Length.Millimeters, tube.Length.Millimeters, overlap, gripOffsetMm);
            double stands = limits.BreakingTorque(lever);
            var score = stands >= Math.Min(nutNmm, handN * lever.ReachMm)
                ? (1, SlipAngles.Of(bar, tube, lever, friction, 1).HeldRad)
                : (0, stands);
            if (score.CompareTo(bestScore) > 0)
            {
                (best, bestScore) = (overlap, score);
            }
        }

        return Length.FromMillimeters(best);
    }

    /// <summary>
    /// Overlaps that leave room for the hands, from one bar diameter, or the play where that is more, to all the straight
    /// handle.
    /// </summary>
    internal static IEnumerable<double> Overlaps(Bar bar, Tube tube, double gripOffsetMm)
    {
        var (least, most) = Range(bar, tube, gripOffsetMm);
        for (double overlap = least; overlap < most; overlap += StepMm)
        {
            yield return overlap;
        }

        yield return most;
    }

    /// <summary>The shortest and the longest of these overlaps, mm.</summary>
    internal static (double Least, double Most) Range(Bar bar, Tube tube, double gripOffsetMm)
    {
        double most = Math.Min(bar.StraightHandle.Millimeters, tube.Length.Millimeters - gripOffsetMm - 1);
        double diameter = bar.Diameter!.Value.Millimeters;
        double shortest = Math.Max(diameter, tube.Bore.Millimeters - diameter);
        return (Math.Min(most, Math.Ceiling(shortest / StepMm) * StepMm), most);
    }
}
