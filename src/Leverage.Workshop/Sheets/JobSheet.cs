using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>A drawing for the sheet, made elsewhere.</summary>
/// <param name="Svg">SVG text.</param>
/// <param name="Caption">What it shows.</param>
public sealed record SheetDrawing(string Svg, string Caption);

/// <summary>Lays a planned job out as a sheet: order of work, loosening plan, refit, parts, boxes to tick.</summary>
public sealed class JobSheet
{
    private const string First = "Glasses on. On its wheels, or on rated stands on firm ground: never under it on a jack alone. "
        + "The maker's manual and local rules come before this sheet; brakes, steering and anything you are unsure of belong to a licensed mechanic.";

    /// <summary>An assumption the column "held by" tells better.</summary>
    private const string NotJudged = "hold not judged";

    private readonly JobPlan _plan;
    private readonly UnitStyle _units;
    private readonly List<SheetBlock> _blocks = [];

    private JobSheet(JobPlan plan, UnitStyle units) => (_plan, _units) = (plan, units);

    /// <summary>The sheet of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">Units.</param>
    /// <param name="drawings">Drawings of the hard ones; may be empty.</param>
    /// <returns>The sheet.</returns>
    public static Sheet Of(JobPlan plan, UnitStyle units, IReadOnlyList<SheetDrawing> drawings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(drawings);
        var sheet = new JobSheet(plan, units);
        sheet.Head();
        sheet.Order();
        sheet.Loosening(drawings);
        sheet.Refit();
        sheet.Parts();
        sheet.Assumed();
        sheet.Boxes();
        return new Sheet(plan.Job.Title, sheet._blocks);
    }

    private void Head()
    {
        Job job = _plan.Job;
        if (job.Vehicle?.Name is { } name)
        {
            _blocks.Add(new SheetParagraph(Sentence(name)));
        }

        if (job.Note is { } note)
        {
            _blocks.Add(new SheetParagraph(note));
        }

        _blocks.Add(new SheetBlanks(["vehicle, number", "done by", "date"]));
        _blocks.Add(new SheetCaution(First));
    }

    private void Order()
    {
        if (_plan.Tasks.Count == 0)
        {
            return;
        }

        _blocks.Add(new SheetHeading("Order of work"));
        if (_plan.Job.AtStart.Count > 0)
        {
            _blocks.Add(new SheetParagraph($"At the start: {string.Join(", ", _plan.Job.AtStart)}."));
        }

        _blocks.Add(new SheetSteps(
            [.. _plan.Tasks.Select(task => new SheetStep(task.Task.Name, TaskPhrases.Lines(task, _plan.Job, _units)))]));
    }

    private void Loosening(IReadOnlyList<SheetDrawing> drawings)
    {
        _blocks.Add(new SheetHeading("Loosening plan, the hard ones first", NewPage: true));
        _blocks.Add(new SheetParagraph("What it takes is likely; one in ten is easier than easy, one in ten harder than hard. "
            + "STOP: change what is named first. CARE: it may work; mind what is named. GO: nothing known speaks against it."));
        _blocks.Add(new SheetTable(
            [new("fastener", 21), new("it takes", 12), new("with", 21), new("verdict", 32), new("held by", 14)],
            [.. _plan.Loosening.Select(planned => (IReadOnlyList<SheetCell>)
                [
                    Name(planned.Fastener, planned.Task is { } task ? [$"step {FastenerPhrases.Whole(task.Number)}"] : ["in no task"]),
                    new SheetCell(CellKind.Figure, FastenerPhrases.Takes(planned, _units)),
                    new SheetCell(CellKind.Words, FastenerPhrases.SetUp(planned, _units)),
                    new SheetCell(CellKind.Verdict, FastenerPhrases.Verdict(planned, _units)),
                    new SheetCell(CellKind.Words, FastenerPhrases.Held(planned, _units)),
                ])]));
        _blocks.AddRange(drawings.Select(drawing => new SheetFigure(drawing.Svg, drawing.Caption)));
    }

    private void Refit()
    {
        _blocks.Add(new SheetHeading("Refit, the last one off first", NewPage: true));
        _blocks.Add(new SheetParagraph("Clean threads, the lubricant named and no other. Stages and patterns are common practice: "
            + "the maker's own come first. Hang the weight at rest on a level bar; the bar's own weight comes on top. "
            + "The wrench's scatter is shown; friction scatters the clamp several times as much."));
        _blocks.Add(new SheetTable(
            [new("fastener", 24), new("torque", 15), new("stages, order", 17), new("torque wrench", 17), new("or hang", 11), new("believable", 16)],
            [.. _plan.Refit.Select(planned => (IReadOnlyList<SheetCell>)
                [
                    Name(planned.Fastener, planned.Fastener.NewPart is { } part ? [$"new: {part}"] : []),
                    new SheetCell(CellKind.Figure, RefitPhrases.Torque(planned, _units)),
                    new SheetCell(CellKind.Words, RefitPhrases.Order(planned, _units)),
                    new SheetCell(CellKind.Words, RefitPhrases.Wrench(planned, _plan.Job, _units)),
                    new SheetCell(CellKind.Words, RefitPhrases.Hang(planned, _units)),
                    new SheetCell(CellKind.Words, RefitPhrases.Believable(planned)),
                ])]));
    }

    private void Parts()
    {
        if (_plan.Parts.Count > 0)
        {
            _blocks.Add(new SheetHeading("New parts to buy"));
            _blocks.Add(new SheetList([.. _plan.Parts.Select(RefitPhrases.Part)], Ticked: true));
        }
    }

    private void Boxes()
    {
        string[] boxes = ["loosened", "photographed", "bagged", "torqued", "marked"];
        _blocks.Add(new SheetHeading("Tick off", NewPage: true));
        _blocks.Add(new SheetTable(
            [new("fastener", 30), .. boxes.Select(box => new SheetColumn(box, 14))],
            [.. _plan.Job.Fasteners.Select(fastener => (IReadOnlyList<SheetCell>)
                [
                    new SheetCell(CellKind.Name, fastener.Count > 1 ? $"{fastener.Name}, {FastenerPhrases.Whole(fastener.Count)}" : fastener.Name),
                    .. boxes.Select(_ => new SheetCell(CellKind.Box)),
                ])]));
    }

    private void Assumed()
    {
        string[] assumed =
        [
            .. _plan.Loosening.SelectMany(planned => planned.Assessment.Setup.Assumed)
                .Where(assumption => assumption.Value is null && assumption.What != NotJudged)
                .Select(assumption => AssumedWords.Brief([assumption], _units)).Distinct(StringComparer.Ordinal),
        ];
        if (assumed.Length > 0)
        {
            _blocks.Add(new SheetHeading("Assumed where the job says nothing"));
            _blocks.Add(new SheetList(assumed));
        }
    }

    private SheetCell Name(JobFastener fastener, IEnumerable<string> more)
    {
        string kind = FastenerPhrases.Kind(fastener, _units);
        return new SheetCell(CellKind.Name, [fastener.Name, .. kind.Length > 0 ? (string[])[kind] : [], .. fastener.Place is { } place ? (string[])[place] : [], .. more]);
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..].TrimEnd('.') + ".";
}
