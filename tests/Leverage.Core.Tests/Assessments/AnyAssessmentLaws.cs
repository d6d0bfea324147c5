using FsCheck.Xunit;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What holds of every assessment, however odd the request.</summary>
[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 250)]
public sealed class AnyAssessmentLaws
{
    [Property]
    public void The_verdict_is_what_the_documented_rules_make_of_the_answer_s_own_figures(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { } assessment)
        {
            return;
        }

        LooseningAnswer answer = LooseningAnswers.Of(assessment, UnitStyle.Metric);
        double likely = assessment.Judgement.DemandLikelyNmm / 1000;
        double high = assessment.Judgement.DemandHighNmm / 1000;
        double limit = answer.LoadPath.Select(link => link.LimitNm).DefaultIfEmpty(double.PositiveInfinity).Min();
        double hold = answer.Hold?.CapacityNm ?? double.PositiveInfinity;
        double below = assessment.Setup.BelowLevel.Degrees;
        double held = answer.Tube?.SlipAngleDeg ?? double.PositiveInfinity;
        double release = answer.Tube?.SlipAngleAtReleaseDeg ?? double.PositiveInfinity;
        bool stop = limit < likely || hold < likely || held < below || assessment.Setup.Hold?.OnStands == true;
        bool care = limit < high || hold < high || release < below || answer.Outcomes?.Gives > 0.05 || answer.Outcomes?.StaysTight > 0.5;
        Assert.Equal(stop ? "stop" : care ? "care" : "go", answer.Verdict);
        Assert.Equal(answer.Verdict == "go", answer.Reasons.Count == 0);
    }

    [Property]
    public void Demands_are_the_break_loose_capped_by_what_the_hands_can_apply(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { } a)
        {
            return;
        }

        double most = a.Lever is { } lever ? a.Hand.Quantile(0.9) * lever.ReachMm : double.PositiveInfinity;
        Near.Equal(Math.Min(a.Nut.LikelyNmm, most), a.Judgement.DemandLikelyNmm);
        Near.Equal(Math.Min(a.Nut.HighNmm, most), a.Judgement.DemandHighNmm);
        Assert.True(a.Nut.LowNmm < a.Nut.LikelyNmm && a.Nut.LikelyNmm < a.Nut.HighNmm);
        Assert.True(a.Links.All(link => link.Limit.LimitNmm >= a.Judgement.LowestLimitNmm));
        Assert.All(LooseningAnswers.Of(a, UnitStyle.Metric).LoadPath, link => Near.Equal(link.LimitNm / link.DemandHighNm, link.Safety));
    }

    [Property]
    public void The_three_chances_sum_to_one_and_the_links_to_the_third(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { Lever: not null } a)
        {
            return;
        }

        OutcomeAnswer chances = LooseningAnswers.Of(a, UnitStyle.Metric).Outcomes!;
        Assert.Equal(1, chances.ComesLoose + chances.StaysTight + chances.Gives, 1e-6);
        Assert.Equal(chances.Gives, a.Links.Sum(link => link.Gives), 1e-6);
        Assert.True(chances is { ComesLoose: >= -1e-9, StaysTight: >= -1e-9, Gives: >= 0 });
        var (undone, stuck, gives) = Shares.Percent(chances.ComesLoose, chances.StaysTight, chances.Gives);
        Assert.Equal(100, Number(undone) + Number(stuck) + Number(gives));
    }

    [Property]
    public void More_reach_never_lowers_the_hand_s_share(Places places, Sized more)
    {
        LooseningRequest request = AnyRequest.From(places);
        if (Judged(request) is not { Lever: not null } shorter || request.Bar is not { } bar)
        {
            return;
        }

        Length by = Length.FromMillimeters(more.Log(1, 2000));
        LooseningSetup longer = shorter.Setup with
        {
            Tube = shorter.Setup.Tube is { } tube ? tube with { Length = tube.Length + by } : null,
            Bar = shorter.Setup.Tube is null ? shorter.Setup.Bar! with { Length = bar + by } : shorter.Setup.Bar,
        };
        Assert.True(LooseningAssessor.WithoutAdvice(longer).Judgement.StaysTight <= shorter.Judgement.StaysTight + 1e-7);
    }

    [Property]
    public void Advice_never_makes_the_verdict_worse_and_tells_the_assessment_it_leads_to(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { } now)
        {
            return;
        }

        LooseningAssessment advised = LooseningAssessor.Assess(now.Setup);
        Assert.All(advised.Advice, advice => Assert.True(advice.After.Verdict <= now.Verdict));
        Assert.Equal(advised.Advice.Count, advised.Advice.Select(advice => advice.Kind).Distinct().Count());
    }

    [Property]
    public void Nothing_is_assumed_twice(Places places)
    {
        if (Judged(AnyRequest.From(places)) is { } a)
        {
            var words = AssumedWords.Of(a.Setup.Assumed, UnitStyle.Metric);
            Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
        }
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static LooseningAssessment? Judged(LooseningRequest request)
    {
        try
        {
            return Asked.Judged(request);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
