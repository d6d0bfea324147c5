using Leverage.Workshop.Ordering;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>What is known of a nut from what happened to it, and to those like it.</summary>
/// <param name="Held">The highest torque it has stood without moving; null where none was tried.</param>
/// <param name="Came">What those like it on this machine came loose at.</param>
public sealed record NutHistory(Torque? Held, IReadOnlyList<Torque> Came)
{
    /// <summary>Whether anything is known.</summary>
    public bool IsEmpty => Held is null && Came.Count == 0;
}

/// <summary>How far a job has got: which tasks are left, which states hold now, which fasteners are loose.</summary>
internal sealed class JobProgress
{
    private readonly Job _job;
    private readonly ILookup<(string?, string?, double, double, double), Torque> _came;

    internal JobProgress(Job job)
    {
        _job = job;
        int[] done = InOrder();
        var gone = done.Select(i => job.Tasks[i].Name).ToHashSet(TaskRules.Names);
        Done = [.. done.Select(i => job.Tasks[i])];
        Left = job with
        {
            AtStart = Now(done),
            Tasks = [.. job.Tasks.Where(task => !task.Done).Select(task => task with
            {
                Rules = task.Rules with { After = [.. task.Rules.After.Where(name => !gone.Contains(name))] },
            })],
        };
        var loosened = done.SelectMany(i => job.Tasks[i].Loosens.Concat(job.Tasks[i].TakesOff)).ToHashSet();
        Loose = [.. job.Fasteners.Select((fastener, i) => fastener.Done || fastener.Sheared || loosened.Contains(i)
            || fastener.CameLoose.Count >= fastener.Count)];
        _came = job.Fasteners.SelectMany(fastener => fastener.CameLoose.Select(torque => (Kind: Kind(fastener), torque)))
            .ToLookup(each => each.Kind, each => each.torque);
    }

    /// <summary>The tasks that are done, in the order they come in.</summary>
    internal IReadOnlyList<JobTask> Done { get; }

    /// <summary>The job of what is left: its tasks, and the states that hold now.</summary>
    internal Job Left { get; }

    /// <summary>Whether each fastener is loose.</summary>
    internal IReadOnlyList<bool> Loose { get; }

    /// <summary>What is known of a nut: alike are those of one thread, grade, hexagon and book torque.</summary>
    internal NutHistory Of(JobFastener fastener) => new(fastener.Held, [.. _came[Kind(fastener)]]);

    /// <summary>Tasks left that need what a task that is done has ended, and nothing brings back.</summary>
    internal IEnumerable<string> TooLate()
    {
        var holds = Left.AtStart.Concat(Left.Tasks.SelectMany(task => task.Rules.Gives)).ToHashSet(TaskRules.Names);
        foreach (JobTask task in Left.Tasks)
        {
            foreach (string state in task.Rules.Needs.Where(state => !holds.Contains(state)))
            {
                JobTask ender = Done.Last(done => done.Rules.Ends.Contains(state, TaskRules.Names));
                yield return $"'{task.Name}' needs \"{state}\", and '{ender.Name}' has ended it. Bring it back first.";
            }
        }
    }

    private static (string?, string?, double, double, double) Kind(JobFastener fastener) => (
        fastener.Thread?.Designation,
        fastener.Grade,
        Math.Round(fastener.AcrossFlats?.Millimeters ?? 0, 1),
        Math.Round(fastener.BookTorque?.NewtonMeters ?? 0, 1),
        Math.Round(fastener.Then?.Degrees ?? 0, 1));

    /// <summary>The tasks done, in the order the rules give them; as written where they cannot have been done in any.</summary>
    private int[] InOrder()
    {
        int[] done = [.. Enumerable.Range(0, _job.Tasks.Count).Where(i => _job.Tasks[i].Done)];
        var names = done.Select(i => _job.Tasks[i].Name).ToHashSet(TaskRules.Names);
        TaskRules[] rules = [.. done.Select(i => _job.Tasks[i].Rules with { After = [.. _job.Tasks[i].Rules.After.Where(names.Contains)] })];
        WorkOrder order = WorkOrder.Of(rules, []);
        return order.Loop.Count > 0 ? done : [.. order.Sequence.Select(i => done[i])];
    }

    private string[] Now(IEnumerable<int> done)
    {
        var now = new List<string>(_job.AtStart);
        foreach (TaskRules rules in done.Select(i => _job.Tasks[i].Rules))
        {
            now.RemoveAll(state => rules.Ends.Contains(state, TaskRules.Names));
            now.AddRange(rules.Gives.Except(now, TaskRules.Names));
        }

        return [.. now];
    }
}
