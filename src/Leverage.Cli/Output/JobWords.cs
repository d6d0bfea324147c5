using System.Globalization;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Ordering;
using Leverage.Workshop.Sheets;

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
    internal void Write(TextPage page)
    {
        page.Title(_plan.Job.Title);
        Order(page);
        Loosening(page);
        Refit(page);
        foreach (SheetLine line in Preparation.Lines(_plan, _units).Where(line => line.Label is not ("Photograph" or "At the start" or "Lay out")))
        {
            page.Note(line.Label, line.Words);
        }

        page.Note("Before you pull", "the maker's manual and local rules come first; never under it on a jack alone.");
        page.Note("Sheet", _sheet is null ? "add --out sheet.html for a page to print, with everything and boxes to tick" : $"written to {_sheet}");
    }

    private void Order(TextPage page)
    {
        foreach (PlannedTask task in _plan.Tasks)
        {
            page.Item(task.Number, task.Task.Name);
            page.Under(task.Before.Count > 0 ? TaskPhrases.Must(task) : "", indent: 10);
            page.Under(task.Moved is { } rule ? $"moved up: {OrderWords.WhyMoved(rule, _plan.Left.Rules)}" : "", indent: 10);
        }

        if (_plan.Tasks.Count > 0)
        {
            page.Space();
        }
    }

    private void Loosening(TextPage page)
    {
        page.Line($"Hardest first; {_units.TorqueUnit}, likely · hard:");
        foreach (var alike in _plan.Loosening.GroupBy(planned => (
            Word: VerdictWords.Word(planned.Verdict).ToUpperInvariant(), Takes: Takes(planned), Tools: FastenerPhrases.Tools(planned, _units)[0], Note: FastenerPhrases.Note(planned, _units), planned.Fastener.LeftHand)))
        {
            page.Entry(alike.Key.Word, $"{FastenerPhrases.Together([.. alike.Select(planned => planned.Fastener.Name)])}{Steps(alike)}{(alike.Key.LeftHand ? ", LEFT-HAND: loosen clockwise" : "")}: {alike.Key.Takes}; {alike.Key.Tools}");
            page.Under(alike.Key.Note);
        }

        page.Space();
    }

    private static string Steps(IEnumerable<PlannedLoosening> alike)
    {
        string[] steps = [.. alike.Select(planned => planned.Task?.Number).OfType<int>().Distinct().Order().Select(number => number.ToString(CultureInfo.InvariantCulture))];
        return steps.Length == 0 ? "" : $", step{(steps.Length > 1 ? "s" : "")} {string.Join(", ", steps)}";
    }

    private string Takes(PlannedLoosening planned) =>
        $"{_units.TorqueNumber(Nmm(planned.Assessment.Nut.LikelyNmm))} · {_units.TorqueNumber(Nmm(planned.Assessment.Nut.HighNmm))}";

    private void Refit(TextPage page)
    {
        (RefitStep Step, RefitFit Fit)[] fits = [.. _plan.RefitSteps.SelectMany(step => step.Fits.Select(fit => (step, fit)))];
        var table = new Columns("lrll").Row("refit, in order", _units.TorqueUnit, "torque wrench", "");
        foreach (var (step, fit) in fits)
        {
            table.Row(
                fit.Tightening.Fastener.Name,
                fit.Stage == RefitStage.Snug ? "snug" : _units.TorqueNumber(fit.Tightening.Torque),
                RefitPhrases.Wrench(fit, _units)[0],
                step.Reverses is not null && fit.Stage == RefitStage.Full && !fit.IsFitted ? "on its wheels" : "");
        }

        string[] lines = [.. table.Lines()];
        page.Line(lines[0]);
        for (int i = 0; i < fits.Length; i++)
        {
            if (fits[i].Step.Reverses is null && (i == 0 || fits[i - 1].Step != fits[i].Step))
            {
                page.Line($"{fits[i].Step.Title}:");
            }

            page.Line(lines[i + 1]);
        }

        page.Space();
    }

    private static UnitsNet.Torque Nmm(double torqueNmm) => UnitsNet.Torque.FromNewtonMillimeters(torqueNmm);
}
