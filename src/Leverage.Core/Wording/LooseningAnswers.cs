using System.Text.Json;
using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.LoadPath;
using Leverage.Outcomes;

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
            new TorqueSpread(assessment.Nut.LowNmm / 1000, assessment.Nut.LikelyNmm / 1000, assessment.Nut.HighNmm / 1000),
            Start(assessment.Setup.Start, assessment.Setup.Fastener.Then),
            new HandAnswer(
                assessment.Setup.Hands.Stance.Key,
                assessment.Hand.Quantile(0.1), assessment.Hand.Quantile(0.5), assessment.Hand.Quantile(0.9)),
            new LeverAnswer(assessment.Lever?.ReachMm, assessment.NeededLikely.Millimeters, assessment.NeededHigh.Millimeters),
            judged.StrongPullNmm / 1000,
            [.. assessment.Links.Select(link => Link(link.Limit, judged, style))],
            assessment.Weakest is { } weakest ? PartWords.Name(weakest.Limit, style) : null,
            NotJudgedWords.Of(assessment),
            assessment.Tube is { } tube ? Tube(tube, assessment) : null,
            Hold(assessment),
            assessment.Release is { } release
                ? new ReleaseAnswer(release.Energy?.Joules, release.Turns.MetersPerSecond, release.Snaps.MetersPerSecond)
                : null,
            assessment.Lever is null ? null : Outcomes(assessment),
            VerdictWords.Word(judged.Ruling.Safe),
            VerdictWords.Word(judged.Ruling.Comes),
            VerdictWords.Word(assessment.Verdict),
            MoveWords.Answers(assessment.Moves, style),
            Reasons.Of(assessment, style),
            WatchWords.Of(assessment, style),
            AssumedWords.Of(assessment.Setup.Assumed, style))
        {
            Counted = assessment.Lever is null ? null : Counted(assessment),
        };
    }

    /// <summary>The answer of the inputs' swings.</summary>
    /// <param name="effects">The swings, or null.</param>
    /// <returns>Their answers, or null.</returns>
    public static IReadOnlyList<SensitivityAnswer>? Of(IReadOnlyList<Sensitivity>? effects) => effects is null
        ? null
        : [.. effects.Select(s => new SensitivityAnswer(SensitivityWords.Input(s.Input), s.ReachLowMm, s.ReachHighMm, s.ComesLooseLow, s.ComesLooseHigh, SensitivityWords.Learn(s.Input)))];

    /// <summary>The answer of a cross-check.</summary>
    /// <param name="drawn">The drawn chances, or null.</param>
    /// <returns>Their answer, or null.</returns>
    public static CrossCheckAnswer? Of(CrossCheck? drawn) => drawn is null
        ? null
        : new CrossCheckAnswer(
            drawn.Samples, drawn.Seed, drawn.Shares.ComesLoose, drawn.Shares.StaysTight, drawn.Breaks);

    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Indented JSON.</returns>
    public static string ToJson(LooseningAnswer answer) =>
        JsonSerializer.Serialize(answer, AnswerJson.Shared.LooseningAnswer);

    /// <summary>For several alike: independent and wholly alike are the two bounds.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The bounds; null for one.</returns>
    public static CountedAnswer? Counted(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        int count = assessment.Setup.Count;
        var (breaks, comes) = (assessment.Judgement.Breaks, assessment.Judgement.ComesLoose);
        return count < 2 ? null : new CountedAnswer(count, breaks, 1 - Math.Pow(1 - breaks, count), Math.Pow(comes, count), comes);
    }

    /// <summary>The answer of what holds the wheel.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>Its answer; null where nothing was said of it.</returns>
    public static HoldAnswer? Hold(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return assessment.Hold is { } hold
            ? new HoldAnswer(
                hold.Capacity.TotalNmm / 1000, [.. hold.Capacity.Parts.Select(part => VerdictWords.Word(part.Restraint))],
                assessment.Setup.Hold!.EngineRunning)
            : null;
    }

    private static StartAnswer Start(StartTorque start, UnitsNet.Angle? then) => start.From == StartSource.Given
        ? new StartAnswer(VerdictWords.Word(start.From)) { TorqueNm = start.LikelyNmm / 1000, ThenDeg = then?.Degrees }
        : new StartAnswer(VerdictWords.Word(start.From))
        {
            LowNm = start.LowNmm / 1000,
            LikelyNm = start.LikelyNmm / 1000,
            HighNm = start.HighNmm / 1000,
        };

    private static LinkAnswer Link(LinkLimit link, Judgement judged, UnitStyle style) => new(
        PartWords.Name(link, style),
        link.LimitNmm / 1000,
        judged.StrongPullNmm / 1000,
        link.LimitNmm / judged.StrongPullNmm,
        PartWords.Source(link),
        link.Confirmed);

    private static TubeAnswer Tube(TubeAssessment tube, LooseningAssessment a) => new(
        tube.Overlap.Millimeters,
        tube.HandToTip.Millimeters,
        tube.TipReaction.Newtons,
        tube.MouthReaction.Newtons,
        tube.Bending.NewtonMeters,
        tube.Tilt.Degrees,
        tube.Friction,
        VerdictWords.Word(a.Setup.Hands.Stance.Push),
        double.RadiansToDegrees(tube.Checked.HeldRad),
        double.RadiansToDegrees(tube.Checked.EndRad),
        a.Nut.ClampGoneRad is { } gone ? double.RadiansToDegrees(gone) : null,
        tube.BestOverlap.Millimeters);

    /// <summary>The answer of the chances.</summary>
    /// <param name="a">The assessment; it must have a lever.</param>
    /// <returns>Its answer.</returns>
    public static OutcomeAnswer Outcomes(LooseningAssessment a)
    {
        ArgumentNullException.ThrowIfNull(a);
        OutcomeShares shares = a.Judgement.Shares;
        bool Has(RiskKind kind) => a.Links.Any(link => Judgement.RiskOf(link.Limit, a.Nut).Kind == kind);
        return new OutcomeAnswer(shares.ComesLoose, shares.StaysTight)
        {
            ToolGives = Has(RiskKind.ToolGives) ? shares.ToolGives : null,
            StudTwistsOff = Has(RiskKind.StudTwistsOff) ? shares.StudTwistsOff : null,
            CornersRound = Has(RiskKind.CornersRound) ? shares.CornersRound : null,
            SlidesOff = a.Tube is null ? null : shares.SlidesOff,
            WheelTurns = a.Hold is null || a.Setup.Hold!.OnStands ? null : shares.WheelTurns,
            SlidesAsItTurns = a.Tube is null ? null : shares.SlidesAsItTurns,
        };
    }
}
