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
    /// <summary>Every third point of those the printed chart has is drawn.</summary>
    private const int Step = 3;

    /// <summary>Limits drawn at most.</summary>
    private const int Limits = 3;

    /// <summary>The answer.</summary>
    internal static PageAnswer Of(Query asked, LooseningAssessment assessment) => new(
        LooseningAnswers.Of(assessment, asked.Units),
        AnswerWords.Of(assessment, asked.Units),
        Side(assessment, asked.Units),
        Window(assessment, asked.Units),
        Assumed(assessment, asked),
        CommandText.Of(asked));

    /// <summary>What changes at every frame of a drag.</summary>
    internal static SketchAnswer Sketch(Query asked, LooseningAssessment assessment, bool chart) => new(
        new(AnswerWords.Verdict(assessment), AnswerWords.Sentence(assessment, asked.Units)),
        Side(assessment, asked.Units),
        chart ? Window(assessment, asked.Units) : null);

    private static SideFigures? Side(LooseningAssessment a, UnitStyle units) => LeverSketcher.Of(a) is not { } sketch ? null : new(
        sketch.BarMm,
        sketch.BarDiameterMm,
        sketch.AcrossFlatsMm,
        sketch.ReachMm,
        double.RadiansToDegrees(sketch.PastSquareRad),
        sketch.HandN,
        sketch.Push.ToString().ToLowerInvariant(),
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
            double.RadiansToDegrees(tube.TiltRad),
            tube.TipN,
            tube.MouthN,
            tube.StaysOn,
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
            UnitStyle.Angle(Angle.FromRadians(judged.Checked.HeldRad)));
    }

    private static WindowFigures Window(LooseningAssessment a, UnitStyle units)
    {
        ForceWindow w = WindowMaker.Of(a);
        double top = Ticks.Top(Math.Max(1.9 * w.HandHighN, 1.1 * a.Nut.LikelyNmm / (w.YourReachMm ?? a.NeededLikely.Millimeters)));
        return new WindowFigures(
            Tenths.Of(w.ReachMm, Step),
            Tenths.Of(w.NeedLowN, Step),
            Tenths.Of(w.NeedLikelyN, Step),
            Tenths.Of(w.NeedHighN, Step),
            w.HandLowN,
            w.HandLikelyN,
            w.HandHighN,
            [.. First(w, top).Select(limit => new CurveLine(PartWords.Name(limit.Link, units), Tenths.Of(limit.ForceN, Step)))],
            w.YourReachMm,
            top,
            Ticks.Of(w.ReachMm[0], w.ReachMm[^1], units.IsUs ? 25.4 : 1000),
            Ticks.Of(0, top, units.IsUs ? Force.FromPoundsForce(1).Newtons : 1),
            units.ReachUnit,
            units.ForceUnit,
            w.NoLengthHelps is { } part ? $"No length helps: the {PartWords.Name(part, units)} breaks first."
                : w.Works is { } works ? $"Works from {units.Reach(Length.FromMillimeters(works.FromMm))} to {units.Reach(Length.FromMillimeters(works.ToMm))}."
                : "No length on this chart works.");
    }

    /// <summary>The limits on the chart that come first where the lever ends, or at its longest without one. Each falls with the length.</summary>
    private static IEnumerable<LimitCurve> First(ForceWindow w, double top)
    {
        int at = w.ReachMm.TakeWhile(mm => mm < (w.YourReachMm ?? w.ReachMm[^1])).Count();
        return w.Limits.Where(limit => limit.ForceN[^1] < top).OrderBy(limit => ForceAt(limit, at)).Take(Limits);
    }

    private static double ForceAt(LimitCurve limit, int at) =>
        at < limit.ForceN.Count && double.IsFinite(limit.ForceN[at]) ? limit.ForceN[at] : limit.ForceN.First(double.IsFinite);

    /// <summary>What stands in for a field left empty, as text for the field itself.</summary>
    private static Dictionary<string, string> Assumed(LooseningAssessment a, Query asked)
    {
        LooseningSetup setup = a.Setup;
        (string Field, string Text)[] all =
        [
            ("condition", setup.Fastener.Condition.Words),
            ("hex", setup.Fastener.AcrossFlats is { } flats ? asked.Units.Length(flats) : ""),
            ("stance", setup.Hands.Stance.Words),
            ("body", asked.Units.Mass(setup.Hands.Body)),
            ("bar-diameter", setup.Bar?.Diameter is { } diameter ? asked.Units.Length(diameter) : ""),
            ("overlap", setup.Tube is null ? "" : asked.Units.Length(setup.Overlap)),
            ("surface", setup.Tube is null ? "" : setup.Surface.Words),
            ("past-square", UnitStyle.Angle(setup.PastSquare)),
        ];
        return all.Where(each => each.Text.Length > 0 && asked.Text(each.Field) is null)
            .ToDictionary(each => each.Field, each => each.Text, StringComparer.Ordinal);
    }
}
