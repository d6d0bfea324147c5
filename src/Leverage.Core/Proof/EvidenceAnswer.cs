using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>One measured or stated figure; its percentiles in the state it belongs to, null where it cannot be compared.</summary>
public sealed record MeasuredAnswer(
    string Key, string Words, string RefersTo, double? Low, double? Typical, double? High,
    double? LowPercentile, double? TypicalPercentile, double? HighPercentile, string Source, string Status);

/// <summary>One state of the joint beside its figures; <c>finding</c> is fits, tooLow, tooHigh or none.</summary>
public sealed record EvidenceAnswer(
    string Condition, string Words, string Finding, double? OverMedian, IReadOnlyList<MeasuredAnswer> Figures)
{
    internal static EvidenceAnswer Of(ConditionEvidence evidence) => new(
        evidence.Condition,
        evidence.Words,
        evidence.Finding switch
        {
            EvidenceFinding.Fits => "fits",
            EvidenceFinding.TooLow => "tooLow",
            EvidenceFinding.TooHigh => "tooHigh",
            _ => "none",
        },
        evidence.OverMedian,
        [.. evidence.Ratios.Select(Figure)]);

    private static MeasuredAnswer Figure(MeasuredRatio ratio) => new(
        ratio.Key, ratio.Words, ratio.RefersTo, ratio.Low, ratio.Typical, ratio.High,
        Percentile(ratio, ratio.Low), Percentile(ratio, ratio.Typical), Percentile(ratio, ratio.High), ratio.Source, ratio.Status.Word());

    private static double? Percentile(MeasuredRatio ratio, double? figure) => 100 * ratio.ShareBelow(figure);
}
