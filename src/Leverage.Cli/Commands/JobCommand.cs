using System.CommandLine;
using System.Text;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage job</c>: the whole strip-down, from the order of work to the refit.</summary>
internal sealed class JobCommand : LeverageCommand
{
    /// <summary>Fasteners drawn where drawings are asked for.</summary>
    private const int Drawings = 3;

    private readonly TextArgument _file = new("FILE", "the job file, such as shared/pickup/job.toml", required: false);
    private readonly TextOption _out = new("--out", "FILE", "the sheet to print: .html, or .md");
    private readonly Flag _csv = new("--csv", "a line a fastener, as CSV");
    private readonly Flag _pictures = new("--pictures", "draw the three hardest on the sheet, not only what asks for it");
    private readonly NewFile _new = new("--new", "write a commented starter file");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "job shared/pickup/job.toml",
        "job shared/pickup/job.toml --csv",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [_file, _out, _pictures, _csv, _new.Option];

    /// <inheritdoc/>
    internal override string Remarks =>
        "A job file holds vehicle, chest, fasteners and tasks. Tasks say what they need,\n"
            + "end and give; the program puts them in order, or names the loop.\n"
            + "Begin with: leverage job --new job.toml";

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        if (parsed.Get(_csv) && parsed.Json)
        {
            throw new InputException(_csv.Name, "cannot go with --json: ask for one of them.");
        }

        if (parsed.Text(_new.Option) is not null && parsed.Text(_file) is not null)
        {
            throw new InputException(_new.Option.Name, "stands alone: it writes a starter file and reads none.");
        }

        if (_new.Write(parsed, StarterJob.Text) is { } written)
        {
            return written;
        }

        string file = parsed.Text(_file)
            ?? throw new InputException("FILE", $"is missing: {_file.Description}. To begin one: leverage job --new job.toml.");
        string? sheet = parsed.Text(_out);
        if (sheet is not null)
        {
            _ = Format(sheet) ?? throw new InputException(_out.Name, $"'{sheet}' ends in neither .html nor .md.", new Cure("out", "sheet.html"));
            WholeFile.Check(_out.Name, sheet, parsed.ForceWrite);
        }

        JobPlan plan = JobPlanner.Plan(JobReader.Read(file));
        if (sheet is not null)
        {
            byte[] text = Encoding.UTF8.GetBytes(Sheet(plan, Format(sheet)!, parsed));
            WholeFile.Write(_out.Name, sheet, parsed.ForceWrite, stream => stream.Write(text));
        }

        return new CommandAnswer(
            plan.Verdict,
            () => JobAnswers.Of(plan, parsed.Units).ToJson(),
            parsed.Get(_csv)
                ? page => page.Raw(text => JobCsv.Write(plan, text, parsed.Units))
                : page => new JobWords(plan, parsed.Units, sheet).Write(page));
    }

    private string Sheet(JobPlan plan, string format, ParsedLine parsed) => format == "md"
        ? MarkdownSheet.Write(JobSheet.Of(plan, parsed.Units, []))
        : HtmlSheet.Write(JobSheet.Of(plan, parsed.Units, [.. parsed.Get(_pictures)
            ? plan.Hardest(Drawings).SelectMany(planned => Drawn(planned, parsed.Units))
            : Requested(plan, parsed.Units)]));

    /// <summary>The lever from the side, where a verdict asks for it.</summary>
    private static IEnumerable<SheetDrawing> Requested(JobPlan plan, UnitStyle units) =>
        plan.AsksForDrawing is { } planned ? Side(planned, units) : [];

    private static IEnumerable<SheetDrawing> Drawn(PlannedLoosening planned, UnitStyle units)
    {
        string name = planned.Fastener.Name;
        Chart window = WindowChart.Draw(WindowMaker.Of(planned.Assessment), name, units);
        return Side(planned, units).Prepend(Drawing(window, $"{name}: force of the hands against length of the lever"));
    }

    private static IEnumerable<SheetDrawing> Side(PlannedLoosening planned, UnitStyle units)
    {
        string name = planned.Fastener.Name;
        return LeverSketcher.Of(planned.Assessment) is { } sketch
            ? [Drawing(SideView.Draw(sketch, name, units), $"{name}: the lever from the side, to scale")]
            : [];
    }

    private static SheetDrawing Drawing(Chart chart, string caption) => new(chart.Svg(), caption);

    private static string? Format(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" or ".htm" => "html",
        ".md" => "md",
        _ => null,
    };
}
