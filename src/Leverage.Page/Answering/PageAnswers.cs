using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Page.Asking;
using Leverage.Reading;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Page.Answering;

/// <summary>Lays an assessment out for the page: the answer of the command line, and words and figures of it.</summary>
internal static class PageAnswers
{
    /// <summary>The answer.</summary>
    internal static PageAnswer Of(Said said, LooseningAssessment assessment) => new(
        LooseningAnswers.Of(assessment, said.Units),
        AnswerWords.Of(assessment, said.Units),
        Side(assessment, said.Units),
        Window(assessment, said.Units),
        Assumed(assessment, said),
        CommandText.Of(said));

    private static SideFigures? Side(LooseningAssessment a, UnitStyle units) => LeverSketcher.Of(a) is not { } sketch ? null : new(
        sketch.BarMm,
        sketch.BarDiameterMm,
        sketch.AcrossFlatsMm,
        sketch.ReachMm,
        double.RadiansToDegrees(sketch.PastSquareRad),
        sketch.HandN,
        sketch.SquareN,
        sketch.Push.ToString().ToLowerInvariant(),
        sketch.LeftHand,
        units.Force(Force.FromNewtons(sketch.HandN)),
        units.Reach(Length.FromMillimeters(sketch.ReachMm)),
        units.Torque(Torque.FromNewtonMillimeters(sketch.TorqueNmm)),
        QuantityWriter.Text(Torque.FromNewtonMeters(Math.Round(a.Hand.Quantile(0.5) * sketch.ReachMm / 1000))),
        sketch.Gives is { } gives ? PartWords.Name(gives, units) : null,
        sketch.Tube is { } tube && a.Tube is { } judged ? Tube(a, sketch, tube, judged, units) : null);

    private static TubeFigures Tube(LooseningAssessment a, LeverSketch sketch, TubeSketch tube, TubeAssessment judged, UnitStyle units)
    {
        var (least, most) = a.Setup.Overlaps ?? (judged.Overlap, judged.Overlap);
        return new TubeFigures(
            tube.LengthMm,
            tube.BoreMm,
            tube.WallMm,
            tube.OverlapMm,
            least.Millimeters,
            most.Millimeters,
            judged.BestOverlap.Millimeters,
            tube.HandToTipMm,
            double.RadiansToDegrees(tube.TiltRad),
            tube.TipN,
            tube.MouthN,
            tube.OutwardN,
            tube.HoldsN,
            tube.StaysOn,
            double.RadiansToDegrees(judged.Checked.HeldRad),
            double.RadiansToDegrees(judged.Checked.EndRad),
            sketch.Gives?.Kind switch
            {
                LinkKind.TubeBending => "folds",
                LinkKind.TubeDentTip => "dents-tip",
                LinkKind.TubeDentMouth => "dents-mouth",
                _ => null,
            },
            units.Force(judged.TipReaction),
            units.Force(judged.MouthReaction),
            units.Length(judged.Overlap),
            UnitStyle.Angle(Angle.FromRadians(judged.Checked.HeldRad)),
            a.Setup.Hands.Stance.GripOffsetMm);
    }

    private static WindowFigures Window(LooseningAssessment a, UnitStyle units)
    {
        ForceWindow w = WindowMaker.Of(a);
        double top = Ticks.Top(Math.Max(1.9 * w.HandHighN, 1.1 * a.Nut.LikelyNmm / (w.YourReachMm ?? a.NeededLikely.Millimeters)));
        return new WindowFigures(
            w.ReachMm,
            w.NeedLowN,
            w.NeedLikelyN,
            w.NeedHighN,
            w.HandLowN,
            w.HandLikelyN,
            w.HandHighN,
            [.. w.Limits.Select(limit => new CurveLine(PartWords.Name(limit.Link, units), [.. limit.ForceN.Select(n => double.IsFinite(n) ? n : (double?)null)]))],
            w.RoofN,
            w.YourReachMm,
            w.Works?.FromMm,
            w.Works?.ToMm,
            top,
            Ticks.Of(w.ReachMm[0], w.ReachMm[^1], units.IsUs ? 25.4 : 1000),
            Ticks.Of(0, top, units.IsUs ? Force.FromPoundsForce(1).Newtons : 1),
            units.ReachUnit,
            units.ForceUnit,
            w.NoLengthHelps is { } part ? $"No length helps: the {PartWords.Name(part, units)} breaks first."
                : w.Works is { } works ? $"Works from {units.Reach(Length.FromMillimeters(works.FromMm))} to {units.Reach(Length.FromMillimeters(works.ToMm))}."
                : "No length on this chart works.");
    }

    /// <summary>What stands in for a field left empty, as text for the field itself.</summary>
    private static Dictionary<string, string> Assumed(LooseningAssessment a, Said said)
    {
        LooseningSetup setup = a.Setup;
        (string Field, string Text)[] all =
        [
            ("condition", setup.Fastener.Condition.Words),
            ("hex", setup.Fastener.AcrossFlats is { } flats ? said.Units.Length(flats) : ""),
            ("stance", setup.Hands.Stance.Key),
            ("body", said.Units.Mass(setup.Hands.Body)),
            ("bar-diameter", setup.Bar?.Diameter is { } diameter ? said.Units.Length(diameter) : ""),
            ("overlap", setup.Tube is null ? "" : said.Units.Length(setup.Overlap)),
            ("surface", setup.Tube is null ? "" : setup.Surface.Words),
            ("past-square", UnitStyle.Angle(setup.PastSquare)),
        ];
        return all.Where(each => each.Text.Length > 0 && said.Text(each.Field) is null)
            .ToDictionary(each => each.Field, each => each.Text, StringComparer.Ordinal);
    }
}
