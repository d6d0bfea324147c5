using Leverage.Assessments;
using UnitsNet.Units;

namespace Leverage.Wording;

/// <summary>The answer of <c>leverage check --json</c>.</summary>
/// <param name="QuotedNm">The torque checked.</param>
/// <param name="YieldShare">Share of yield; low is at high friction, high at low friction.</param>
/// <param name="Verdict"><c>fits</c>, <c>low</c> or <c>high</c>.</param>
/// <param name="ReadsBetterAs">
/// <c>ft-lb</c> or <c>kgf-m</c> (<c>Nm</c> for a torque quoted in another unit) where the same number fits in that unit and
/// not in the quoted one.
/// </param>
/// <param name="Unconfirmed">What the figures rest on that is recalled or judged.</param>
public sealed record CheckingAnswer(
    double QuotedNm, RangeAnswer YieldShare, string Verdict, string? ReadsBetterAs, IReadOnlyList<string> Unconfirmed)
{
    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The answer.</returns>
    public static CheckingAnswer Of(CheckingAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return new CheckingAnswer(
            assessment.Setup.Quoted.NewtonMeters,
            RangeAnswer.Of(assessment.Buys.YieldShare),
            Word(assessment.Quote),
            assessment.ReadsBetterAs is { } unit ? UnitWord(unit) : null,
            UnconfirmedWords.Of(assessment.Setup.Thread, assessment.Grade, assessment.Friction));
    }

    /// <summary>The word of a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>fits, low or high.</returns>
    public static string Word(QuoteVerdict verdict) => verdict switch
    {
        QuoteVerdict.Fits => "fits",
        QuoteVerdict.Low => "low",
        _ => "high",
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
