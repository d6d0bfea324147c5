using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Tests.Ordering;

/// <summary>Laws of the order of work, held against trying every order there is.</summary>
public static class WorkOrderProperties
{
    private const int Cases = 300;

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static Property Every_order_given_respects_every_rule(SmallJob job)
    {
        WorkOrder order = WorkOrder.Of(job.Tasks, []);
        return (order.Loop.Count > 0 || job.IsValid(order.Sequence)).Classify(order.Loop.Count > 0, "loop");
    }

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool A_loop_is_found_if_and_only_if_no_order_is_possible(SmallJob job) =>
        WorkOrder.Of(job.Tasks, []).Loop.Count > 0 == (job.ValidOrders.Count == 0);

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool Each_rule_of_a_loop_is_true_and_the_last_leads_back_to_the_first(SmallJob job)
    {
        IReadOnlyList<OrderRule> loop = WorkOrder.Of(job.Tasks, []).Loop;
        return loop.Select((rule, i) => IsTrue(rule, job) && rule.Then == loop[(i + 1) % loop.Count].First).All(yes => yes);
    }

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool What_is_written_in_a_valid_order_stays_as_written(SmallJob job) =>
        job.ValidOrders.Take(20).All(valid =>
            WorkOrder.Of(job.Rewritten(valid).Tasks, []) is { Moves.Count: 0 } order
                && order.Sequence.SequenceEqual(Enumerable.Range(0, valid.Length)));

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool The_same_tasks_give_the_same_order(SmallJob job) =>
        WorkOrder.Of(job.Tasks, []).Sequence.SequenceEqual(WorkOrder.Of([.. job.Tasks], []).Sequence);

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool Writing_tasks_in_another_order_changes_only_the_order_among_equals(SmallJob job, int seed)
    {
        int[] shuffled = [.. Enumerable.Range(0, job.Tasks.Count)];
        new Random(seed).Shuffle(shuffled);
        int[] one = [.. WorkOrder.Of(job.Tasks, []).Sequence];
        int[] other = [.. WorkOrder.Of(job.Rewritten(shuffled).Tasks, []).Sequence.Select(i => shuffled[i])];
        IReadOnlyList<int[]> all = job.ValidOrders;
        return one.Length == other.Length && Pairs(one).Except(Pairs(other)).All(pair => AreEquals(pair, all));
    }

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool Each_move_names_a_true_rule_and_a_task_written_later(SmallJob job) =>
        WorkOrder.Of(job.Tasks, []).Moves.All(move => IsTrue(move, job));

    [Property(MaxTest = Cases, Arbitrary = [typeof(SmallJobs)])]
    public static bool The_states_during_each_task_hold_all_it_needs(SmallJob job)
    {
        WorkOrder order = WorkOrder.Of(job.Tasks, []);
        var during = StateTrack.During(job.Tasks, job.AtStart, order.Sequence);
        return order.Sequence.All(i => job.Tasks[i].Needs.All(during[i].Contains));
    }

    private static bool IsTrue(OrderRule rule, SmallJob job)
    {
        TaskRules first = job.Tasks[rule.First];
        TaskRules then = job.Tasks[rule.Then];
        return rule.Reason switch
        {
            OrderReason.After => then.After.Contains(first.Name, TaskRules.Names),
            OrderReason.NeededBeforeEnded => first.Needs.Contains(rule.What, TaskRules.Names) && then.Ends.Contains(rule.What, TaskRules.Names),
            OrderReason.GivenBeforeNeeded => first.Gives.Contains(rule.What, TaskRules.Names) && then.Needs.Contains(rule.What, TaskRules.Names),
            OrderReason.GivenBeforeEnded => first.Gives.Contains(rule.What, TaskRules.Names) && then.Ends.Contains(rule.What, TaskRules.Names),
            _ => false,
        };
    }

    private static IEnumerable<(int, int)> Pairs(int[] order) =>
        order.SelectMany((first, i) => order[(i + 1)..].Select(then => (first, then)));

    private static bool AreEquals((int First, int Then) pair, IReadOnlyList<int[]> valid) =>
        valid.Any(order => Array.IndexOf(order, pair.First) < Array.IndexOf(order, pair.Then))
            && valid.Any(order => Array.IndexOf(order, pair.First) > Array.IndexOf(order, pair.Then));
}
