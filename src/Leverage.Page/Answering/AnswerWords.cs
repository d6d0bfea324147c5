using Leverage.Assessments;
using Leverage.Outcomes;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Page.Answering;

/// <summary>The words of an assessment, as the page lays them out.</summary>
internal static class AnswerWords
{
    /// <summary>The words.</summary>
    internal static PageWords Of(LooseningAssessment a, UnitStyle units)
    {
        IReadOnlyList<string> reasons = Reasons.Of(a, units);
        return new PageWords(
            LooseningTitle.Of(a.Setup, units),
            VerdictWords.Capitals(a.Verdict).ToLowerInvariant(),
            Sentence(a, units),
            a.Moves.Count > 0 ? MoveWords.Of(a.Moves[a.Verdict == Verdict.Go || a.Moves.Count == 1 ? 0 : 1], units) : "",
            [.. LooseningFigures.Takes(a, units), .. LooseningFigures.Tube(a, units), .. LooseningFigures.Around(a, units)],
            [.. a.Links.Select((link, i) => Link(a, link, i == a.Judgement.Weakest, units)).OrderBy(link => -link.StrongShare)],
            Chances(a),
            reasons,
            MoveLine.Of(a.Moves, units),
            WatchWords.Of(a, units),
            NotJudgedWords.Of(a),
            AssumedWords.Of(a.Setup.Assumed, units),
            Cautions.Of(a));
    }

    /// <summary>Beside the verdict's word: why not, or the chances where nothing speaks against it but the nut.</summary>
    private static string Sentence(LooseningAssessment a, UnitStyle units) =>
        VerdictWords.Sentence(a.Verdict == Verdict.Short && a.Lever is not null ? ChanceWords.Of(a) : Reasons.Why(a, units));

    private static LinkLine Link(LooseningAssessment a, JudgedLink link, bool weakest, UnitStyle units)
    {
        Judgement judged = a.Judgement;
        double limit = link.Limit.LimitNmm;
        return new LinkLine(
            PartWords.Name(link.Limit, units),
            $"{units.LimitNumber(Torque.FromNewtonMillimeters(limit))} {units.TorqueUnit}",
            units.TorqueNumber(Torque.FromNewtonMillimeters(judged.StrongPullNmm)),
            UnitStyle.Fixed(limit / judged.StrongPullNmm, 1),
            Math.Min(a.Nut.LikelyNmm, judged.StrongPullNmm) / limit,
            judged.StrongPullNmm / limit,
            PartWords.Source(link.Limit),
            link.Limit.Confirmed,
            weakest && limit < judged.StrongPullNmm);
    }

    private static ChanceLine[] Chances(LooseningAssessment a)
    {
        if (a.Lever is null)
        {
            return [];
        }

        OutcomeShares shares = a.Judgement.Shares;
        (string Key, string Words, double Share)[] all =
        [
            ("comes", "comes loose", shares.ComesLoose), ("stays", "stays tight", shares.StaysTight), ("breaks", "a tool breaks", shares.ToolGives),
            ("twists", "bolt or stud twists off", shares.StudTwistsOff), ("rounds", "corners round off", shares.CornersRound),
            ("slides", "tube slides off", shares.SlidesOff), ("turns", "wheel turns", shares.WheelTurns),
        ];
        int[] parts = Shares.Hundreds([.. all.Select(one => one.Share)]);
        return [.. all.Select((one, i) => new ChanceLine(one.Key, one.Words, one.Share, UnitStyle.Trim(parts[i], 0)))
            .Where((line, i) => i < 2 || parts[i] > 0)];
    }
}
