using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Proof;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Picking;
using Leverage.Workshop.Sheets;

namespace Leverage.Cli.About;

/// <summary>
/// <c>leverage --schema</c>: the JSON Schema of what a command answers with <c>--json</c>, made of the records the answers
/// are written from. <c>shared/schemas</c> holds them as approved.
/// </summary>
internal static class AnswerSchema
{
    private const string Dialect = "https://json-schema.org/draft/2020-12/schema";
    private static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly JsonSchemaExporterOptions Strict = new()
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = Closed,
    };

    private static readonly (string Command, Func<JsonTypeInfo[]> Answers)[] Known =
    [
        ("loosen", () => [AnswerJson.Shared.LooseningAnswer]),
        ("tighten", () => [AnswerJson.Shared.TighteningAnswer]),
        ("check", () => [AnswerJson.Shared.CheckingAnswer]),
        ("slip", () => [AnswerJson.Shared.SlipAnswer]),
        ("pick", () => [PickJson.Shared.PickAnswer, WrittenJson.Default.WrittenAnswer]),
        ("job", () => [JobJson.Shared.JobAnswer, WrittenJson.Default.WrittenAnswer]),
        ("table", () => [TableAnswersJson.Default.TableAnswerArray, TableAnswersJson.Default.TableNameArray]),
        ("prove", () => [ProofJson.Shared.ProofAnswer]),
    ];

    /// <summary>The commands that have one.</summary>
    internal static IEnumerable<string> Commands => Known.Select(known => known.Command);

    /// <summary>The option that names the command.</summary>
    internal static TextOption Option(Terminal terminal)
    {
        FieldKind<string> kind = Kinds.Choice([.. Commands.Concat(FileSchema.All.Select(file => file.Name)).Select(name => (name, name))]);
        return Printing.Option("--schema", kind, "JSON Schema of that command's --json, or of that file", name => terminal.Answers.Write(
            FileSchema.All.FirstOrDefault(file => file.Name == name).Of is { } file ? Text(file()) : Of(name)));
    }

    /// <summary>The schema of a command's answer.</summary>
    /// <param name="command">Its name.</param>
    internal static string Of(string command)
    {
        JsonNode[] answers =
            [.. Known.Single(known => known.Command == command).Answers().Select(type => JsonSchemaExporter.GetJsonSchemaAsNode(type, Strict))];
        var schema = new JsonObject { ["$schema"] = Dialect, ["title"] = $"The answer of leverage {command} --json" };
        if (answers.Length > 1)
        {
            schema["anyOf"] = new JsonArray([.. answers.Select((answer, i) => Moved(answer, $"#/anyOf/{i.ToString(CultureInfo.InvariantCulture)}"))]);
        }
        else
        {
            foreach (var (name, value) in answers[0].AsObject())
            {
                schema[name] = value?.DeepClone();
            }
        }

        return Text(schema);
    }

    /// <summary>A schema that stands within another: what points into itself points there.</summary>
    private static JsonNode? Moved(JsonNode? schema, string place) => schema switch
    {
        JsonObject node => new JsonObject(node.Select(field => KeyValuePair.Create(
            field.Key,
            field is { Key: "$ref", Value: JsonValue value } ? $"{place}{value.GetValue<string>()[1..]}" : Moved(field.Value, place)))),
        JsonArray list => new JsonArray([.. list.Select(item => Moved(item, place))]),
        _ => schema?.DeepClone(),
    };

    /// <summary>No field but those named; a cell of a table is a number, a text or nothing.</summary>
    private static JsonNode Closed(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (schema is JsonObject node && context.TypeInfo.Kind is JsonTypeInfoKind.Object or JsonTypeInfoKind.Dictionary)
        {
            node["additionalProperties"] = context.TypeInfo.Kind == JsonTypeInfoKind.Object
                ? false
                : new JsonObject { ["type"] = new JsonArray("number", "string", "null") };
        }

        return schema;
    }

    private static string Text(JsonObject schema)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            schema.WriteTo(json);
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
