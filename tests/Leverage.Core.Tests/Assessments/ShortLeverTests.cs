using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class ShortLeverTests
{
    [Fact]
    public void A_bar_shorter_than_the_grip_is_refused_in_one_line()
    {
        var request = new LooseningRequest { BookTorque = Torque.FromNewtonMeters(100), Bar = Length.FromMillimeters(50) };
        var refusal = Assert.Throws<InputException>(() => LooseningDefaults.Complete(request));
        Assert.Equal("bar", refusal.Subject);
        Assert.Contains("leaves nothing to hold", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(40)]
    [InlineData(25)]
    public void A_very_short_overlap_is_judged_and_never_advised_to_hold_behind_the_bars_tip(double overlapMm)
    {
        var request = new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(460),
            Thread = ThreadCatalog.Named("M24x1.5"),
            Drive = "3/4",
            Bar = Length.FromMillimeters(600),
            Sleeve = new SleeveText(Length.FromMillimeters(1200), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
            Overlap = Length.FromMillimeters(overlapMm),
        };
        LooseningAssessment assessment = LooseningAssessor.Assess(LooseningDefaults.Complete(request));
        Assert.Equal(Verdict.Stop, assessment.Verdict);
        Assert.DoesNotContain(assessment.Advice, advice => advice.Kind == AdviceKind.ShorterReach);
    }
}
