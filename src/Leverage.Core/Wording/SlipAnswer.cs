using System.Text.Json;
using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>One of the three states: the nut holds, it breaks loose, something snaps.</summary>
public sealed record SlipStateAnswer(double TorqueShare, double SlipAngleDeg, double SlipAngleTypicalDeg);

/// <summary>One overlap of the table; forces are of the hands, null where the wall is not known.</summary>
public sealed record SlipRowAnswer(
    double OverlapMm,
    double HandToTipMm,
    double TiltDeg,
    double JamRatio,
    double SlipAngleDeg,
    double SlipAngleAtReleaseDeg,
    double BendsAtN,
    double? TipDentsAtN,
    double? MouthDentsAtN);

/// <summary>The answer to "when does a slipped-over extension come off", as a script reads it.</summary>
public sealed record SlipAnswer(
    double OverlapMm,
    double HandToTipMm,
    double TiltDeg,
    double PlayShare,
    double Friction,
    double FrictionTypical,
    double JamRatio,
    SlipStateAnswer Holding,
    SlipStateAnswer AtRelease,
    SlipStateAnswer Snapped,
    double SnugAngleDeg,
    bool WalksOff,
    double BelowLevelDeg,
    double BestOverlapMm,
    double? TippingRatio,
    IReadOnlyList<SlipRowAnswer> Overlaps,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<string> Unconfirmed)
{
    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units of the sentences; the numbers stay metric.</param>
    /// <returns>The answer.</returns>
    public static SlipAnswer Of(SlipAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        SlipRow here = assessment.Here;
        SlipAngles typical = assessment.Typical;
        return new SlipAnswer(
            here.OverlapMm,
            here.HandToTipMm,
            Deg(here.TiltRad),
            assessment.PlayShare,
            assessment.Setup.GripFriction.Low,
            assessment.Setup.GripFriction.Likely,
            here.JamRatio,
            new SlipStateAnswer(1, Deg(here.Checked.HeldRad), Deg(typical.HeldRad)),
            new SlipStateAnswer(assessment.Setup.RunningShare, Deg(here.Checked.ReleaseRad), Deg(typical.ReleaseRad)),
            new SlipStateAnswer(0, Deg(here.Checked.SnapRad), Deg(typical.SnapRad)),
            Deg(assessment.SnugRad),
            assessment.WalksOff,
            assessment.Setup.PastSquare.Degrees,
            assessment.Best.OverlapMm,
            assessment.TippingRatio,
            [.. assessment.Rows.Select(Row)],
            AssumedWords.Of(assessment.Setup.Assumed, style),
            UnconfirmedWords.Of(assessment.Setup, style));
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
        Deg(row.Checked.ReleaseRad),
        row.BendsAtN,
        double.IsFinite(row.TipDentsAtN) ? row.TipDentsAtN : null,
        double.IsFinite(row.MouthDentsAtN) ? row.MouthDentsAtN : null);

    private static double Deg(double radians) => double.RadiansToDegrees(radians);
}
