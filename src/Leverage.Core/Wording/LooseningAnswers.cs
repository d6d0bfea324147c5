using System.Text.Json;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Requests;

namespace Leverage.Wording;

/// <summary>Turns an assessment into its answer record.</summary>
public static class LooseningAnswers
{
    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units of the sentences; the numbers stay metric.</param>
    /// <returns>The answer.</returns>
    public static LooseningAnswer Of(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        Judgement judged = assessment.Judgement;
        return new LooseningAnswer(
            assessment.Setup.Fastener.BookTorque.NewtonMeters,
            new TorqueSpread(assessment.Nut.LowNmm / 1000, assessment.Nut.LikelyNmm / 1000, assessment.Nut.HighNmm / 1000),
            new HandAnswer(
                assessment.Setup.Hands.Stance.Key,
                assessment.Hand.Quantile(0.1), assessment.Hand.Quantile(0.5), assessment.Hand.Quantile(0.9)),
            Lever(assessment),
            [.. assessment.Links.Select(link => Link(link, judged, style))],
            assessment.Weakest is { } weakest ? PartWords.Name(weakest.Limit, style) : null,
            assessment.Tube is { } tube ? Tube(tube) : null,
            assessment.Hold is { } hold ? Hold(hold, judged) : null,
            assessment.Release is { } release
                ? new ReleaseAnswer(release.Energy?.Joules, release.Turns.MetersPerSecond, release.Snaps.MetersPerSecond)
                : null,
            assessment.Lever is null ? null : new OutcomeAnswer(judged.ComesLoose, judged.StaysTight, judged.Gives),
            Word(assessment.Verdict),
            Reasons.Of(assessment, style),
            AdviceWords.Of(assessment, style),
            AssumedWords.Of(assessment.Setup.Assumed, style),
            UnconfirmedWords.Of(assessment, style));
    }

    /// <summary>The answer of the inputs' swings.</summary>
    /// <param name="swings">The swings, or null.</param>
    /// <returns>Their answers, or null.</returns>
    public static IReadOnlyList<SwingAnswer>? Of(IReadOnlyList<Swing>? swings) => swings is null
        ? null
        : [.. swings.Select(s => new SwingAnswer(s.Input, s.ReachLowMm, s.ReachHighMm, s.ComesLooseLow, s.ComesLooseHigh, s.Learn))];

    /// <summary>The answer of a cross-check.</summary>
    /// <param name="drawn">The drawn chances, or null.</param>
    /// <returns>Their answer, or null.</returns>
    public static CrossCheckAnswer? Of(CrossCheck? drawn) => drawn is null
        ? null
        : new CrossCheckAnswer(drawn.Samples, drawn.Seed, drawn.Shares.ComesLoose, drawn.Shares.StaysTight, drawn.Shares.Gives);

    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Indented JSON.</returns>
    public static string ToJson(LooseningAnswer answer) =>
        JsonSerializer.Serialize(answer, AnswerJson.Shared.LooseningAnswer);

    /// <summary>A verdict as the answer spells it.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>go, care or stop.</returns>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Stop => "stop",
        Verdict.Care => "care",
        _ => "go",
    };

    /// <summary>A restraint as the command line spells it.</summary>
    /// <param name="restraint">The restraint.</param>
    /// <returns>Its name.</returns>
    public static string Word(Restraint restraint) => Array.Find(Kinds.RestraintWords, known => known.Value == restraint).Word;

    private static LeverAnswer Lever(LooseningAssessment assessment)
    {
        double? reach = assessment.Lever?.ReachMm;
        return new LeverAnswer(
            reach,
            assessment.NeededLikely.Millimeters,
            assessment.NeededHigh.Millimeters,
            assessment.Nut.LikelyNmm / reach,
            assessment.Nut.HighNmm / reach);
    }

    private static LinkAnswer Link(JudgedLink link, Judgement judged, UnitStyle style) => new(
        PartWords.Name(link.Limit, style),
        judged.DemandLikelyNmm / 1000,
        judged.DemandHighNmm / 1000,
        link.Limit.LimitNmm / 1000,
        link.Limit.LimitNmm / judged.DemandHighNmm,
        PartWords.Source(link.Limit));

    private static TubeAnswer Tube(TubeAssessment tube) => new(
        tube.Overlap.Millimeters,
        tube.HandToTip.Millimeters,
        tube.TipReaction.Newtons,
        tube.MouthReaction.Newtons,
        tube.Bending.NewtonMeters,
        tube.Tilt.Degrees,
        tube.Friction,
        double.RadiansToDegrees(tube.Checked.HeldRad),
        double.RadiansToDegrees(tube.Checked.ReleaseRad),
        tube.BestOverlap.Millimeters);

    private static HoldAnswer Hold(HoldAssessment hold, Judgement judged) => new(
        judged.DemandHighNmm / 1000,
        hold.Capacity.TotalNmm / 1000,
        hold.Safety,
        [.. hold.Capacity.Parts.Select(part => Word(part.Restraint))]);
}
