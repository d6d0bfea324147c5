using Leverage.Workshop.Jobs;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Sheets;

/// <summary>A task in words.</summary>
internal static class TaskPhrases
{
    /// <summary>What goes with a task, a line each: what must hold and before which tasks, what to photograph, what to mind.</summary>
    internal static IReadOnlyList<string> Lines(PlannedTask planned, IReadOnlyDictionary<string, int> number)
    {
        string before = string.Join(", ", planned.Before.Select(name => number[name]).Order().Select(FastenerPhrases.Whole));
        return
        [
            .. Labelled("", string.Join("; ", ((string[])[Needs(planned), before.Length > 0 ? $"before {before}" : ""]).Where(words => words.Length > 0))),
            .. Labelled("photograph: ", planned.Task.Photograph ?? ""),
            .. Labelled("mind: ", planned.Task.Note ?? ""),
        ];
    }

    /// <summary>What must hold while it is done, and before which tasks: "on the ground, in gear; and before 'Lift it'".</summary>
    internal static string Must(PlannedTask planned)
    {
        if (planned.Task.Rules.Needs.Count == 0)
        {
            return "";
        }

        string with = Needs(planned);
        return planned.Before.Count == 0 ? with : $"{with}; and before {Listed(planned.Before)}";
    }

    private static string Needs(PlannedTask planned) => string.Join(", ", planned.Task.Rules.Needs
        .OrderByDescending(state => TaskRules.Names.Equals(state, JobStates.WheelsDown)).Select(JobStates.Words));

    private static string Listed(IReadOnlyList<string> names) => names.Count == 1
        ? $"'{names[0]}'"
        : string.Join(", ", names.SkipLast(1).Select(name => $"'{name}'")) + $" and '{names[^1]}'";

    private static string[] Labelled(string label, string words) => words.Length > 0 ? [label + words] : [];
}
