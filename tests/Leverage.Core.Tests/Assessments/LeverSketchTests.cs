using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class LeverSketchTests
{
    private const double Sure = 1e-9;

    [Theory]
    [InlineData("dry", 30, 250)]
    [InlineData("greasy", 5, 60)]
    [InlineData("oily", 70, 400)]
    public void The_forces_on_the_tube_balance(string handle, double belowDeg, double overlapMm)
    {
        LeverSketch sketch = LeverSketcher.Of(Slip(handle, belowDeg, overlapMm));
        TubeSketch tube = sketch.Tube!;
        Assert.Equal(sketch.SquareN, tube.TipN - tube.MouthN, 6);
        Assert.Equal(sketch.SquareN * tube.HandToTipMm, tube.MouthN * tube.OverlapMm, 3);
        Assert.Equal(sketch.HandN * sketch.HandN, sketch.SquareN * sketch.SquareN + tube.OutwardN * tube.OutwardN, 3);
    }

    [Theory]
    [InlineData("dry", 30, 250)]
    [InlineData("dry", 42, 250)]
    [InlineData("greasy", 30, 250)]
    [InlineData("greasy", 10, 450)]
    [InlineData("oily", 60, 400)]
    public void It_stays_on_exactly_up_to_the_last_safe_angles(string handle, double belowDeg, double overlapMm)
    {
        SlipAssessment slip = Slip(handle, belowDeg, overlapMm);
        TubeSketch tube = LeverSketcher.Of(slip).Tube!;
        double end = slip.Setup.PastSquare.Radians;
        Assert.Equal(end <= slip.Here.Checked.HeldRad, tube.StaysOn);
        Assert.Equal(end <= slip.Here.Checked.EndRad, tube.StaysOnAsItTurns);
    }

    [Fact]
    public void A_slip_is_sketched_under_the_strong_pull_and_rings_the_tube_that_breaks_there()
    {
        SlipAssessment slip = Slip("dry", 30, 250);
        Assert.Equal(slip.StrongN, LeverSketcher.Of(slip).SquareN, Sure * slip.StrongN);
        Assert.Null(LeverSketcher.Of(slip).Gives);
        SlipAssessment shorter = Slip("dry", 30, 100);
        LeverSketch sketch = LeverSketcher.Of(shorter);
        Assert.Equal(LinkKind.TubeDentMouth, sketch.Gives!.Value.Kind);
        Assert.Equal(shorter.Here.MouthDentsAtN * sketch.ReachMm, sketch.Gives.Value.LimitNmm, Sure * sketch.Gives.Value.LimitNmm);
    }

    [Fact]
    public void Pulling_on_a_nut_gives_the_strong_pull_and_the_assessments_own_reactions()
    {
        LooseningAssessment assessment = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(Request(250) with
        {
            BookTorque = Torque.FromNewtonMeters(300),
            AcrossFlats = Length.FromMillimeters(30),
        }));
        LeverSketch sketch = LeverSketcher.Of(assessment)!;
        Assert.Equal(assessment.Judgement.StrongPullNmm, sketch.TorqueNmm, Sure * sketch.TorqueNmm);
        Assert.Equal(assessment.Tube!.TipReaction.Newtons, sketch.Tube!.TipN, Sure * sketch.Tube.TipN);
        Assert.Equal(assessment.Tube.MouthReaction.Newtons, sketch.Tube.MouthN, Sure * sketch.Tube.MouthN);
        Assert.Equal(30, sketch.AcrossFlatsMm);
    }

    [Fact]
    public void Without_a_bar_there_is_nothing_to_sketch_and_without_a_tube_only_the_bar()
    {
        var request = new LooseningRequest { BookTorque = Torque.FromNewtonMeters(300) };
        Assert.Null(Sketch(request));
        LeverSketch bare = Sketch(request with { Bar = Length.FromMillimeters(600), PastSquare = Angle.FromDegrees(60) })!;
        Assert.Null(bare.Tube);
        Assert.Equal(2 * bare.SquareN, bare.HandN, 6);
    }

    private static LeverSketch? Sketch(LooseningRequest request) =>
        LeverSketcher.Of(LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request)));

    private static SlipAssessment Slip(string handle, double belowDeg, double overlapMm) => SlipAssessor.Assess(
        SlipDefaults.Complete(Request(overlapMm) with { Surface = handle, PastSquare = Angle.FromDegrees(belowDeg) }));

    private static LooseningRequest Request(double overlapMm) => new()
    {
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
        Tube = new TubeText(Length.FromMillimeters(1000), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
        Overlap = Length.FromMillimeters(overlapMm),
    };
}
