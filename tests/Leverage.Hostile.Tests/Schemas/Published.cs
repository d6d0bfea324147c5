using System.Text.Json;
using Json.Schema;
using Leverage.Cli.About;

namespace Leverage.Hostile.Tests.Schemas;

/// <summary>The published schemas, and what they say of an answer.</summary>
internal static class Published
{
    private static readonly EvaluationOptions Listed = new() { OutputFormat = OutputFormat.List };

    private static readonly Dictionary<string, JsonSchema> All = AnswerSchema.Commands.ToDictionary(
        command => command, command => JsonSchema.FromText(File.ReadAllText(PathOf(command))), StringComparer.Ordinal);

    /// <summary>Where the approved schema of a command lies.</summary>
    internal static string PathOf(string command) => Path.Combine(AppContext.BaseDirectory, "shared", "schemas", $"{command}.schema.json");

    /// <summary>Whether there is one for a command.</summary>
    internal static bool Has(string command) => All.ContainsKey(command);

    /// <summary>What is wrong with an answer by the schema of its command; null for nothing.</summary>
    internal static string? Broken(string command, string answer)
    {
        using JsonDocument parsed = JsonDocument.Parse(answer);
        EvaluationResults results = All[command].Evaluate(parsed.RootElement, Listed);
        return results.IsValid ? null : $"not by the schema of {command}: {Words(results)}: {answer}";
    }

    private static string Words(EvaluationResults results) => string.Join("; ", (results.Details ?? [])
        .Where(detail => detail.Errors is not null)
        .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation.ToString()} {error.Value}")));
}
