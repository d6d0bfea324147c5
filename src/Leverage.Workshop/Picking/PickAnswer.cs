using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Wording;

namespace Leverage.Workshop.Picking;

/// <summary>What was tried.</summary>
public sealed record TriedAnswer(int ToolSets, int Setups, int Go, int Care, int Short, int NotJudged, int Stop);

/// <summary>A set of tools in its best use. Overlap is null with no tube, margin with no link that can be judged.</summary>
public sealed record SetUpAnswer(
    string Tool,
    IReadOnlyList<string> Adapters,
    string? Bar,
    string? Tube,
    double? OverlapMm,
    string Stance,
    double ReachMm,
    string Verdict,
    double ComesLoose,
    double StaysTight,
    double Breaks,
    double? Margin,
    string? WeakestLink,
    double ForceShare);

/// <summary>The answer to "which set-up of my own tools is best for this nut", as a script reads it.</summary>
public sealed record PickAnswer(
    double BookTorqueNm,
    TorqueSpread Breakaway,
    string? Person,
    TriedAnswer Tried,
    string Verdict,
    IReadOnlyList<SetUpAnswer> SetUps,
    IReadOnlyList<MoveAnswer> Moves,
    IReadOnlyList<string> Assumed)
{
    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <returns>Indented JSON.</returns>
    public string ToJson() => JsonSerializer.Serialize(this, PickJson.Shared.PickAnswer);
}

/// <summary>JSON of the picking answer, written without reflection.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(PickAnswer))]
internal sealed partial class PickJson : JsonSerializerContext
{
    /// <summary>The writer the answer goes through.</summary>
    internal static PickJson Shared { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
