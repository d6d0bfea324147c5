using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>A job taken over three days: what is done stays in the file, and the plan is made again for what is left.</summary>
public static class SessionTests
{
    private const string Vehicle = """
        title = "Both shafts"
        at_start = ["wheels down", "in gear", "parking brake", "left half shaft in", "right half shaft in"]
        [vehicle]
        mass = "1450kg"
        wheel_load_rear = "3100N"
        tyre_radius = "330mm"
        driven = "rear"

        """;

    [Fact]
    public static void On_the_first_day_everything_is_to_do()
    {
        JobPlan plan = Day("", "", "");

        Assert.Equal(["loosen", "lift", "strip left", "strip right"], plan.Tasks.Select(task => task.Task.Name));
        Assert.Equal(["left nut", "left plate", "right nut", "right plate"], plan.Loosening.Select(planned => planned.Fastener.Name).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(Preparation.Lines(plan, UnitStyle.Metric), line => line.Label == "So far");
    }

    [Fact]
    public static void On_the_second_a_nut_that_came_loose_teaches_the_one_like_it_and_what_held_is_told()
    {
        JobPlan plan = Day("came_loose = \"350Nm\"", "held = \"300Nm\"", "");
        PlannedLoosening right = plan.Loosening.Single(planned => planned.Fastener.Name == "right nut");

        Assert.DoesNotContain(plan.Loosening, planned => planned.Fastener.Name == "left nut");
        Assert.Equal([350], right.History.Came.Select(torque => torque.NewtonMeters));
        Assert.Equal(300, right.History.Held?.NewtonMeters);
        Assert.Contains("held at 300 N·m", FastenerPhrases.Takes(right, UnitStyle.Metric));
        Assert.Contains("like ones came loose at 350", FastenerPhrases.Takes(right, UnitStyle.Metric));
        Assert.True(plan.Loosening.Single(planned => planned.Fastener.Name == "left plate").History.IsEmpty);
    }

    [Fact]
    public static void On_the_third_the_tasks_done_are_left_out_their_states_hold_and_all_goes_back()
    {
        JobPlan plan = Day("done = true", "done = true", "done = true", "done = true");

        Assert.Equal(["strip right"], plan.Tasks.Select(task => task.Task.Name));
        Assert.Equal(["right plate"], plan.Loosening.Select(planned => planned.Fastener.Name));
        Assert.Contains("on stands", plan.Left.AtStart);
        Assert.DoesNotContain("wheels down", plan.Left.AtStart);
        Assert.Equal(4, plan.RefitSteps.SelectMany(step => step.Fits).Count(fit => fit.IsFitted));
        Assert.Contains(Preparation.Lines(plan, UnitStyle.Metric), line => line is { Label: "So far", Words: "3 of 4 tasks done, 3 of 4 fasteners loose" });
        string html = HtmlSheet.Write(JobSheet.Of(plan, UnitStyle.Metric, []));
        Assert.DoesNotContain("strip left</b>", html[..html.IndexOf("Refit", StringComparison.Ordinal)], StringComparison.Ordinal);
    }

    [Fact]
    public static void From_one_day_to_the_next_what_happened_narrows_what_the_nut_left_is_said_to_take()
    {
        NutFigures first = Right(Day("", "", ""));
        NutFigures second = Right(Day("", "held = \"400Nm\"", ""));
        NutFigures third = Right(Day("came_loose = \"420Nm\"", "held = \"400Nm\"", ""));

        Assert.InRange(first.Spread.Survival(400e3), 0.3, 0.95);
        Assert.InRange(second.LowNmm, 400e3, first.HighNmm);
        Assert.Equal(first.Spread.Survival(450e3) / first.Spread.Survival(400e3), second.Spread.Survival(450e3), 0.02);
        Assert.True(second.LikelyNmm > first.LikelyNmm);
        Assert.InRange(third.LowNmm, 400e3, second.LowNmm - 1);
        Assert.True(third.LikelyNmm < second.LikelyNmm);
        Assert.True(third.HighNmm < second.HighNmm);

        static NutFigures Right(JobPlan plan) => plan.Loosening.Single(planned => planned.Fastener.Name == "right nut").Assessment.Nut;
    }

    [Fact]
    public static void A_task_left_that_needs_what_a_done_one_ended_is_told()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read(Vehicle + Fasteners("", "") + """
            [[tasks]]
            name = "loosen"
            needs = "wheels down"
            loosens = "left nut"
            [[tasks]]
            name = "lift"
            ends = "wheels down"
            done = true

            """ + JobText.Chest));

        Assert.Equal(["'loosen' needs \"wheels down\", and 'lift' has ended it. Bring it back first."], plan.Gaps.Watch);
        Assert.Equal(Leverage.Assessments.Verdict.Stop, plan.Loosening.Single(planned => planned.Fastener.Name == "left nut").Verdict);
    }

    [Fact]
    public static void What_twisted_off_is_to_be_drilled_and_what_is_rounded_is_told()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read(Vehicle + Fasteners("sheared = true", "rounded = true") + JobText.Chest));
        string text = MarkdownSheet.Write(JobSheet.Of(plan, UnitStyle.Metric, []));

        Assert.Contains("twisted off: drill it out", text, StringComparison.Ordinal);
        Assert.Contains("Corners rounded off: a six-point ring", text, StringComparison.Ordinal);
        Assert.Contains("new bolt or stud", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("held = \"1000001Nm\"", "held: ")]
    [InlineData("came_loose = [\"1Nm\", \"2Nm\"]", "came_loose: 2 came loose where there are 1.")]
    [InlineData("done = \"perhaps\"", "done: 'perhaps' is neither true nor false.")]
    [InlineData("room = \"1000000m\"", "room: ")]
    public static void What_cannot_have_happened_is_refused(string keys, string message) =>
        Assert.Contains(message, JobText.Refusal(Vehicle + Fasteners(keys, "") + JobText.Chest), StringComparison.Ordinal);

    [Theory]
    [InlineData("held = \"40000Nm\"", "job.toml(8,3): left nut: held: no nut tightened to this torque holds that much.")]
    [InlineData("prevailing = \"90Nm\"\ncount = 2\ncame_loose = \"60Nm\"", "job.toml(8,3): left nut: came: a nut comes loose above what its locknut or locker holds alone.")]
    public static void What_no_nut_of_its_kind_could_show_is_refused_by_its_name(string keys, string message) => Assert.StartsWith(
        message, Assert.Throws<InputException>(() => JobPlanner.Plan(JobText.Read(Vehicle + Fasteners(keys, "") + JobText.Chest))).Line, StringComparison.Ordinal);

    [Fact]
    public static void Rounded_corners_are_judged_as_rounded()
    {
        PlannedLoosening[] plates = [.. JobPlanner.Plan(JobText.Read((Vehicle + Fasteners("", "")).Replace(
            "name = \"right plate\"\n", "name = \"right plate\"\nrounded = true\n", StringComparison.Ordinal) + JobText.Chest))
            .Loosening.Where(planned => planned.Fastener.Name.EndsWith("plate", StringComparison.Ordinal)).OrderBy(planned => planned.Fastener.Name, StringComparer.Ordinal)];

        Assert.Equal((null, "rounded"), (plates[0].Choice!.SetUp.Request.Worn, plates[1].Choice!.SetUp.Request.Worn));
    }

    [Fact]
    public static void A_million_torques_that_came_loose_are_refused_in_one_line()
    {
        string many = string.Join(',', Enumerable.Repeat("\"1Nm\"", 200_000));

        Assert.Throws<InputException>(() => JobText.Read(Vehicle + Fasteners($"came_loose = [{many}]", "")));
    }

    private static string Fasteners(string left, string right) => $"""
        [[fasteners]]
        name = "left nut"
        thread = "M24x1.5"
        hex = "36mm"
        torque = "380Nm"
        wheel = "rear left"
        {left}
        [[fasteners]]
        name = "right nut"
        thread = "M24x1.5"
        hex = "36mm"
        torque = "380Nm"
        wheel = "rear right"
        {right}
        [[fasteners]]
        name = "left plate"
        torque = "45Nm"
        hex = "17mm"
        [[fasteners]]
        name = "right plate"
        torque = "45Nm"
        hex = "17mm"

        """;

    private static JobPlan Day(string left, string right, string tasks, string strip = "") => JobPlanner.Plan(JobText.Read(Vehicle + Fasteners(left, right) + $"""
        [[tasks]]
        name = "lift"
        ends = "wheels down"
        gives = "on stands"
        {tasks}
        [[tasks]]
        name = "loosen"
        needs = ["wheels down", "in gear"]
        loosens = ["left nut", "right nut"]
        {tasks}
        [[tasks]]
        name = "strip left"
        needs = "on stands"
        takes_off = ["left nut", "left plate"]
        {strip}
        [[tasks]]
        name = "strip right"
        needs = "on stands"
        takes_off = ["right nut", "right plate"]

        """ + JobText.Chest));
}
