using System.Globalization;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Ordering;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage job</c> in words: the order of work, what is hard, how it goes back.</summary>
internal sealed class JobWords
{
    private readonly JobPlan _plan;
    private readonly UnitStyle _units;
    private readonly string? _sheet;

    /// <summary>Words for a plan.</summary>
    internal JobWords(JobPlan plan, UnitStyle units, string? sheet) => (_plan, _units, _sheet) = (plan, units, sheet);

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title(_plan.Job.Title);
        Order(page);
        Loosening(page);
        Refit(page);
        if (_plan.Parts.Count > 0)
        {
            page.Note("New parts", string.Join("; ", _plan.Parts.Select(
                part => string.Create(CultureInfo.InvariantCulture, $"{part.Count} × {part.Part}"))));
        }

        page.Note("Before you pull", "the maker's manual and local rules come first; never under it on a jack alone.");
        page.Note("Sheet", _sheet is null ? "add --out sheet.html for a page to print, with everything and boxes to tick" : $"written to {_sheet}");
    }

    private void Order(Page page)
    {
        foreach (PlannedTask task in _plan.Tasks)
        {
            page.Item(task.Number, task.Task.Name);
            page.Below(task.Before.Count > 0 ? TaskPhrases.Must(task) : "");
            page.Below(task.Moved is { } rule ? $"moved up: {OrderWords.WhyMoved(rule, _plan.Job.Rules)}" : "");
        }

        if (_plan.Tasks.Count > 0)
        {
            page.Space();
        }
    }

    private void Loosening(Page page)
    {
        page.Line($"What is hard first, {_units.TorqueUnit} likely and hard:");
        foreach (PlannedLoosening planned in _plan.Loosening)
        {
            string word = LooseningAnswers.Word(planned.Verdict).ToUpperInvariant();
            string step = planned.Task is { } task ? string.Create(CultureInfo.InvariantCulture, $", step {task.Number}") : "";
            page.Entry(word, $"{planned.Fastener.Name}{step}: {Takes(planned)}; {FastenerPhrases.SetUp(planned, _units)[0]}");
            if (planned.Verdict != Assessments.Verdict.Go)
            {
                page.Under(string.Join(' ', FastenerPhrases.Verdict(planned, _units).Skip(2).Take(2)));
            }
        }

        page.Space();
    }

    private string Takes(PlannedLoosening planned) =>
        $"{_units.TorqueNumber(Nmm(planned.Assessment.Nut.LikelyNmm))} · {_units.TorqueNumber(Nmm(planned.Assessment.Nut.HighNmm))}";

    private void Refit(Page page)
    {
        var table = new Columns("lrll").Row("refit, the last one off first", _units.TorqueUnit, "from", "torque wrench");
        foreach (PlannedTightening planned in _plan.Refit)
        {
            table.Row(
                planned.Fastener.Name,
                _units.TorqueNumber(planned.Torque),
                planned.Basis == TorqueBasis.Book ? "book" : "worked out",
                planned.Wrench?.Wrench.Name ?? "none in range");
        }

        page.Table(table);
        page.Space();
    }

    private static UnitsNet.Torque Nmm(double torqueNmm) => UnitsNet.Torque.FromNewtonMillimeters(torqueNmm);
}
