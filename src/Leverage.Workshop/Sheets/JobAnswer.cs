using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Wording;

namespace Leverage.Workshop.Sheets;

/// <summary>A task in the order of work.</summary>
public sealed record TaskAnswer(
    int Number,
    string Task,
    IReadOnlyList<string> Needs,
    IReadOnlyList<string> Before,
    IReadOnlyList<string> Ends,
    IReadOnlyList<string> Gives,
    IReadOnlyList<string> Loosens,
    IReadOnlyList<string> TakesOff,
    string? Photograph,
    string? Note,
    string? MovedBecause);

/// <summary>How one kind of fastener is broken loose; set-up and outcomes are absent where the chest has no tool for it.</summary>
public sealed record FastenerLooseningAnswer(
    string Fastener,
    int Count,
    int? Step,
    TorqueSpread Breakaway,
    IReadOnlyList<string>? SetUp,
    string? Person,
    string? Stance,
    double? ReachMm,
    double? OverlapMm,
    OutcomeAnswer? Outcomes,
    HoldAnswer? Hold,
    IReadOnlyList<string> HoldsNothing,
    string Verdict,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<MoveAnswer> Moves,
    IReadOnlyList<string> Watch,
    double? HeldNm,
    IReadOnlyList<double> LikeCameLooseNm,
    string? Note,
    IReadOnlyList<string> Assumed);

/// <summary>How one kind of fastener goes back.</summary>
public sealed record FastenerRefitAnswer(
    string Fastener,
    int Count,
    double TorqueNm,
    double? ThenDeg,
    string From,
    string? Lubricant,
    IReadOnlyList<double> StagesNm,
    IReadOnlyList<int> Order,
    string? Believable,
    RangeAnswer? YieldShare,
    string? Wrench,
    double? SettingNm,
    double? ScatterNm,
    double? HangKg,
    double? HangAtMm,
    string? NewPart,
    string? RetorqueAfter,
    string? Note);

/// <summary>A fastener in a step of the refit: "full" or "snug".</summary>
public sealed record RefitFitAnswer(string Fastener, string Stage);

/// <summary>A step of the refit; it puts back a task, or is one of its own.</summary>
public sealed record RefitStepAnswer(int Number, string Title, string? PutsBack, IReadOnlyList<RefitFitAnswer> Fasteners, IReadOnlyList<string> Then);

/// <summary>What to see to before the work begins.</summary>
public sealed record PreparationAnswer(string What, string Words);

/// <summary>New parts of one kind.</summary>
public sealed record PartAnswer(string Part, int Count, IReadOnlyList<string> For);

/// <summary>The answer of <c>leverage job --json</c>; the unit stands at the end of each name, shares are 0 to 1.</summary>
public sealed record JobAnswer(
    string Title,
    IReadOnlyList<string> AtStart,
    IReadOnlyList<TaskAnswer> Order,
    IReadOnlyList<FastenerLooseningAnswer> Loosening,
    IReadOnlyList<FastenerRefitAnswer> Refit,
    IReadOnlyList<RefitStepAnswer> RefitOrder,
    IReadOnlyList<PartAnswer> Parts,
    IReadOnlyList<PreparationAnswer> Before,
    IReadOnlyList<string> Watch,
    string Verdict)
{
    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <returns>Indented JSON, the same bytes for the same job everywhere.</returns>
    public string ToJson() => JsonSerializer.Serialize(this, JobJson.Shared.JobAnswer);
}

/// <summary>JSON of the job's answer, written without reflection.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(JobAnswer))]
internal sealed partial class JobJson : JsonSerializerContext
{
    /// <summary>The writer the answer goes through.</summary>
    internal static JobJson Shared { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
