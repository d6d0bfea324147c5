using Leverage.Wording;
using Leverage.Assessments;
using UnitsNet;

namespace Leverage.Page.Answering;

/// <summary>The words of an assessment, as the page lays them out.</summary>
internal static class AnswerWords
{
    /// <summary>The words.</summary>
    internal static PageWords Of(LooseningAssessment assessment, UnitStyle units)
    {
        IReadOnlyList<string> reasons = Reasons.Of(assessment, units);
        return new PageWords(
            LooseningTitle.Of(assessment.Setup, units),
            VerdictWords.Word(assessment.Verdict),
            reasons.Count > 0 ? string.Join(' ', reasons) : "Nothing known speaks against it.",
            LooseningFigures.Takes(assessment, units),
            LooseningFigures.Tube(assessment, units),
            LooseningFigures.Around(assessment, units),
            [.. assessment.Links.Select((link, i) => Link(link, i == assessment.Judgement.Weakest, assessment.Judgement, units))],
            Chances(assessment),
            AdviceWords.Of(assessment, units),
            AssumedWords.Brief(assessment.Setup.Assumed, units),
            Cautions.Of(assessment));
    }

    private static LinkLine Link(JudgedLink link, bool weakest, Judgement judged, UnitStyle units)
    {
        double limit = link.Limit.LimitNmm;
        return new LinkLine(
            PartWords.Name(link.Limit, units),
            Number(judged.DemandLikelyNmm, units),
            Number(judged.DemandHighNmm, units),
            $"{units.LimitNumber(Torque.FromNewtonMillimeters(limit))} {units.TorqueUnit}",
            UnitStyle.Fixed(limit / judged.DemandHighNmm, 1),
            judged.DemandLikelyNmm / limit,
            judged.DemandHighNmm / limit,
            PartWords.Source(link.Limit),
            link.Limit.Confirmed,
            weakest && limit < judged.DemandHighNmm);
    }

    private static ChanceLine? Chances(LooseningAssessment assessment)
    {
        if (assessment.Lever is null)
        {
            return null;
        }

        Judgement judged = assessment.Judgement;
        var (undone, stuck, gives) = Shares.Percent(judged.ComesLoose, judged.StaysTight, judged.Gives);
        return new ChanceLine(new OutcomeAnswer(judged.ComesLoose, judged.StaysTight, judged.Gives), undone, stuck, gives);
    }

    private static string Number(double torqueNmm, UnitStyle units) => units.TorqueNumber(Torque.FromNewtonMillimeters(torqueNmm));
}
