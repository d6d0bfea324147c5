using Leverage.Reading;

namespace Leverage.Workshop.Ordering;

/// <summary>Something a task says that cannot be: where it stands, and what is wrong.</summary>
/// <param name="Task">Index of the task.</param>
/// <param name="Key">Which of its lists: <c>needs</c>, <c>ends</c>, <c>gives</c>, <c>after</c>; or <c>name</c>.</param>
/// <param name="Entry">Index in that list.</param>
/// <param name="Message">What, why, cure.</param>
public sealed record RuleProblem(int Task, string Key, int Entry, string Message);

/// <summary>Checks what tasks say before they are put in order: names once, every name and every state known.</summary>
public static class RuleCheck
{
    /// <summary>What cannot be, the first of each task.</summary>
    /// <param name="tasks">The tasks.</param>
    /// <param name="atStart">States that hold before the first task.</param>
    /// <returns>The problems, in the order of the tasks; names given twice before any other.</returns>
    public static IReadOnlyList<RuleProblem> Problems(IReadOnlyList<TaskRules> tasks, IReadOnlyCollection<string> atStart)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        ArgumentNullException.ThrowIfNull(atStart);
        var names = new HashSet<string>(TaskRules.Names);
        var start = new HashSet<string>(atStart, TaskRules.Names);
        var known = new HashSet<string>(atStart.Concat(tasks.SelectMany(task => task.Gives)), TaskRules.Names);
        var problems = new List<RuleProblem>();
        for (int i = 0; i < tasks.Count; i++)
        {
            if (!names.Add(tasks[i].Name))
            {
                problems.Add(new RuleProblem(i, "name", 0, $"there are two tasks '{tasks[i].Name}': give each its own name."));
            }
        }

        problems.AddRange(tasks.Select((task, i) => Of(task, i, names, start, known)).OfType<RuleProblem>());
        return problems;
    }

    private static RuleProblem? Of(TaskRules task, int i, HashSet<string> names, HashSet<string> start, HashSet<string> known) =>
        Unknown(task.After, name => TaskRules.Names.Equals(name, task.Name)
            ? $"'{name}' cannot come after itself: take it out."
            : names.Contains(name) ? null : $"there is no task '{name}'. {Near(name, names)}").At(i, "after")
        ?? Unknown(task.Gives, state => start.Contains(state)
            ? $"'{state}' holds at the start already. Give the later spell its own words, such as '{state} again'."
            : Both(state, task)).At(i, "gives")
        ?? Unknown(task.Needs, state => known.Contains(state)
            ? null
            : $"nothing gives '{state}': no task does, and it is not in at_start. {Near(state, known)}").At(i, "needs")
        ?? Unknown(task.Ends, state => known.Contains(state)
            ? null
            : $"'{state}' never holds: no task gives it, and it is not in at_start. {Near(state, known)}").At(i, "ends");

    private static string? Both(string state, TaskRules task) =>
        task.Ends.Contains(state, TaskRules.Names) ? $"it cannot give and end '{state}' at once: take one out."
        : task.Needs.Contains(state, TaskRules.Names) ? $"it cannot need what it gives, '{state}': take one out."
        : null;

    private static (int Entry, string Message)? Unknown(
        IReadOnlyList<string> list, Func<string, string?> problem)
    {
        for (int i = 0; i < list.Count; i++)
        {
            if (problem(list[i]) is { } message)
            {
                return (i, message);
            }
        }

        return null;
    }

    private static RuleProblem? At(this (int Entry, string Message)? found, int task, string key) =>
        found is var (entry, message) ? new RuleProblem(task, key, entry, message) : null;

    private static string Near(string name, HashSet<string> names)
    {
        IReadOnlyList<string> near = NearestNames.Of(name, names, 3);
        return near.Count > 0 ? $"Nearest: {string.Join(", ", near)}." : "Write it there, or take it out here.";
    }
}
