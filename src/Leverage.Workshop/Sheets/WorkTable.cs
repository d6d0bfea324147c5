using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>Lays out the order of work: each task, and what is turned in it. Fasteners that read alike share a row.</summary>
internal sealed class WorkTable
{
    private readonly JobPlan _plan;
    private readonly UnitStyle _units;
    private readonly Dictionary<string, PlannedLoosening> _loosening;
    private readonly HashSet<int> _loosened = [];
    private readonly Dictionary<string, int> _numbers;

    internal WorkTable(JobPlan plan, UnitStyle units)
    {
        (_plan, _units) = (plan, units);
        _numbers = plan.Tasks.ToDictionary(task => task.Task.Name, task => task.Number, Ordering.TaskRules.Names);
        _loosening = plan.Loosening.ToDictionary(planned => planned.Fastener.Name, StringComparer.OrdinalIgnoreCase);
    }

    internal SheetTable Table() => new(
        [
            new("task", 21), new("fasteners", 24), new("with", 17), new($"loosens at, {_units.TorqueUnit}", 10), new("who, and what holds", 13),
            new("came", 4), new("held", 4), new("R S", 3), new("refit", 4),
        ],
        [.. _plan.Tasks.Select(Task), .. InNoTask()]);

    private SheetGroup Task(PlannedTask planned)
    {
        var rows = new List<(int Fastener, SheetRow Row)>();
        var off = new List<int>();
        foreach (int i in planned.Task.Loosens.Concat(planned.Task.TakesOff))
        {
            if (IsLoose(i))
            {
                off.Add(i);
            }
            else
            {
                rows.Add((i, Row(i)));
            }
        }

        _loosened.UnionWith(rows.Select(row => row.Fastener));
        var lead = new SheetCell(CellKind.Ticked, [$"{FastenerPhrases.Whole(planned.Number)} {planned.Task.Name}", .. TaskPhrases.Lines(planned, _numbers)])
        {
            Loud = off.Count > 0 ? [Off(off)] : [],
        };
        return new SheetGroup(lead, Merged(rows));
    }

    private IEnumerable<SheetGroup> InNoTask()
    {
        var named = _plan.Job.Tasks.SelectMany(task => task.Loosens.Concat(task.TakesOff)).ToHashSet();
        List<(int, SheetRow)> rows = [.. Enumerable.Range(0, _plan.Job.Fasteners.Count).Where(i => !named.Contains(i) && !IsLoose(i)).Select(i => (i, Row(i)))];
        return rows.Count > 0
            ? [new SheetGroup(new SheetCell(CellKind.Ticked, _plan.Job.Tasks.Count > 0 ? "In no task" : "All fasteners"), Merged(rows))]
            : [];
    }

    /// <summary>Whether it is loose before this: from an earlier task, or another day.</summary>
    private bool IsLoose(int i) => _loosened.Contains(i)
        || !_plan.Job.Fasteners[i].Sheared && !_loosening.ContainsKey(_plan.Job.Fasteners[i].Name);

    /// <summary>What is loose already and only comes off.</summary>
    private string Off(List<int> loose) => "take off, loose already: " + string.Join("; ", loose.Select(i => _plan.Job.Fasteners[i])
        .GroupBy(fastener => (fastener.Count, Kind: SizePhrases.Kind(fastener, _units)))
        .Select(group => Counted(group.Sum(fastener => fastener.Count), FastenerPhrases.Together([.. group.Select(fastener => fastener.Name)]))));

    private static string Counted(int count, string name) => count > 1 ? $"{FastenerPhrases.Whole(count)} × {name}" : name;

    private SheetRow Row(int i)
    {
        JobFastener fastener = _plan.Job.Fasteners[i];
        string refit = _units.TorqueNumber(_plan.Refit[i].Torque);
        SheetCell name = Name(fastener, fastener.Name);
        if (fastener.Sheared)
        {
            return new SheetRow([name, Text("twisted off: drill it out"), Text("–"), Text("–"), .. Written, Text(refit)]);
        }

        PlannedLoosening planned = _loosening[fastener.Name];
        return new SheetRow(
            [
                name,
                new SheetCell(CellKind.Words, FastenerPhrases.Tools(planned, _units)),
                new SheetCell(CellKind.Verdict, FastenerPhrases.Takes(planned, _units)),
                new SheetCell(CellKind.Words, FastenerPhrases.Held(planned, _units)),
                .. Written,
                new SheetCell(CellKind.Figure, refit),
            ],
            FastenerPhrases.Note(planned, _units));
    }

    /// <summary>Rows that say the same of fasteners of one kind become one: left and right, and their counts.</summary>
    private List<SheetRow> Merged(List<(int Fastener, SheetRow Row)> rows) =>
    [
        .. rows.GroupBy(each => string.Join('\u001f', each.Row.Cells[0].Loud.Concat(each.Row.Cells.Skip(1).SelectMany(cell => cell.Lines.Append("\u001e"))))
                + each.Row.Note + SizePhrases.Kind(_plan.Job.Fasteners[each.Fastener], _units) + _plan.Job.Fasteners[each.Fastener].Note, StringComparer.Ordinal)
            .Select(group => group.Count() == 1
                ? group.First().Row
                : group.First().Row with { Cells = [Name([.. group.Select(each => _plan.Job.Fasteners[each.Fastener])]), .. group.First().Row.Cells.Skip(1)] }),
    ];

    private SheetCell Name(IReadOnlyList<JobFastener> alike) => Name(
        alike[0] with { Count = alike.Sum(fastener => fastener.Count), Place = null }, FastenerPhrases.Together([.. alike.Select(fastener => fastener.Name)]));

    private SheetCell Name(JobFastener fastener, string name)
    {
        string[] more = [SizePhrases.Kind(fastener, _units), fastener.Place ?? ""];
        string kind = string.Join(" · ", more.Where(words => words.Length > 0));
        return new SheetCell(
            CellKind.Ticked,
            [
                Counted(fastener.Count, name),
                .. kind.Length > 0 ? (string[])[kind] : [],
                .. fastener.Note is { } note ? (string[])[note] : [],
            ])
        {
            Loud = fastener.LeftHand ? ["LEFT-HAND: loosen clockwise"] : [],
        };
    }

    /// <summary>Where to write what it came loose at or held, and to ring R for rounded off, S for sheared.</summary>
    private static SheetCell[] Written => [new(CellKind.Blank, ""), new(CellKind.Blank, ""), Text("R\u00a0S")];

    private static SheetCell Text(string words) => new(CellKind.Words, words);
}
