using Leverage.Reading;
using Leverage.Workshop.Files;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads the tasks of a job file and refuses what cannot be, with its place.</summary>
internal sealed class TaskReader
{
    private readonly NameIndex<int> _fasteners;
    private readonly List<TomlSection> _sections = [];
    private readonly List<JobTask> _tasks = [];
    private readonly Dictionary<(string Key, int Fastener), string> _taken = [];

    internal TaskReader(NameIndex<int> fasteners) => _fasteners = fasteners;

    /// <summary>The tasks; what cannot be is gathered.</summary>
    internal IReadOnlyList<JobTask> Read(IReadOnlyList<TomlSection> sections, IReadOnlyList<string> atStart, List<InputException> errors)
    {
        foreach (TomlSection section in sections)
        {
            section.Errors = errors;
            int before = errors.Count;
            _sections.Add(section);
            _tasks.Add(One(section));
            section.Done();
            if (errors.Count == before)
            {
                RefuseTwice(section, _tasks[^1]);
            }
        }

        // With a task that could not be read, half the others would seem to need what nothing gives.
        if (errors.Count == 0)
        {
            errors.AddRange(RuleCheck.Problems([.. _tasks.Select(task => task.Rules)], [.. atStart])
                .Select(problem => Where(problem).Error(problem.Key, problem.Message)));
        }

        return _tasks;
    }

    /// <summary>A state or name as it is compared and shown: trimmed, single spaces.</summary>
    internal static string Words(string text)
    {
        string words = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return words.Length > 0 ? words : throw new InputException("is blank.");
    }

    private JobTask One(TomlSection section) => new()
    {
        Rules = new TaskRules(
            NameOf(section),
            List(section, "needs"),
            List(section, "ends"),
            List(section, "gives"),
            List(section, "after")),
        Loosens = Fasteners(section, "loosens"),
        TakesOff = Fasteners(section, "takes_off"),
        Photograph = section.Text("photograph"),
        Note = section.Text("note"),
        Refit = List(section, "refit"),
        Supplies = List(section, "supplies"),
        Done = section.Flag("done"),
        Place = section.PlaceOf("name"),
    };

    private static string NameOf(TomlSection section)
    {
        if (section.OneLine("name") is { } name)
        {
            return Words(name);
        }

        if (!section.Has("name"))
        {
            section.Refuse(section.Missing("name", "Lift the rear axle"));
        }

        return "";
    }

    /// <summary>A fastener is loosened once and taken off once: twice is a slip of the pen.</summary>
    private void RefuseTwice(TomlSection section, JobTask task)
    {
        foreach (var (key, list) in ((string, IReadOnlyList<int>)[])[("loosens", task.Loosens), ("takes_off", task.TakesOff)])
        {
            for (int i = 0; i < list.Count; i++)
            {
                if (!_taken.TryAdd((key, list[i]), task.Name))
                {
                    section.Refuse(section.Values(key, text => text)[i].Place.Error(key, $"'{_taken[(key, list[i])]}' names it already: take it out of one."));
                }
            }
        }
    }

    private static string[] List(TomlSection section, string key) => [.. section.Values(key, Words).Select(item => item.Value)];

    private int[] Fasteners(TomlSection section, string key) =>
        [.. section.Values(key, name => _fasteners.Find(name, "a fastener")).Select(item => item.Value)];

    private FilePlace Where(RuleProblem problem)
    {
        TomlSection section = _sections[problem.Task];
        return problem.Key == "name"
            ? section.PlaceOf("name")
            : section.Values(problem.Key, Words)[problem.Entry].Place;
    }
}
