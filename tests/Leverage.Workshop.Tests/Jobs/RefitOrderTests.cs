using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>The refit in its own order.</summary>
public static class RefitOrderTests
{
    private const string Job = """
        title = "x"
        at_start = "wheels down"
        [vehicle]
        mass = "1400kg"
        [[fasteners]]
        name = "wheel nuts"
        torque = "110Nm"
        wheel = "rear left"
        count = 5
        retorque_after = "50 km"
        [[fasteners]]
        name = "bush bolt"
        torque = "90Nm"
        ride_height = true
        new_part = "bolt M12"
        lubrication = "oiled"
        refit_note = "head to the rear"
        [[fasteners]]
        name = "cover bolts"
        torque = "20Nm"
        castle = true
        left_hand = true
        [[fasteners]]
        name = "forgotten"
        torque = "20Nm"
        [[tasks]]
        name = "loosen the wheel nuts"
        needs = "wheels down"
        loosens = "wheel nuts"
        refit = "try it on the road"
        [[tasks]]
        name = "lift"
        ends = "wheels down"
        gives = "on stands"
        [[tasks]]
        name = "wheel off"
        needs = "on stands"
        takes_off = "wheel nuts"
        [[tasks]]
        name = "strip"
        needs = "on stands"
        takes_off = ["bush bolt", "cover bolts"]
        refit = ["fill up", "bleed"]

        """;

    [Fact]
    public static void It_is_the_work_mirrored_and_what_needs_the_ground_is_snug_until_it_stands() => Assert.Equal(
        [
            "strip: cover bolts full, bush bolt snug; fill up, bleed",
            "wheel off: wheel nuts snug",
            "lift:",
            "On its wheels, chocked: bush bolt full",
            "loosen the wheel nuts: wheel nuts full; try it on the road",
            "In no task: forgotten full",
            "Torque again after 50 km: wheel nuts full",
        ],
        Plan().RefitSteps.Select(step =>
            $"{step.Title}: {string.Join(", ", step.Fits.Select(fit => $"{fit.Tightening.Fastener.Name} {fit.Stage.ToString().ToLowerInvariant()}"))}"
                + (step.Then.Count > 0 ? $"; {string.Join(", ", step.Then)}" : "")).Select(line => line.TrimEnd()));

    [Fact]
    public static void New_parts_and_notes_stand_where_they_are_used_and_castle_and_left_hand_are_told()
    {
        JobPlan plan = Plan();
        RefitFit[] bush = [.. plan.RefitSteps.SelectMany(step => step.Fits).Where(fit => fit.Tightening.Fastener.Name == "bush bolt")];
        RefitFit cover = plan.RefitSteps[0].Fits[0];

        Assert.Equal(["new: bolt M12", "oiled", "head to the rear"], RefitPhrases.Remember(bush[0]).Lines);
        Assert.Equal(["–"], RefitPhrases.Remember(bush[1]).Lines);
        Assert.Equal(["LEFT-HAND: tighten anticlockwise"], RefitPhrases.Remember(cover).Loud);
        Assert.Contains("castle nut: on to the next slot, never back; split pin", RefitPhrases.Remember(cover).Lines);
    }

    [Fact]
    public static void The_nut_of_an_adjustable_bearing_is_backed_off_with_the_wheel_free_and_not_judged()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read(Job.Replace("name = \"bush bolt\"\ntorque = \"90Nm\"\nride_height = true",
            "name = \"bush bolt\"\nthread = \"M20x1.5\"\ntorque = \"30Nm\"\nwheel = \"rear left\"\ncastle = true\nadjustable = true", StringComparison.Ordinal) + JobText.Chest));
        RefitFit hub = plan.RefitSteps.SelectMany(step => step.Fits).Single(fit => fit.Tightening.Fastener.Name == "bush bolt");

        Assert.Equal((RefitStage.Full, true), (hub.Stage, hub.IsFitted));
        Assert.Null(hub.Tightening.Check);
        Assert.Contains("sets a bearing: turn the wheel as you tighten, then back off as its maker says; split pin", RefitPhrases.Remember(hub).Lines);
        Assert.DoesNotContain(RefitPhrases.Remember(hub).Lines, line => line.Contains("next slot", StringComparison.Ordinal));
    }

    [Fact]
    public static void Two_rows_go_from_the_middle_outwards_by_turns() =>
        Assert.Equal([3, 8, 2, 7, 4, 9, 1, 6, 5, 10], TighteningSequence.Of(10, TighteningPattern.TwoRows));

    private static JobPlan Plan() => JobPlanner.Plan(JobText.Read(Job + JobText.Chest));
}
