using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>A drawing for the sheet, made elsewhere.</summary>
/// <param name="Svg">SVG text.</param>
/// <param name="Caption">What it shows.</param>
public sealed record SheetDrawing(string Svg, string Caption);

/// <summary>Lays a planned job out as a sheet: what to see to before, the order of work, the refit.</summary>
public static class JobSheet
{
    private const string First = "Glasses on. Never under it on a jack alone: rated stands, firm ground. "
        + "The maker's manual and local rules come first. Brakes, steering, doubts: a licensed mechanic.";

    /// <summary>The sheet of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">Units.</param>
    /// <param name="drawings">Drawings; may be empty.</param>
    /// <returns>The sheet.</returns>
    public static Sheet Of(JobPlan plan, UnitStyle units, IReadOnlyList<SheetDrawing> drawings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(drawings);
        string about = string.Join(" ", ((string?[])[plan.Job.Vehicle?.Name, plan.Job.Note]).OfType<string>().Select(VerdictWords.Sentence));
        string assumed = Assumed(plan, units);
        return new Sheet(
            plan.Job.Title,
            [
                .. about.Length > 0 ? (SheetBlock[])[new SheetParagraph(about)] : [],
                new SheetCaution(First),
                new SheetBlanks(["vehicle, number", "done by", "date"]),
                new SheetPanel(Preparation.Lines(plan, units)),
                .. plan.Tasks.Count > 0 || plan.Job.Tasks.Count == 0 ? Work(plan, units) : [],
                .. drawings.Select(drawing => new SheetFigure(drawing.Svg, drawing.Caption)),
                new SheetHeading("Refit", "Clean threads, the lubricant named and no other. Stages and patterns are common practice: the maker's own come first."),
                new RefitTable(plan, units).Table(),
                .. assumed.Length > 0 ? (SheetBlock[])[new SheetParagraph($"Assumed where the job says nothing: {assumed}.{(assumed.Contains('*', StringComparison.Ordinal) ? " * not confirmed" : "")}")] : [],
            ]);
    }

    private static SheetBlock[] Work(JobPlan plan, UnitStyle units) =>
    [
        new SheetHeading("Order of work", "Torque is likely; one nut in ten takes more than hard; n in 100 come loose. STOP: change what is named first. CARE: mind it. "
            + "Write in what it came at or held; ring R rounded, S sheared."),
        new WorkTable(plan, units).Table(),
    ];

    /// <summary>What was taken for granted, without figures; what holds has a column of its own.</summary>
    private static string Assumed(JobPlan plan, UnitStyle units) => string.Join("; ", plan.Loosening
        .SelectMany(planned => planned.Assessment.Setup.Assumed)
        .Where(assumption => assumption.Value is null && assumption.Kind != AssumptionKind.HoldNotJudged)
        .Select(assumption => AssumedWords.Brief([assumption], units)).Distinct(StringComparer.Ordinal));
}
