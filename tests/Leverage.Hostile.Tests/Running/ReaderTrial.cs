using Leverage.Grades;
using Leverage.Hostile.Tests.Generated;
using Leverage.Reading;
using Leverage.Threads;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;

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
        "torque" => QuantityReader.Torque(text).NewtonMeters,
        "length" => QuantityReader.Length(text).Millimeters,
        "force" => QuantityReader.Force(text).Newtons,
        "mass" => QuantityReader.Mass(text, 3000).Kilograms,
        "stress" => QuantityReader.Stress(text).Megapascals,
        "angle" => QuantityReader.Angle(text, 80).Degrees,
        "share" => QuantityReader.Share(text),
        "number" => QuantityReader.Number(text, 0.02, 1),
        "warming" => QuantityReader.Warming(text).Kelvins,
        "tube" => TubeReader.Read(text).Length.Millimeters,
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

    private static Dictionary<string, string> Beside(HostileInput input) =>
        input.Beside is { } text ? new(StringComparer.Ordinal) { [HostileInput.BesideName] = text } : [];
}
