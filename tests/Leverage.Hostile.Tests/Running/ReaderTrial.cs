using Leverage.Grades;
using Leverage.Hostile.Tests.Generated;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Hostile.Tests.Running;

/// <summary>The readers of one value: a finite number within the range they name, or a refusal of one line.</summary>
internal static class ReaderTrial
{
    private static readonly ScrewThread Metric = ThreadCatalog.Named("M12");
    private static readonly ScrewThread Unified = ThreadCatalog.Named("1/2-20");

    internal static string? Broken(HostileInput input)
    {
        string text = input.Words[1];
        try
        {
            double value = Read(input.Words[0], text);
            return double.IsFinite(value) && value >= 0 ? null : $"reads {input.Words[1]} as {value.ToString("R", null)}";
        }
        catch (InputException e)
        {
            return Manners.BrokenLine(e.Line + "\n");
        }
    }

    private static double Read(string reader, string text) => reader switch
    {
        "torque" => LooseningFields.Torque.Value(text).Torque.NewtonMeters,
        "length" => LooseningFields.Bar.Value(text).Millimeters,
        "force" => LooseningFields.Force.Value(text).Newtons,
        "mass" => LooseningFields.VehicleMass.Value(text).Kilograms,
        "stress" => LooseningFields.BarYield.Value(text).Megapascals,
        "angle" => LooseningFields.PastSquare.Value(text).Degrees,
        "share" => TighteningFields.YieldShare.Value(text),
        "number" => LooseningFields.Friction.Value(text),
        "rise" => LooseningFields.By.Value(text).Kelvins,
        "tube" => LooseningFields.Tube.Value(text).Length.Millimeters,
        "grade" => GradeCatalog.Bolt(text, text.StartsWith('S') ? Unified : Metric).YieldMpa,
        _ => ThreadCatalog.Named(text).DiameterMm,
    };
}

/// <summary>The readers of files, without the command line before them.</summary>
internal static class FileTrial
{
    internal static string? Broken(HostileInput input)
    {
        try
        {
            _ = input.Words[0] switch
            {
                "chest" => ToolChest.Parse("chest.toml", input.Text!).Bars.Count,
                "plan" => Planned(JobPlanner.Plan(JobReader.Parse("job.toml", input.Text!, Beside(input)))),
                "list" => FastenerList.Parse("list.csv", input.Beside!).Count,
                _ => JobReader.Parse("job.toml", input.Text!, Beside(input)).Fasteners.Count,
            };
            return null;
        }
        catch (InputException e)
        {
            return Manners.BrokenLine(e.Line + "\n");
        }
    }

    /// <summary>Everything a plan is written as; the writer of JSON refuses NaN and ∞.</summary>
    private static int Planned(JobPlan plan)
    {
        Sheet sheet = JobSheet.Of(plan, UnitStyle.Metric, []);
        using var list = new StringWriter();
        JobCsv.Write(plan, list, UnitStyle.Us);
        return (HtmlSheet.Write(sheet) + MarkdownSheet.Write(sheet) + list + JobAnswers.Of(plan, UnitStyle.Metric).ToJson()).Length;
    }

    private static Dictionary<string, string> Beside(HostileInput input) =>
        input.Beside is { } text ? new(StringComparer.Ordinal) { [HostileInput.BesideName] = text } : [];
}
