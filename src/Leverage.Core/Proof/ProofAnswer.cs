using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Tables;
using Leverage.Wording;

namespace Leverage.Proof;

/// <summary>How many rows stand on what.</summary>
public sealed record ProofCounts(int Published, int Engine, int Derived, int Memory);

/// <summary>One row worked out again.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Formula">The formula.</param>
/// <param name="Printed">The number as printed.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Value">What the formula gives, in that unit.</param>
/// <param name="DeviationPercent">Formula over print, less 1, in percent.</param>
/// <param name="Tolerance">How far it may stand from the print, in that unit.</param>
/// <param name="Holds">Whether it does.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Status">published, engine, derived or memory.</param>
public sealed record CheckAnswer(
    string Id, string Formula, double Printed, string Unit, double Value, double DeviationPercent, double Tolerance, bool Holds,
    string Source, string Status)
{
    internal static CheckAnswer Of(CheckOutcome outcome) => new(
        outcome.Row.Id,
        outcome.Row.Formula.Name,
        outcome.Printed,
        outcome.Row.Unit,
        outcome.Value,
        outcome.DeviationPercent,
        outcome.Row.Tolerance,
        outcome.Holds,
        outcome.Row.Source,
        outcome.Row.Status.Word());
}

/// <summary>One topic; <c>checks</c> is there with <c>--all</c> only.</summary>
public sealed record TopicAnswer(
    string Topic, string Title, int Rows, ProofCounts Counts, bool Holds, CheckAnswer Worst, IReadOnlyList<string> Sources)
{
    /// <summary>Every row; absent unless asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<CheckAnswer>? Checks { get; init; }
}

/// <summary>Published rows that do not agree for one reason, and by how much.</summary>
public sealed record DisagreementAnswer(string Formula, int Rows, double LeastPercent, double MostPercent, string Reason);

/// <summary>A situation a mechanic would agree on, asked of the program.</summary>
public sealed record SituationAnswer(
    string Key, string Arguments, string Verdict, bool Agrees, IReadOnlyList<string> Faults, string Why);

/// <summary>The answer to "do the published checks hold on this machine", as a script reads it.</summary>
public sealed record ProofAnswer(
    bool Holds,
    int Rows,
    int Failed,
    ProofCounts Counts,
    IReadOnlyList<TopicAnswer> Topics,
    IReadOnlyList<DisagreementAnswer> KnownDisagreements,
    IReadOnlyList<EvidenceAnswer> Evidence,
    IReadOnlyList<SituationAnswer> Situations)
{
    /// <summary>The answer of a report.</summary>
    /// <param name="report">The report.</param>
    /// <param name="all">Whether every row is wanted.</param>
    /// <returns>The answer.</returns>
    public static ProofAnswer Of(ProofReport report, bool all)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new ProofAnswer(
            report.Holds,
            report.Rows,
            report.Failed,
            CountsOf(report.Count),
            [.. report.Topics.Select(topic => Topic(topic, all))],
            [.. report.Disagreements.Select(d => new DisagreementAnswer(
                d.Formula, d.Outcomes.Count, d.LeastPercent, d.MostPercent, d.Reason))],
            [.. report.Evidence.Select(EvidenceAnswer.Of)],
            [.. report.Situations.Select(one => new SituationAnswer(
                one.Situation.Key, one.Situation.Arguments, one.Verdict, one.Agrees, one.Faults, one.Situation.Why))]);
    }

    /// <summary>The answer as JSON, fields in camel case.</summary>
    /// <returns>Indented JSON.</returns>
    public string ToJson() => JsonSerializer.Serialize(this, ProofJson.Shared.ProofAnswer);

    private static TopicAnswer Topic(TopicProof topic, bool all) => new(
        topic.Topic, topic.Title, topic.Outcomes.Count, CountsOf(topic.Count), topic.Holds, CheckAnswer.Of(topic.Worst), [.. topic.Sources])
    {
        Checks = all ? [.. topic.Outcomes.Select(CheckAnswer.Of)] : null,
    };

    private static ProofCounts CountsOf(Func<ValueStatus, int> count) => new(
        count(ValueStatus.Published), count(ValueStatus.Engine), count(ValueStatus.Derived), count(ValueStatus.Memory));
}

/// <summary>Writes the answer as JSON, laid out as every answer.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(ProofAnswer))]
public sealed partial class ProofJson : JsonSerializerContext
{
    /// <summary>The writer.</summary>
    public static ProofJson Shared { get; } = new(AnswerJson.Layout());
}
