using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Holding;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What holds of every assessment, however odd the request.</summary>
[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 250)]
public sealed class AnyAssessmentLaws
{
    [Property]
    public void The_verdict_is_what_the_documented_rules_make_of_the_answer_s_own_figures(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { } assessment)
        {
            return;
        }

        LooseningAnswer answer = LooseningAnswers.Of(assessment, UnitStyle.Metric);
        OutcomeAnswer chances = answer.Outcomes ?? new OutcomeAnswer(0, 0);
        double hurt = (chances.ToolGives ?? 0) + (chances.SlidesOff ?? 0) + (chances.WheelTurns ?? 0);
        double damage = (chances.StudTwistsOff ?? 0) + (chances.CornersRound ?? 0);
        double needs = assessment.Nut.HighNmm / 1000;
        double breaks = assessment.Tube is { } tube ? tube.BreaksAtN * answer.Lever.ReachMm!.Value / 1000 : double.PositiveInfinity;
        double Pushed(double force) => answer.Lever.ReachMm is { } reach ? Math.Min(needs, force * reach / 1000) : 0;
        StandRisk stands = assessment.Stands?.Risk ?? StandRisk.Small;
        bool stop = hurt > 0.10 || damage > 0.25 || stands == StandRisk.Stop || breaks < Pushed(answer.Hand.LikelyN);
        bool care = hurt > 0.02 || damage > 0.05 || stands == StandRisk.Care || breaks < Pushed(answer.Hand.HighN)
            || chances.SlidesAsItTurns > 0.05 || answer.Release?.SpeedTurnsMs > 3;
        bool judged = answer.Outcomes is not null
            && assessment.Links.Any(link => link.Limit.Kind is LinkKind.Socket or LinkKind.Ring or LinkKind.Open or LinkKind.Key or LinkKind.Square);
        string verdict = stop ? "stop" : !judged ? "notJudged" : chances.ComesLoose < 0.5 ? "short" : care ? "care" : "go";
        Assert.Equal(verdict, answer.Verdict);
        Assert.Equal(stop || care || verdict == "short", answer.Reasons.Count > 0);
    }

    [Property]
    public void Every_reason_names_a_part_or_what_moves_and_every_stop_has_one(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { } a)
        {
            return;
        }

        string[] subjects =
        [
            .. a.Links.Select(link => $"The {PartWords.Name(link.Limit, UnitStyle.Metric)} "),
            "The wheel ", "The nut ", "The tube ", "Your hands ", "The vehicle ", "A stand ",
        ];
        IReadOnlyList<string> reasons = Reasons.Of(a, UnitStyle.Metric);
        Assert.All(reasons, reason => Assert.Contains(subjects, subject => reason.StartsWith(subject, StringComparison.Ordinal)));
        Assert.Equal(reasons.Count, reasons.Distinct(StringComparer.Ordinal).Count());
        Assert.True(a.Verdict != Verdict.Stop || reasons.Count > 0);
    }

    [Property]
    public void A_title_names_no_book_unless_to_say_that_none_gave_the_torque(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is { } a)
        {
            string title = LooseningTitle.Of(a.Setup, UnitStyle.Metric);
            Assert.DoesNotContain("in the book", title, StringComparison.Ordinal);
            Assert.Equal(a.Setup.Start.From != StartSource.Given, title.Contains("not from a book", StringComparison.Ordinal));
        }
    }

    [Property]
    public void The_strong_pull_is_no_more_than_a_hard_nut_takes_or_a_strong_hand_gives(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { } a)
        {
            return;
        }

        double strong = a.Judgement.StrongPullNmm;
        double hands = a.Lever is { } lever ? a.Hand.Quantile(0.9) * lever.ReachMm : double.PositiveInfinity;
        Assert.InRange(strong, 0, Math.Min(a.Nut.HighNmm, hands) * (1 + 1e-9));
        Assert.True(a.Nut.LowNmm <= a.Nut.LikelyNmm && a.Nut.LikelyNmm <= a.Nut.HighNmm);
        Assert.True(a.Links.All(link => link.Limit.LimitNmm >= a.Judgement.LowestLimitNmm));
        Assert.All(LooseningAnswers.Of(a, UnitStyle.Metric).LoadPath, link => Near.Equal(link.LimitNm / (strong / 1000), link.Margin));
    }

    [Property]
    public void The_chances_present_sum_to_one_and_each_part_s_to_its_own(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { Lever: not null } a)
        {
            return;
        }

        OutcomeAnswer chances = LooseningAnswers.Of(a, UnitStyle.Metric).Outcomes!;
        double?[] all =
        [
            chances.ComesLoose, chances.StaysTight, chances.ToolGives, chances.StudTwistsOff, chances.CornersRound,
            chances.SlidesOff, chances.WheelTurns,
        ];
        Assert.Equal(1, all.Sum(one => one ?? 0), 2e-6);
        Assert.All(all, one => Assert.True(one is null or (>= -1e-9 and <= 1 + 1e-9)));
        Assert.InRange(chances.SlidesAsItTurns ?? 0, 0, 1 + 1e-9);
        Assert.Equal(
            (chances.ToolGives ?? 0) + (chances.StudTwistsOff ?? 0) + (chances.CornersRound ?? 0), a.Links.Sum(link => link.Gives), 1e-6);
        Assert.Equal(a.Tube is null, chances.SlidesOff is null);
        Assert.Equal(100, Shares.Hundreds([.. all.Select(one => one ?? 0)]).Sum());
    }

    /// <summary>Where the tube stays on; what holds the wheel is left out, for a lift takes less load off it the longer the lever.</summary>
    [Property]
    public void More_reach_never_lowers_the_hand_s_share(Draws draws, Sized more)
    {
        LooseningRequest request = AnyRequest.From(draws);
        if (Judged(request) is not { Lever: not null } judged || request.Bar is not { } bar)
        {
            return;
        }

        Length by = Length.FromMillimeters(more.Log(1, 2000));
        LooseningSetup setup = judged.Setup with { Hold = null };
        OutcomeShares shorter = LooseningAssessor.WithoutAdvice(setup).Judgement.Shares;
        OutcomeShares longer = LooseningAssessor.WithoutAdvice(setup with
        {
            Tube = setup.Tube is { } tube ? tube with { Length = tube.Length + by } : null,
            Bar = setup.Tube is null ? setup.Bar! with { Length = bar + by } : setup.Bar,
        }).Judgement.Shares;
        Assert.True(longer.StaysTight * (1 - shorter.SlidesOff) <= shorter.StaysTight * (1 - longer.SlidesOff) + 2e-6);
    }

    [Property]
    public void Nothing_is_assumed_twice(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is { } a)
        {
            var words = AssumedWords.Of(a.Setup.Assumed, UnitStyle.Metric);
            Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
        }
    }

    private static LooseningAssessment? Judged(LooseningRequest request)
    {
        try
        {
            return SampleRequests.Judged(request);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
