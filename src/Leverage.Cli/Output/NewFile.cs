using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Assessments;
using Leverage.Cli.Input;

namespace Leverage.Cli.Output;

/// <summary>A commented file to start from, written whole or not at all and never over another unless told to.</summary>
internal sealed class NewFile
{
    /// <summary>A file named by an option.</summary>
    internal NewFile(string option, string description) =>
        Option = new TextOption(option, "FILE", description);

    /// <summary>The option that names the file.</summary>
    internal TextOption Option { get; }

    /// <summary>Writes the file if it was asked for, and says so.</summary>
    /// <param name="parsed">What was given.</param>
    /// <param name="text">What to write.</param>
    /// <returns>The answer, or null where no file was asked for.</returns>
    internal CommandAnswer? Write(ParsedLine parsed, Func<string> text)
    {
        if (parsed.Text(Option) is not { } path)
        {
            return null;
        }

        WholeFile.Write(Option.Name, path, parsed.ForceWrite, stream => stream.Write(Encoding.UTF8.GetBytes(text())));
        return new CommandAnswer(
            Verdict.Go,
            () => JsonSerializer.Serialize(new WrittenAnswer(path), WrittenJson.Default.WrittenAnswer),
            page => page.Line($"Wrote {path}: every line is explained in it. Put your own figures in."));
    }
}

/// <summary>That a file was written.</summary>
/// <param name="Wrote">The file.</param>
internal sealed record WrittenAnswer(string Wrote);

/// <summary>JSON of it, written without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(WrittenAnswer))]
internal sealed partial class WrittenJson : JsonSerializerContext;
