using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Leverage.Wording;

/// <summary>
/// Writes answers as JSON: camelCase, indented, the same bytes for the same answer everywhere. One line here for each
/// kind of answer; the serialiser is generated, so nothing is reflected over.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(CheckingAnswer))]
[JsonSerializable(typeof(LooseningAnswer))]
[JsonSerializable(typeof(SlipAnswer))]
[JsonSerializable(typeof(TighteningAnswer))]
public sealed partial class AnswerJson : JsonSerializerContext
{
    /// <summary>The writer every answer goes through.</summary>
    public static AnswerJson Shared { get; } = new(Layout());

    /// <summary>The layout of every answer; options serve one context each.</summary>
    internal static JsonSerializerOptions Layout() => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };
}
