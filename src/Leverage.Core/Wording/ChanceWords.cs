using Leverage.Assessments;
using Leverage.Outcomes;

namespace Leverage.Wording;

/// <summary>Words of chances, in hundreds that sum to 100.</summary>
internal static class ChanceWords
{
    /// <summary>The chances of an assessment, those that are not 0: "in 100: comes loose 2, stays tight 98".</summary>
    internal static string Of(LooseningAssessment assessment)
    {
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
internal static class NotJudgedWords
{
    /// <summary>What an assessment did not judge.</summary>
    internal static IReadOnlyList<string> Of(LooseningAssessment assessment)
    {
        bool turns = assessment.Setup.Place is null or { TurnsWheel: true };
        return [.. assessment.NotJudged.Select(PartWords.Name), .. assessment.Setup.Hold is null && turns ? ["what holds the wheel"] : Array.Empty<string>()];
    }
}

/// <summary>Whole hundredths that sum to 100: the largest remainders are rounded up.</summary>
internal static class Shares
{
    /// <summary>Shares as whole hundredths.</summary>
    internal static int[] Hundreds(IReadOnlyList<double> shares)
    {
        int[] whole = [.. shares.Select(share => (int)Math.Floor(100 * share + 1e-9))];
        int left = Math.Clamp((int)Math.Round(100 * shares.Sum()) - whole.Sum(), 0, whole.Length);
        foreach (int i in Enumerable.Range(0, whole.Length).OrderByDescending(i => 100 * shares[i] - whole[i]).Take(left))
        {
            whole[i]++;
        }

        return whole;
    }
}
