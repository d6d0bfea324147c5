using Leverage.Assessments;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Wording;

/// <summary>A yes says what it rests on, so that no other line of the answer contradicts it.</summary>
public sealed class ReasonsTests
{
    [Theory]
    [InlineData("M12x1.5", 120, "1/2", 700, "used")]
    [InlineData("M24x1.5", 460, "1/2", 700, "rusted")]
    [InlineData("M8", 22, "1/2", 700, "rusted")]
    [InlineData("M24x1.5", 460, "1/2", 600, "rusted")]
    [InlineData(null, 108, "1/2", 450, "rusted")]
    public void A_yes_tells_what_breaks_over_all_pulls_and_what_was_not_judged(string? thread, double nm, string drive, double barMm, string condition)
    {
        LooseningAssessment a = Loosening.Assess(new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(nm),
            Thread = thread is null ? null : ThreadCatalog.Named(thread),
            AcrossFlats = thread is null ? Length.FromMillimeters(19) : null,
            Drive = drive,
            Bar = Length.FromMillimeters(barMm),
            Condition = condition,
        });
        Assert.Equal(Safe.Yes, a.Judgement.Ruling.Safe);
        string why = Reasons.Why(a, UnitStyle.Metric);
        Assert.Equal(a.Judgement.Breaks >= 0.005 || a.Judgement.Margin < 1, why.Contains("break something", StringComparison.Ordinal));
        Assert.Equal(a.Judgement.Margin >= 1, why.StartsWith("No part", StringComparison.Ordinal));
        Assert.All(a.NotJudged, kind => Assert.Contains(PartWords.Name(kind), why, StringComparison.Ordinal));
        Assert.Equal(a.NotJudged.Count > 0, why.Contains("Not judged: ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_chance_is_over_all_pulls_and_the_strong_pull_is_one_in_ten()
    {
        LooseningAssessment a = Loosening.Assess(new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(22),
            Thread = ThreadCatalog.Named("M8"),
            Drive = "1/2",
            Bar = Length.FromMillimeters(700),
            Condition = "rusted",
        });
        Assert.Equal("No part breaks at a strong pull. 1 pull in 10 is harder: 2 in 100 break something.", Reasons.Why(a, UnitStyle.Metric));
    }
}
