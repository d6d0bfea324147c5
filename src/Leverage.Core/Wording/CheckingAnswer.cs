using System.Text.Json.Serialization;
using Leverage.Assessments;
using Leverage.Tables;
using UnitsNet.Units;

namespace Leverage.Wording;

/// <summary>The answer of <c>leverage check --json</c>.</summary>
/// <param name="QuotedNm">The torque checked; of the first stage where a turn follows.</param>
/// <param name="TorqueNm">The torque that would be set here by the same rule.</param>
/// <param name="PreloadN">Preload at the end; low is at high friction.</param>
/// <param name="YieldShare">Share of yield that preload uses, at most 1, where the bolt yields; low is at high friction, high at low friction.</param>
/// <param name="Angle">What the turn does; null for none.</param>
/// <param name="AlphaA">Largest over smallest clamp by the way of tightening.</param>
/// <param name="Verdict"><c>low</c>, <c>fits</c>, <c>high</c>, <c>yields</c>, <c>breaks</c> or <c>strips</c>; null for the nut of an adjustable bearing.</param>
/// <param name="ReadsBetterAs">
/// <c>ft-lb</c> or <c>kgf-m</c> (<c>Nm</c> for a torque quoted in another unit) where the same number fits in that unit and
/// not in the quoted one.
/// </param>
/// <param name="UsualFor">What is set to about such a torque on this thread though it does not fit the bolt.</param>
/// <param name="Unconfirmed">What the figures rest on that is recalled or judged.</param>
public sealed record CheckingAnswer(
    double QuotedNm,
    double TorqueNm,
    RangeAnswer PreloadN,
    RangeAnswer YieldShare,
    AngleAnswer? Angle,
    double AlphaA,
    string? Verdict,
    string? ReadsBetterAs,
    IReadOnlyList<string> UsualFor,
    IReadOnlyList<string> Unconfirmed)
{
    /// <summary>Whether the tapped hole stands it; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StripAnswer? Strip { get; init; }

    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The answer.</returns>
    public static CheckingAnswer Of(CheckingAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        JointAssessment result = assessment.Result;
        return new CheckingAnswer(
            assessment.Setup.Quoted.NewtonMeters,
            assessment.Usual.NewtonMeters,
            RangeAnswer.Of(result.End),
            RangeAnswer.Of(result.End.YieldShare),
            AngleAnswer.Of(result.Angle),
            result.Method.AlphaA,
            result.Quote is { } quote ? Word(quote) : null,
            assessment.ReadsBetterAs is { } unit ? UnitWord(unit) : null,
            [.. assessment.UsualFor.Select(row => row.Application)],
            [
                .. UnconfirmedWords.Of(result),
                .. assessment.UsualFor.Where(row => row.Status.IsUnconfirmed()).Select(row => $"{row.Application} ({row.Status.Word()})"),
            ])
        {
            Strip = StripAnswer.Of(result),
        };
    }

    /// <summary>The word of a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>low, fits, high, yields, breaks or strips.</returns>
    public static string Word(TorqueVerdict verdict) => verdict switch
    {
        TorqueVerdict.Low => "low",
        TorqueVerdict.Fits => "fits",
        TorqueVerdict.High => "high",
        TorqueVerdict.Yields => "yields",
        TorqueVerdict.Breaks => "breaks",
        _ => "strips",
    };

    /// <summary>The word of a unit, as a person may write it behind a number.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Nm, ft-lb or kgf-m.</returns>
    public static string UnitWord(TorqueUnit unit) => unit switch
    {
        TorqueUnit.PoundForceFoot => "ft-lb",
        TorqueUnit.KilogramForceMeter => "kgf-m",
        _ => "Nm",
    };
}
