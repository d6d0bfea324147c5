using Leverage.Assessments;
using Leverage.Outcomes;

namespace Leverage.Wording;

/// <summary>Words of chances, in hundreds that sum to 100.</summary>
public static class ChanceWords
{
    /// <summary>The chances of an assessment, those that are not 0: "in 100: comes loose 2, stays tight 98".</summary>
    /// <param name="assessment">The assessment; it must have a lever.</param>
    /// <returns>One line.</returns>
    public static string Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        OutcomeShares shares = assessment.Judgement.Shares;
        (string Words, double Share)[] all =
        [
            ("comes loose", shares.ComesLoose), ("stays tight", shares.StaysTight), ("a tool breaks", shares.ToolGives),
            ("bolt or stud twists off", shares.StudTwistsOff), ("corners round off", shares.CornersRound),
            ("tube slides off", shares.SlidesOff), ("wheel turns", shares.WheelTurns),
        ];
        int[] parts = Shares.Hundreds([.. all.Select(one => one.Share)]);
        return "in 100: " + string.Join(", ", all.Zip(parts)
            .Where((one, i) => i < 2 || one.Second > 0)
            .Select(one => FormattableString.Invariant($"{one.First.Words} {one.Second}")));
    }
}

/// <summary>Words of what was not judged.</summary>
public static class NotJudgedWords
{
    /// <summary>What an assessment did not judge.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>Parts, and the hold.</returns>
    public static IReadOnlyList<string> Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        bool turns = assessment.Setup.Place is null or { Turns: BreakLoose.TurnsWith.Wheel };
        return [.. assessment.NotJudged.Select(PartWords.Name), .. assessment.Setup.Hold is null && turns ? ["what holds the wheel"] : Array.Empty<string>()];
    }
}
