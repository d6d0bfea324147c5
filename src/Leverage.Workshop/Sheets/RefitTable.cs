using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>Lays out the refit in its own order.</summary>
internal sealed class RefitTable
{
    private readonly JobPlan _plan;
    private readonly UnitStyle _units;

    internal RefitTable(JobPlan plan, UnitStyle units) => (_plan, _units) = (plan, units);

    internal SheetTable Table() => new(
        [new("step: the reverse of", 23), new("fasteners", 26), new("torque", 20), new("torque wrench", 14), new("new, and to remember", 17)],
        [.. _plan.RefitSteps.Select(Step)]);

    private SheetGroup Step(RefitStep step)
    {
        string title = $"{FastenerPhrases.Whole(step.Number)} {step.Title}";
        return new SheetGroup(new SheetCell(CellKind.Ticked, title) { Loud = step.Then }, Merged(step.Fits));
    }

    /// <summary>Fits that read alike become one row.</summary>
    private List<SheetRow> Merged(IReadOnlyList<RefitFit> fits) =>
    [
        .. fits.Select(fit => (Fit: fit, Cells: Cells(fit)))
            .GroupBy(each => string.Join('\u001f', each.Cells.SelectMany(cell => cell.Lines.Concat(cell.Loud).Append("\u001e")))
                + SizePhrases.Kind(each.Fit.Tightening.Fastener, _units), StringComparer.Ordinal)
            .Select(group => new SheetRow([Name([.. group.Select(each => each.Fit.Tightening.Fastener)]), .. Cells(Joined([.. group.Select(each => each.Fit)]))])),
    ];

    private SheetCell[] Cells(RefitFit fit) =>
    [
        new(CellKind.Figure, RefitPhrases.Torque(fit, _units)),
        new(CellKind.Words, RefitPhrases.Wrench(fit, _units)),
        RefitPhrases.Remember(fit),
    ];

    /// <summary>A fit that stands for several alike: its new parts are all of theirs.</summary>
    private static RefitFit Joined(IReadOnlyList<RefitFit> alike) => alike[0] with
    {
        Tightening = alike[0].Tightening with
        {
            Fastener = alike[0].Tightening.Fastener with { NewPartCount = alike.Sum(fit => fit.Tightening.Fastener.NewPartCount) },
        },
    };

    private static SheetCell Name(IReadOnlyList<JobFastener> alike)
    {
        int count = alike.Sum(fastener => fastener.Count);
        string name = FastenerPhrases.Together([.. alike.Select(fastener => fastener.Name).Order(StringComparer.Ordinal)]);
        return new SheetCell(CellKind.Ticked, count > 1 ? $"{FastenerPhrases.Whole(count)} × {name}" : name);
    }
}
