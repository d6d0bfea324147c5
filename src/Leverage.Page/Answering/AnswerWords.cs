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
        IReadOnlyList<MoveLine> moves = MoveLine.Of(a.Moves, units);
        return new PageWords(
            LooseningTitle.Of(a.Setup, units),
            Verdict(a),
            Sentence(a, units),
            Next(a, moves),
            [.. LooseningFigures.Takes(a, units), .. LooseningFigures.Tube(a, units), .. LooseningFigures.Around(a, units)],
            [.. a.Links.OrderBy(link => link.Limit.LimitNmm).Select((link, i) => Link(a, link, i == 0, units))],
            Chances(a),
            reasons,
            moves,
            WatchWords.Of(a, units),
            NotJudgedWords.Of(a),
            AssumedWords.Of(a.Setup.Assumed, units),
            Cautions.Of(a));
    }

    /// <summary>The verdict's word.</summary>
    internal static string Verdict(LooseningAssessment a) => VerdictWords.Capitals(a.Verdict).ToLowerInvariant();

    /// <summary>
    /// The first move; the pull as asked only where that is a go or there is no other, and what destroys the nut where there is nothing else.
    /// </summary>
    private static string Next(LooseningAssessment a, IReadOnlyList<MoveLine> moves) =>
        moves.OrderBy(move => move.Mark == "last" ? 2 : move.Mark == "now" && a.Verdict != Assessments.Verdict.Go ? 1 : 0).FirstOrDefault()?.Words ?? "";

    /// <summary>Beside the verdict's word: why not, or the chances where nothing speaks against it but the nut.</summary>
    internal static string Sentence(LooseningAssessment a, UnitStyle units) =>
        VerdictWords.Sentence(a.Verdict == Assessments.Verdict.Short && a.Lever is not null ? ChanceWords.Of(a) : Reasons.Why(a, units));

    private static LinkLine Link(LooseningAssessment a, JudgedLink link, bool weakest, UnitStyle units)
    {
        Judgement judged = a.Judgement;
        double limit = link.Limit.LimitNmm;
        return new LinkLine(
            PartWords.Name(link.Limit, units),
            $"{units.LimitNumber(Torque.FromNewtonMillimeters(limit))} {units.TorqueUnit}",
            units.TorqueNumber(Torque.FromNewtonMillimeters(judged.StrongPullNmm)),
            UnitStyle.Fixed(limit / judged.StrongPullNmm, 1),
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
