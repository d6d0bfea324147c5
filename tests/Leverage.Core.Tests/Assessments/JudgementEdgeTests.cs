using Leverage.Assessments;
using Leverage.LoadPath;

namespace Leverage.Tests.Assessments;

public sealed class JudgementEdgeTests
{
    [Fact]
    public void With_no_link_nothing_is_weakest_and_the_margin_has_no_end()
    {
        NutFigures nut = NutFigures.Of(BreakLoose.Nuts.Of("rusted", 100, "M16"));
        var judged = Judgement.Of(nut, new HandFigures(new(500, 0.2), double.PositiveInfinity), null, [], Circumstances.None, []);
        Assert.Equal((-1, double.PositiveInfinity), (judged.Weakest, judged.Margin));
        Assert.Equal(nut.HighNmm, judged.StrongPullNmm);
        Assert.Equal((0, 0, 0), (judged.ComesLoose, judged.StaysTight, judged.Breaks));
    }

    [Fact]
    public void Of_two_links_as_weak_the_first_is_named()
    {
        NutFigures nut = NutFigures.Of(BreakLoose.Nuts.Of("rusted", 100, "M16"));
        var link = LinkLimit.Least(LinkKind.Square, 300e3, LimitSource.TestTorque, true);
        var judged = Judgement.Of(
            nut, new HandFigures(new(500, 0.2), double.PositiveInfinity), 500, [link with { LimitNmm = 400e3 }, link, link], Circumstances.None, new double[3]);
        Assert.Equal(1, judged.Weakest);
        Assert.Equal(1, judged.ComesLoose + judged.StaysTight + judged.Breaks, 1e-6);
    }

    /// <summary>The stud's own torque by its steel, scaled as its limit is; corners and tools by theirs.</summary>
    [Fact]
    public void A_link_of_twice_its_limit_is_a_risk_of_twice_its_strength()
    {
        NutFigures nut = NutFigures.Of(BreakLoose.Nuts.Of("rusted", 100, "M16", 0.14, "8.8"));
        var limit = new LinkLimit(LinkKind.Stud, 300e3, 2, 0.1, LimitSource.TwistsOff, true);
        Near.Equal(2 * nut.Stud!.Value.MedianNmm, Judgement.RiskOf(limit, nut).Strength.MedianNmm, 1e-12);
        Near.Equal(600e3, Judgement.RiskOf(limit with { Kind = LinkKind.Corners }, nut).Strength.MedianNmm, 1e-12);
        Near.Equal(600e3, Judgement.RiskOf(limit with { Kind = LinkKind.Square }, nut).Strength.MedianNmm, 1e-12);
    }

    [Fact]
    public void The_margin_is_the_lowest_limit_over_the_strong_pull() =>
        Assert.Equal(2.5, new Judgement(1000, 0, 2500, default, default).Margin);
}
