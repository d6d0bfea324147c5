using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;
using static Leverage.Tests.Assessments.LadderLaws;

namespace Leverage.Tests.Assessments;

/// <summary>The ladder of moves on joints taken one at a time.</summary>
public sealed class LadderTests
{
    [Fact]
    public void A_soak_halves_what_has_grown_on_a_nut_whose_like_came_hard()
    {
        // G - 1 halves: a like nut that came at 1.5 of the median tells as much of the soaked one against the soaked median.
        Fastener dry = LooseningDefaults.Complete(Request(3, "rusted", 0)).Fastener;
        NutFigures plain = NutFigures.Of(dry), soaked = NutFigures.Of(dry with { Soaked = true });
        Fastener hard = dry with { CameNmm = [1.5 * plain.LikelyNmm] };
        Assert.Equal(soaked.LikelyNmm * NutFigures.Of(hard).LikelyNmm / plain.LikelyNmm, NutFigures.Soaked(hard).LikelyNmm, 1e-6 * plain.LikelyNmm);

        // One that held the median dry is of the harder half: the middle of those is at three in four of all soaked ones.
        Assert.Equal(soaked.Spread.Quantile(0.75), NutFigures.Soaked(dry with { HeldNmm = plain.LikelyNmm }).LikelyNmm, 1e-6 * plain.LikelyNmm);
        Assert.Equal(soaked.Spread.Quantile(0.55), NutFigures.Soaked(dry with { HeldNmm = plain.LowNmm }).LikelyNmm, 1e-6 * plain.LikelyNmm);
    }

    /// <summary>Common practice: a wheel nut is half-inch work; three-quarter drive is for what half an inch does not bring.</summary>
    [Theory]
    [InlineData("used", "3/8")]
    [InlineData("rusted", "3/8")]
    [InlineData("rusted", null)]
    [InlineData("salted", null)]
    public void The_smallest_drive_that_will_do_comes_before_a_bigger_one(string condition, string? drive)
    {
        LooseningRequest request = Request(1, condition, 0) with { Drive = drive, Bar = Length.FromMillimeters(250), Tool = drive is null ? ToolKind.Ring : null, Person = Leverage.Levers.Person.Woman, Body = Mass.FromKilograms(55) };
        LadderStep[] bigger = [.. Loosening.Assess(request).Moves.Where(step => step.Key == "bigger-drive")];
        Assert.Equal("1/2", bigger[0].Tool!.Drive);
        Assert.All(bigger.Skip(1), step => Assert.True(bigger[0].ComesLooseBy < LadderRank.Enough && step.Tool!.Drive == "3/4"));
    }

    [Theory]
    [InlineData(SpecialJoint.Castle, "pull-pin")]
    [InlineData(SpecialJoint.ThroughBolt, "hold-bolt")]
    [InlineData(SpecialJoint.BallJoint, "load-taper")]
    public void A_special_joint_comes_before_any_pull(SpecialJoint joint, string first)
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(1, "used", 0) with { Joints = [joint] }).Moves;
        Assert.Equal([first, "now"], moves.Take(2).Select(step => step.Key));
    }

    [Fact]
    public void Stainless_is_oiled_and_turned_slowly_and_meets_no_impact_wrench()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(3, "rusted", 0) with { Grade = "A4-70" }).Moves;
        Assert.Equal("paste-slow", moves[0].Key);
        Assert.DoesNotContain(moves, step => step.Key == "impact-wrench");
    }

    /// <summary>Statics: 505 mm from the nut with the hands at the end, 405 mm with them 195 mm in; two push four thirds of one.</summary>
    [Fact]
    public void Hands_further_out_and_a_second_person_have_figures()
    {
        LooseningRequest nut = Request(3, "used", 0) with { HandsIn = Length.FromMillimeters(195) };
        LooseningAssessment inward = Loosening.Assess(nut);
        Assert.Equal(405, inward.Lever!.Value.ReachMm, 1e-9);
        LadderStep outward = inward.Moves.First(step => step.Key is "hands-out" or "bigger-drive");
        Assert.True(outward.ComesLooseBy > inward.Judgement.ComesLoose);
        LooseningAssessment one = Loosening.Assess(Request(3, "used", 0));
        LooseningAssessment two = Loosening.Assess(Request(3, "used", 0) with { People = 2 });
        Assert.Equal(4.0 / 3, two.Hand.Quantile(0.5) / one.Hand.Quantile(0.5), 1e-9);
        LadderStep second = Loosening.Assess(Request(4, "salted", 0)).Moves.Single(step => step.Key == "second-person");
        Assert.NotNull(second.ComesLooseBy);
        Assert.Equal(2, second.Request!.People);
    }

    [Fact]
    public void The_lever_of_a_rusted_tractor_nut_is_listed_before_two_pull_on_it()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(new LooseningRequest
        {
            AcrossFlats = Length.FromMillimeters(46),
            On = "tractor",
            Condition = "salted",
            Drive = "3/4",
            Bar = Length.FromMillimeters(1000),
        }).Moves;
        Assert.All(moves.Where(step => step.Key == "second-person"), step => Assert.True(
            step.Request!.Tube is null || moves.Any(lever => lever.Key is "longer-lever" or "bigger-drive" && lever.Request?.Tube is not null)));
    }

    [Fact]
    public void A_move_that_changes_the_stance_is_kept_for_the_tools_that_follow()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(1, "salted", 0) with { Stance = "stand-pull" }).Moves;
        int stance = moves.ToList().FindIndex(step => step.Key == "better-stance");
        Assert.True(stance > 0);
        Assert.All(moves.Skip(stance).Where(step => step.Setup is not null), step => Assert.Equal("stand-push", step.Setup!.Hands.Stance.Key));
    }

    [Fact]
    public void A_pull_that_falls_short_says_by_what()
    {
        LooseningAssessment axle = Loosening.Assess(Request(3, "rusted", 0));
        Assert.Equal(Verdict.Short, axle.Verdict);
        Assert.Equal("The nut likely needs 630 N·m. Your hands likely make 253.", Reasons.Of(axle, UnitStyle.Metric)[^1]);
    }

    [Fact]
    public void What_is_near_decides_what_may_be_heated()
    {
        LooseningRequest nut = Request(4, "salted", 0) with { Bar = Length.FromMillimeters(500), Person = Leverage.Levers.Person.Woman };
        Assert.Contains(Loosening.Assess(nut with { On = "structure" }).Moves, step => step.Key == "heat-nut");
        Assert.DoesNotContain(Loosening.Assess(nut with { On = "hub" }).Moves, step => step.Key == "heat-nut");
    }

    [Fact]
    public void A_vehicle_on_stands_comes_down_first_and_a_free_wheel_is_chocked()
    {
        string[] keys = [.. Loosening.Assess(Request(4, "used", 4)).Moves.Select(step => step.Key)];
        Assert.Equal("on-its-wheels", keys[0]);
        Assert.Equal("chock", keys[1]);
        Assert.Equal("chock", Loosening.Assess(Request(4, "used", 3)).Moves[0].Key);
    }

    [Fact]
    public void A_bar_that_is_asked_for_can_be_bought()
    {
        LadderStep lever = Loosening.Assess(Request(3, "rusted", 0)).Moves.Single(step => step.Key == "bigger-drive");
        Assert.Equal("3/4", lever.Tool!.Drive);
        Assert.True(lever.Tool.Bar!.Value.Millimeters is 500 or 1000);
        Assert.True(lever.Tool.Tube!.Length.Millimeters is 600 or 1000 or 1500);
        string words = MoveWords.Of(lever, UnitStyle.Metric);
        Assert.StartsWith("Take a 3/4 in bar ", words, StringComparison.Ordinal);
        Assert.Contains("36 mm socket", words, StringComparison.Ordinal);
    }
}
