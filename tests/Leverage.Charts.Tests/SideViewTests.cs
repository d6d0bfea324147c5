using Leverage.Assessments;
using Leverage.Charts.SideViews;
using Leverage.LoadPath;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Tests;

public sealed class SideViewTests
{
    public static TheoryData<string> Slipping => [.. Cases.Slipping.Keys];

    public static TheoryData<string> Loosening => [.. Cases.Loosening.Keys.Where(name => Cases.Loosening[name].Bar is not null)];

    [Theory]
    [MemberData(nameof(Slipping))]
    public void Every_tube_is_sketched_soundly_in_both_units_and_shapes(string name) =>
        Sound(LeverSketcher.Of(Cases.Slip(name)), name);

    [Theory]
    [MemberData(nameof(Loosening))]
    public void Every_lever_is_sketched_soundly_in_both_units_and_shapes(string name) =>
        Sound(LeverSketcher.Of(Cases.Assess(name))!, name);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(45)]
    [InlineData(80)]
    public void Every_angle_is_sketched_soundly(double degrees)
    {
        LooseningRequest request = Cases.Tubed with { PastSquare = Angle.FromDegrees(degrees) };
        Sound(LeverSketcher.Of(LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request)))!, "angle");
    }

    [Fact]
    public void Every_force_has_its_size_and_every_length_its_name()
    {
        LeverSketch sketch = LeverSketcher.Of(Cases.Slip("dry"));
        string words = Plain(SideView.Draw(sketch, "case", UnitStyle.Metric));
        double[] forces = [sketch.HandN, sketch.Tube!.TipN, sketch.Tube.MouthN, sketch.Tube.OutwardN, sketch.Tube.HoldsN];
        string[] names = ["hands", "tip bears", "mouth bears", "pull along the tube", "friction holds up to"];
        for (int i = 0; i < names.Length; i++)
        {
            Assert.Contains($"{names[i]} {UnitStyle.Metric.Force(Force.FromNewtons(forces[i]))}", words, StringComparison.Ordinal);
        }

        Assert.All(["overlap 250 mm", "hands to tip 0.66 m", "reach 1.26 m", "30° below level"], name => Assert.Contains(name, words, StringComparison.Ordinal));
    }

    [Fact]
    public void Play_drawn_too_large_is_said_with_the_factor()
    {
        string words = Plain(SideView.Draw(LeverSketcher.Of(Cases.Slip("dry")), "case", UnitStyle.Metric));
        Assert.Contains("Play of the tube 7.3 mm, drawn 3 times too large: it really leans 1.7° past the bar.", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stand-push", "30° below level", -1, 1)]
    [InlineData("lift-legs", "30° above level", 1, -1)]
    [InlineData("stand-pull", "30° past square", -1, -1)]
    public void The_lever_is_drawn_the_way_the_hands_push_it(string stance, string angle, int across, int down)
    {
        LooseningRequest request = Cases.Tubed with { Stance = stance };
        LeverSketch sketch = LeverSketcher.Of(LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request)))!;
        Assert.Contains(angle, Plain(SideView.Draw(sketch, "case", UnitStyle.Metric)), StringComparison.Ordinal);
        var right = new SketchGeometry(sketch, 1, default);
        var left = new SketchGeometry(sketch with { LeftHand = true }, 1, default);
        Assert.Equal((across, down), (Math.Sign(right.Hands.X), Math.Sign(right.Hands.Y)));
        Assert.Equal((-right.Hands.X, right.Hands.Y), (left.Hands.X, left.Hands.Y));
        Assert.Equal(sketch.TorqueNmm, sketch.HandN * -right.Turn * (right.Push.X * right.Hands.Y - right.Push.Y * right.Hands.X), 0.05 * sketch.TorqueNmm);
    }

    [Fact]
    public void A_part_that_gives_is_ringed_named_and_told_with_its_limit()
    {
        LeverSketch stands = LeverSketcher.Of(LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(Cases.Heavy)))!;
        LooseningRequest thin = Cases.Heavy with { Overlap = Length.FromMillimeters(40) };
        LooseningAssessment assessment = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(thin));
        LeverSketch gives = LeverSketcher.Of(assessment)!;
        string words = Plain(SideView.Draw(gives, "case", UnitStyle.Metric));
        Assert.Null(stands.Gives);
        Assert.Equal(assessment.Weakest!.Value.Limit, gives.Gives);
        Assert.Equal(LinkKind.TubeDentMouth, gives.Gives!.Value.Kind);
        Assert.Contains("dents here", words, StringComparison.Ordinal);
        Assert.Contains("The tube dents at its mouth at", words, StringComparison.Ordinal);
        Assert.Contains(UnitStyle.Metric.Torque(Torque.FromNewtonMillimeters(gives.Gives.Value.LimitNmm)), words, StringComparison.Ordinal);
    }

    [Fact]
    public void Contacts_that_push_it_off_are_shown_as_a_force_outward()
    {
        string words = Plain(SideView.Draw(LeverSketcher.Of(Cases.Slip("slides at square")), "case", UnitStyle.Metric));
        Assert.Contains("the contacts push it off", words, StringComparison.Ordinal);
        Assert.Contains("not yet tested", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Hands_that_do_not_fit_on_the_lever_are_told()
    {
        Assert.Contains("hardly fit", Plain(SideView.Draw(LeverSketcher.Of(Cases.Assess("big nut, tiny bar"))!, "case", UnitStyle.Metric)), StringComparison.Ordinal);
        Assert.DoesNotContain("hardly fit", Plain(SideView.Draw(LeverSketcher.Of(Cases.Assess("axle nut"))!, "case", UnitStyle.Metric)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_bytes_do_not_depend_on_culture() =>
        ChartChecks.SameInGerman(() => SideView.Draw(LeverSketcher.Of(Cases.Slip("dry")), "case", UnitStyle.Metric));

    private static void Sound(LeverSketch sketch, string title)
    {
        ChartChecks.Sound(SideView.Draw(sketch, title, UnitStyle.Metric));
        ChartChecks.Sound(SideView.Draw(sketch, title, UnitStyle.Us, ChartPage.Portrait));
    }

    private static string Plain(Chart chart) => Cases.Words(chart).Replace('\u00A0', ' ');
}
