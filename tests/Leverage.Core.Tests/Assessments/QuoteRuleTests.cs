using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What makes a quoted torque fit, low or high, on the edge and just past it, and the verdict it makes.</summary>
public sealed class QuoteRuleTests
{
    [Theory]
    [InlineData(0.45, 0.6, QuoteVerdict.Fits)]
    [InlineData(0.4499, 0.6, QuoteVerdict.Low)]
    [InlineData(0.90, 1.0, QuoteVerdict.Fits)]
    [InlineData(0.9001, 1.0, QuoteVerdict.High)]
    [InlineData(0.7, 1.0001, QuoteVerdict.High)]
    public void A_share_of_yield_fits_from_45_to_90_per_cent_where_none_yields(double likely, double high, QuoteVerdict verdict) =>
        Assert.Equal(verdict, QuoteRule.Judge(new ShareRange(0.3, likely, high)));

    [Theory]
    [InlineData(30, Verdict.Care)]
    [InlineData(66, Verdict.Go)]
    [InlineData(90, Verdict.Care)]
    [InlineData(130, Verdict.Stop)]
    public void It_is_a_stop_where_the_likely_friction_yields_the_bolt(double torqueNm, Verdict verdict) =>
        Assert.Equal(verdict, CheckingAssessor.Assess(new CheckingSetup
        {
            Quoted = Torque.FromNewtonMeters(torqueNm),
            Thread = ThreadCatalog.Named("M12"),
        }).Verdict);

    [Theory]
    [InlineData(1, Verdict.Care)]
    [InlineData(1.0001, Verdict.Stop)]
    public void Exactly_at_yield_is_still_care(double likely, Verdict verdict)
    {
        CheckingAssessment fits = CheckingAssessor.Assess(new CheckingSetup
        {
            Quoted = Torque.FromNewtonMeters(110),
            Thread = ThreadCatalog.Named("M12"),
        });
        Assert.Equal(QuoteVerdict.High, fits.Quote);
        Assert.Equal(verdict, (fits with { Buys = fits.Buys with { YieldShare = new ShareRange(0.8, likely, 1.2) } }).Verdict);
    }

    [Fact]
    public void With_no_link_nothing_is_weakest_and_safety_has_no_end()
    {
        NutFigures nut = NutFigures.Of(BreakLoose.Nuts.Of("rusted", 100, "M16"));
        var judged = Judgement.Of(nut, new HandFigures(new(500, 0.2), double.PositiveInfinity), null, [], Surroundings.None, []);
        Assert.Equal((-1, double.PositiveInfinity), (judged.Weakest, judged.Safety));
        Assert.Equal(nut.HighNmm, judged.DemandHighNmm);
        Assert.Equal((0, 0, 0), (judged.ComesLoose, judged.StaysTight, judged.Gives));
    }

    [Fact]
    public void Of_two_links_as_weak_the_first_is_named()
    {
        NutFigures nut = NutFigures.Of(BreakLoose.Nuts.Of("rusted", 100, "M16"));
        var link = LinkLimit.Least(LinkKind.Square, 300e3, LimitSource.TestTorque, true);
        var judged = Judgement.Of(
            nut, new HandFigures(new(500, 0.2), double.PositiveInfinity), 500, [link with { LimitNmm = 400e3 }, link, link], Surroundings.None, new double[3]);
        Assert.Equal(1, judged.Weakest);
        Assert.Equal(1, judged.ComesLoose + judged.StaysTight + judged.Gives, 1e-6);
    }

    [Fact]
    public void Safety_is_the_lowest_limit_over_the_hard_demand() =>
        Assert.Equal(2.5, new Judgement(600, 1000, 0, 2500, default, VerdictRules.None).Safety);
}
