using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Sheets;

/// <summary>A task in words.</summary>
public static class TaskPhrases
{
    /// <summary>Everything that goes with a task, each line under its label.</summary>
    /// <param name="planned">The task.</param>
    /// <param name="job">The job.</param>
    /// <param name="units">Units.</param>
    /// <returns>The lines in the order one needs them.</returns>
    public static IReadOnlyList<SheetLine> Lines(PlannedTask planned, Job job, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(job);
        IReadOnlyList<TaskRules> rules = job.Rules;
        JobTask task = planned.Task;
        var lines = new List<SheetLine>();
        Add(lines, "must be", Must(planned));
        Add(lines, "moved up:", planned.Moved is { } rule ? OrderWords.WhyMoved(rule, rules) : "");
        Add(lines, "photograph:", task.Photograph ?? "");
        Add(lines, "loosen, and leave on a few threads:", List(task.Loosens, job, units));
        Add(lines, "take off, bag and tag:", List(task.TakesOff, job, units));
        Add(lines, "from here on:", Change(task.Rules));
        Add(lines, "mind:", string.Join("; ", Notes(task, job)));
        return lines;
    }

    /// <summary>What must hold while it is done, and before which tasks: "on the ground, in gear; and before 'Lift it'".</summary>
    public static string Must(PlannedTask planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        if (planned.Task.Rules.Needs.Count == 0)
        {
            return "";
        }

        IEnumerable<string> needs = planned.Task.Rules.Needs.Select(
            state => TaskRules.Names.Equals(state, JobStates.WheelsDown) ? "on the ground" : state);
        string with = string.Join(", ", needs.OrderByDescending(state => state == "on the ground"));
        return planned.Before.Count == 0 ? with : $"{with}; and before {Listed(planned.Before)}";
    }

    private static string Listed(IReadOnlyList<string> names) => names.Count == 1
        ? $"'{names[0]}'"
        : string.Join(", ", names.SkipLast(1).Select(name => $"'{name}'")) + $" and '{names[^1]}'";

    private static string List(IReadOnlyList<int> fasteners, Job job, UnitStyle units) => string.Join("; ", fasteners.Select(i =>
    {
        string kind = FastenerPhrases.Kind(job.Fasteners[i], units);
        return kind.Length > 0 ? $"{job.Fasteners[i].Name} ({kind})" : job.Fasteners[i].Name;
    }));

    private static string Change(TaskRules rules) => string.Join("; ",
        rules.Gives.Concat(rules.Ends.Select(state => $"no longer {state}")));

    private static IEnumerable<string> Notes(JobTask task, Job job)
    {
        IEnumerable<string> notes = task.Note is { } note ? [note] : [];
        return notes.Concat(task.Loosens.Concat(task.TakesOff)
            .Where(i => job.Fasteners[i].Note is not null)
            .Where(i => task.Loosens.Contains(i) || !job.Tasks.Any(other => other.Loosens.Contains(i)))
            .Select(i => job.Fasteners[i].Note!).Distinct(StringComparer.Ordinal));
    }

    private static void Add(List<SheetLine> lines, string label, string words)
    {
        if (words.Length > 0)
        {
            lines.Add(new SheetLine(label, words));
        }
    }
}
