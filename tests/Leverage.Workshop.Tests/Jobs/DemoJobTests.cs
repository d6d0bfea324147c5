using Leverage.Reading;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Ordering;
using Leverage.Workshop.Sheets;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>The demo job of shared/pickup.</summary>
public static class DemoJobTests
{
    private static readonly JobPlan Plan = JobPlanner.Plan(JobReader.Read(JobText.Demo("job.toml")));

    [Fact]
    public static void It_is_a_whole_job()
    {
        Assert.True(Plan.Job.Fasteners.Count >= 30);
        Assert.True(Plan.Tasks.Count >= 25);
    }

    [Fact]
    public static void Both_axle_nuts_are_loosened_before_either_shaft_is_out_or_the_axle_is_up()
    {
        int[] loosened = [Number("Loosen the left axle-shaft nut"), Number("Loosen the right axle-shaft nut")];
        int[] later = [Number("Lift the rear and set it on stands"), Number("Draw the left half shaft"), Number("Take the lever housing off")];

        Assert.True(loosened.Max() < later.Min());
        Assert.All(Plan.Loosening.Where(planned => planned.Fastener.Name.StartsWith("axle-shaft nut", StringComparison.Ordinal)),
            planned => Assert.Contains(Leverage.Holding.Restraint.Gear, planned.Hold!.Request.HeldBy!));
    }

    [Fact]
    public static void Conflicts_as_written_are_resolved_and_told()
    {
        Assert.Contains(Plan.Tasks, task => task.Moved is { Reason: OrderReason.NeededBeforeEnded });
        Assert.Contains(Plan.Tasks, task => task.Moved is { Reason: OrderReason.GivenBeforeNeeded });
        Assert.True(Number("Open the axle fill plug") < Number("Drain the axle"));
        Assert.True(Number("Put the gearbox on the jack") < Number("Take the crossmember out"));
    }

    [Fact]
    public static void The_same_job_with_its_fasteners_in_a_list_gives_the_same_answer()
    {
        JobPlan other = JobPlanner.Plan(JobReader.Read(JobText.Demo("job-with-list.toml")));

        Assert.Equal(
            JobAnswers.Of(Plan, Leverage.Wording.UnitStyle.Metric).ToJson(),
            JobAnswers.Of(other, Leverage.Wording.UnitStyle.Metric).ToJson());
    }

    [Fact]
    public static void The_variant_with_a_loop_is_refused_with_its_tasks_and_states()
    {
        string line = Assert.Throws<InputException>(() => JobPlanner.Plan(JobReader.Read(JobText.Demo("job-with-loop.toml")))).Line;

        Assert.Contains("4 tasks wait for each other", line, StringComparison.Ordinal);
        Assert.Contains("\"wheels down\"", line, StringComparison.Ordinal);
        Assert.Contains("'Take the hub caps off'", line, StringComparison.Ordinal);
        Assert.DoesNotContain("Draw the half shafts", line, StringComparison.Ordinal);
    }

    [Fact]
    public static void New_parts_are_added_up()
    {
        PartToBuy part = Assert.Single(Plan.Parts, part => part.Part.StartsWith("sealing ring 18", StringComparison.Ordinal));

        Assert.Equal((4, 4), (part.Count, part.For.Count));
    }

    [Fact]
    public static void Nobody_swings_a_long_bar_lying_on_their_back() => Assert.All(
        Plan.Loosening.Where(planned => planned.Assessment.Setup.Hands.Stance.Posture == Leverage.Levers.Posture.Lying),
        planned => Assert.True(planned.Assessment.Lever!.Value.ReachMm < 750, planned.Fastener.Name));

    [Fact]
    public static void What_would_hold_the_wheel_comes_out_of_the_chest_first()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read(JobText.Head.Replace(", \"in gear\", \"parking brake\"", "", StringComparison.Ordinal) + JobText.AxleNut + JobText.Chest));

        Assert.StartsWith("Hold the wheel with oak chocks too", Leverage.Wording.MoveWords.Of(plan.Loosening[0].Assessment.Moves[0], Leverage.Wording.UnitStyle.Metric), StringComparison.Ordinal);
    }

    private static int Number(string name) => Plan.Tasks.Single(task => task.Task.Name == name).Number;
}
