using System.Text.Json;
using Leverage.Assessments;
using Leverage.Tubes;

namespace Leverage.Wording;

/// <summary>One overlap of the table; forces are of the hands, null where the wall is not known.</summary>
public sealed record SlipRowAnswer(
    double OverlapMm,
    double HandToTipMm,
    double TiltDeg,
    double JamRatio,
    double SlipAngleDeg,
    double SlipAngleAtEndDeg,
    double BendsAtN,
    double? TipDentsAtN,
    double? MouthDentsAtN);

/// <summary>The answer to "when does a slipped-over tube come off", as a script reads it.</summary>
public sealed record SlipAnswer(
    TubeAnswer Tube,
    IReadOnlyList<SlipRowAnswer> Overlaps,
    string Verdict,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<string> Assumed)
{
    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units of the sentences; the numbers stay metric.</param>
    /// <returns>The answer.</returns>
    public static SlipAnswer Of(SlipAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        SlipRow here = assessment.Here;
        return new SlipAnswer(
            new TubeAnswer(
                here.OverlapMm,
                here.HandToTipMm,
                TubeBearing.TipReaction(assessment.StrongN, here.HandToTipMm, here.OverlapMm),
                TubeBearing.MouthReaction(assessment.StrongN, here.HandToTipMm, here.OverlapMm),
                TubeBearing.TubeMoment(assessment.StrongN, here.HandToTipMm) / 1000,
                Deg(here.TiltRad),
                assessment.Setup.Surface.Friction.Low,
                VerdictWords.Word(assessment.Setup.Hands.Stance.Push),
                Deg(here.Checked.HeldRad),
                Deg(here.Checked.EndRad),
                assessment.ClampGoneRad is { } gone ? Deg(gone) : null,
                assessment.Best.OverlapMm),
            [.. assessment.Rows.Select(Row)],
            VerdictWords.Word(assessment.Verdict),
            SlipWords.Reasons(assessment, style),
            AssumedWords.Of(assessment.Setup.Assumed, style));
    }

    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <returns>Indented JSON.</returns>
    public string ToJson() => JsonSerializer.Serialize(this, AnswerJson.Shared.SlipAnswer);

    private static SlipRowAnswer Row(SlipRow row) => new(
        row.OverlapMm,
        row.HandToTipMm,
        Deg(row.TiltRad),
        row.JamRatio,
        Deg(row.Checked.HeldRad),
        Deg(row.Checked.EndRad),
        row.BendsAtN,
        double.IsFinite(row.TipDentsAtN) ? row.TipDentsAtN : null,
        double.IsFinite(row.MouthDentsAtN) ? row.MouthDentsAtN : null);

    private static double Deg(double radians) => double.RadiansToDegrees(radians);
}
