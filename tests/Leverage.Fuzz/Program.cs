using System.Text;
using Leverage.Reading;
using Leverage.Threads;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;
using SharpFuzz;

namespace Leverage.Fuzz;

/// <summary>
/// The readers under a coverage-guided fuzzer: <c>tests/fuzz.sh</c> instruments the libraries and runs it. A refusal is an
/// answer; anything else that is thrown is a finding.
/// </summary>
internal static class Program
{
    private const string Job = "title = \"x\"\nfastener_list = \"list.csv\"\n[vehicle]\nmass = \"1450kg\"\n";

    internal static int Main(string[] args)
    {
        Action<string>? read = args is [var name] ? Reader(name) : null;
        if (read is null)
        {
            Console.Error.WriteLine("Name a reader: quantity, thread, chest, job or list.");
            return 2;
        }

        Fuzzer.OutOfProcess.Run(stream => Try(read, stream));
        return 0;
    }

    private static Action<string>? Reader(string name) => name switch
    {
        "quantity" => Quantity,
        "thread" => text => ThreadCatalog.Named(text),
        "chest" => text => ToolChest.Parse("chest.toml", text),
        "job" => text => JobReader.Parse("job.toml", text, new Dictionary<string, string>(StringComparer.Ordinal)),
        "list" => text => JobReader.Parse("job.toml", Job, new Dictionary<string, string>(StringComparer.Ordinal) { ["list.csv"] = text }),
        _ => null,
    };

    /// <summary>The first letter says which quantity: all readers share their way through the text.</summary>
    private static void Quantity(string text)
    {
        string rest = text.Length > 0 ? text[1..] : "";
        _ = (text.Length > 0 ? text[0] % 8 : 0) switch
        {
            0 => QuantityReader.Torque(rest).NewtonMeters,
            1 => QuantityReader.Length(rest).Millimeters,
            2 => QuantityReader.Force(rest).Newtons,
            3 => QuantityReader.Mass(rest).Kilograms,
            4 => QuantityReader.Stress(rest).Megapascals,
            5 => QuantityReader.TemperatureRise(rest).Kelvins,
            6 => QuantityReader.Share(rest),
            _ => TubeReader.Read(rest).Length.Millimeters,
        } is var value && double.IsFinite(value) && value > 0 ? value : throw new InvalidOperationException("no finite number above 0");
    }

    private static void Try(Action<string> read, Stream stream)
    {
        using var reader = new StreamReader(stream, Encoding.UTF8);
        try
        {
            read(reader.ReadToEnd());
        }
        catch (InputException)
        {
            // Refused, as it may be.
        }
    }
}
