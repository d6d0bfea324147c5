using Leverage.Requests;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.LoadPath;
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
    [InlineData(89)]
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
        string[] names = ["hands push", "tip lifts", "mouth is pressed", "pull along the tube", "friction holds up to"];
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
        Assert.Contains("Play of the tube 7.3 mm, drawn 3 times too large: it really hangs 1.7° below the bar.", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stand-push", null)]
    [InlineData("lift-legs", "Lifting, turn it half round")]
    [InlineData("stand-pull", "Turn it until the blue arrow points the way you pull")]
    public void A_stance_that_does_not_push_down_is_told_how_to_turn_the_picture(string stance, string? told)
    {
        LooseningRequest request = Cases.Tubed with { Stance = stance };
        LeverSketch sketch = LeverSketcher.Of(LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request)))!;
        string words = Plain(SideView.Draw(sketch, "case", UnitStyle.Metric));
        Assert.Equal(told is not null, words.Contains("Drawn for a push down.", StringComparison.Ordinal));
        Assert.Contains(told ?? "to scale", words, StringComparison.Ordinal);
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
        Assert.Contains("gives here", words, StringComparison.Ordinal);
        Assert.Contains($"The {gives.Gives.Value.Part} gives before the nut turns", words, StringComparison.Ordinal);
        Assert.Contains(UnitStyle.Metric.Torque(Torque.FromNewtonMillimeters(gives.Gives.Value.LimitNmm)), words, StringComparison.Ordinal);
    }

    [Fact]
    public void Contacts_that_push_it_off_are_shown_as_a_force_outward()
    {
        string words = Plain(SideView.Draw(LeverSketcher.Of(Cases.Slip("walks off")), "case", UnitStyle.Metric));
        Assert.Contains("the contacts push it off", words, StringComparison.Ordinal);
        Assert.Contains("not yet tested", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Hands_that_do_not_fit_on_the_lever_are_told()
    {
        Assert.Contains("Both hands do not fit", Plain(SideView.Draw(LeverSketcher.Of(Cases.Assess("tiny bolt"))!, "case", UnitStyle.Metric)), StringComparison.Ordinal);
        Assert.DoesNotContain("do not fit", Plain(SideView.Draw(LeverSketcher.Of(Cases.Assess("axle nut"))!, "case", UnitStyle.Metric)), StringComparison.Ordinal);
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
