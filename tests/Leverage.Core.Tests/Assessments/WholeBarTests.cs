using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class WholeBarTests
{
    [Fact]
    public void A_tube_pushed_over_the_whole_bar_is_judged_at_any_length()
    {
        for (double bar = 300; bar < 600; bar += 7.3)
        {
            LooseningAssessment assessment = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(new LooseningRequest
            {
                BookTorque = Torque.FromNewtonMeters(300),
                Bar = Length.FromMillimeters(bar),
                BarDiameter = Length.FromMillimeters(20),
                Tube = new TubeText(Length.FromMillimeters(bar + 613.7), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
                Overlap = Length.FromMillimeters(bar),
            }));
            Assert.True(assessment.Release!.Energy!.Value.Joules > 0);
        }
    }
}
