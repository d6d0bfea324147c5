using System.Collections.Immutable;

namespace Leverage.Workshop.Ordering;

/// <summary>Which states hold while each task is done.</summary>
public static class StateTrack
{
    /// <summary>The states that hold as each task of an order begins.</summary>
    /// <param name="tasks">The tasks as written.</param>
    /// <param name="atStart">States that hold before the first task.</param>
    /// <param name="sequence">The order.</param>
    /// <returns>For each task as written, the states that hold as it begins.</returns>
    public static IReadOnlyList<IReadOnlySet<string>> During(
        IReadOnlyList<TaskRules> tasks, IEnumerable<string> atStart, IReadOnlyList<int> sequence)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        ArgumentNullException.ThrowIfNull(sequence);
        var during = new IReadOnlySet<string>[tasks.Count];
        ImmutableHashSet<string> now = ImmutableHashSet.CreateRange(TaskRules.Names, atStart);
        foreach (int i in sequence)
        {
            during[i] = now;
            now = now.Except(tasks[i].Ends).Union(tasks[i].Gives);
        }

        return during;
    }
}
