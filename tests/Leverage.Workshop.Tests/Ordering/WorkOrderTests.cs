using System.Diagnostics;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Tests.Ordering;

public static class WorkOrderTests
{
    private static readonly TaskRules Lift = Named("Lift the axle") with { Ends = ["wheels down"], Gives = ["on stands"] };
    private static readonly TaskRules Wheels = Named("Take the wheels off") with { Needs = ["on stands"], Gives = ["wheels off"] };
    private static readonly TaskRules Nuts = Named("Loosen the axle nuts") with { Needs = ["wheels down", "in gear"] };
    private static readonly TaskRules Gearbox = Named("Take the gearbox out") with { Ends = ["in gear"] };

    [Fact]
    public static void A_task_that_needs_a_state_is_moved_before_the_task_that_ends_it()
    {
        WorkOrder order = WorkOrder.Of([Lift, Wheels, Nuts, Gearbox], []);

        Assert.Equal([2, 0, 1, 3], order.Sequence);
        Assert.Equal([new OrderRule(2, 0, OrderReason.NeededBeforeEnded, "wheels down")], order.Moves);
        Assert.Equal(
            "'Loosen the axle nuts' needs \"wheels down\", which 'Lift the axle' ends",
            OrderWords.Of(order.Moves[0], [Lift, Wheels, Nuts, Gearbox]));
    }

    [Fact]
    public static void A_loop_names_its_tasks_and_states_and_what_to_do()
    {
        TaskRules[] tasks = [Lift, Wheels, Nuts with { Needs = ["wheels down", "wheels off"] }, Gearbox];
        WorkOrder order = WorkOrder.Of(tasks, []);

        Assert.Empty(order.Sequence);
        Assert.Equal(
            "there is no order of work, 3 tasks wait for each other: 'Take the wheels off' needs \"on stands\", which 'Lift the axle' gives; "
            + "'Loosen the axle nuts' needs \"wheels off\", which 'Take the wheels off' gives; 'Loosen the axle nuts' needs \"wheels down\", "
            + "which 'Lift the axle' ends. Take one of these rules out, or split one of these tasks in two.",
            OrderWords.OfLoop(order.Loop, tasks));
    }

    [Fact]
    public static void Two_tasks_that_both_need_and_end_a_state_make_a_loop()
    {
        TaskRules both = Named("Drain it") with { Needs = ["full"], Ends = ["full"] };
        WorkOrder order = WorkOrder.Of([both, both with { Name = "Drain it too" }], []);

        Assert.Equal(2, order.Loop.Count);
    }

    [Fact]
    public static void A_further_rule_orders_as_after_does()
    {
        WorkOrder order = WorkOrder.Of(
            [Named("Take the nut off"), Named("Loosen it")],
            [new OrderRule(1, 0, OrderReason.LoosenedBeforeTakenOff, "axle nut")]);

        Assert.Equal([1, 0], order.Sequence);
        Assert.Equal(OrderReason.LoosenedBeforeTakenOff, order.Moves[0].Reason);
    }

    [Theory]
    [InlineData("needs", "weels down", "nothing gives 'weels down': no task does, and it is not in at_start. Nearest: wheels down.")]
    [InlineData("ends", "weels down", "'weels down' never holds: no task gives it, and it is not in at_start. Nearest: wheels down.")]
    [InlineData("after", "Lift the axel", "there is no task 'Lift the axel'. Nearest: Lift the axle.")]
    [InlineData("after", "Loosen the axle nuts", "'Loosen the axle nuts' cannot come after itself: take it out.")]
    [InlineData("gives", "wheels down", "'wheels down' holds at the start already. Give the later spell its own words, such as 'wheels down again'.")]
    public static void What_cannot_be_is_named_with_its_cure(string key, string word, string message)
    {
        TaskRules wrong = key switch
        {
            "needs" => Named(Nuts.Name) with { Needs = ["in gear", word] },
            "ends" => Named(Nuts.Name) with { Ends = ["in gear", word] },
            "after" => Named(Nuts.Name) with { After = ["Take the wheels off", word] },
            _ => Named(Nuts.Name) with { Gives = ["loose", word] },
        };

        IReadOnlyList<RuleProblem> problems = RuleCheck.Problems([Lift, Wheels, wrong], ["wheels down", "in gear"]);

        Assert.Equal(new RuleProblem(2, key, 1, message), problems[0]);
    }

    [Fact]
    public static void Two_tasks_of_one_name_are_refused()
    {
        RuleProblem problem = RuleCheck.Problems([Lift, Wheels, Lift with { Name = "LIFT the axle" }], ["wheels down"])[0];

        Assert.Equal(2, problem.Task);
        Assert.Contains("two tasks", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public static void A_hundred_thousand_tasks_written_backwards_are_ordered_without_trying_every_pair()
    {
        const int Count = 100_000;
        TaskRules[] tasks = [.. Enumerable.Range(0, Count).Select(i => Named(Name(i)) with
        {
            Needs = ["wheels down"],
            After = i + 1 < Count ? [Name(i + 1)] : [],
        })];
        tasks = [Lift, .. tasks];
        var watch = Stopwatch.StartNew();

        WorkOrder order = WorkOrder.Of(tasks, []);

        Assert.Equal(Enumerable.Range(1, Count).Reverse().Append(0), order.Sequence);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"took {watch.Elapsed.ToString()}");
    }

    private static string Name(int i) => "task " + i.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static TaskRules Named(string name) => new(name, [], [], [], []);
}
