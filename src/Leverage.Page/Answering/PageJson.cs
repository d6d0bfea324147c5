using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Page.Lesson;
using Leverage.Page.Looking;
using Leverage.Page.Opening;
using Leverage.Workshop.Jobs;

namespace Leverage.Page.Answering;

/// <summary>JSON of the answers, written straight off: nothing is looked up about their kinds, which took a seventh of a start.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Serialization, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PageAnswer))]
[JsonSerializable(typeof(SketchAnswer))]
internal sealed partial class AnswerPageJson : JsonSerializerContext;

/// <summary>JSON of what else the page is told, written without reflection.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(Refused))]
[JsonSerializable(typeof(OpenedPieces))]
[JsonSerializable(typeof(OpenedText[]))]
[JsonSerializable(typeof(LessonAnswer))]
[JsonSerializable(typeof(TableRows))]
[JsonSerializable(typeof(JobReply))]
[JsonSerializable(typeof(JobMark))]
[JsonSerializable(typeof(PickReply))]
[JsonSerializable(typeof(SetReply))]
[JsonSerializable(typeof(Starter))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class PageJson : JsonSerializerContext
{
    /// <summary>The writer every answer goes through.</summary>
    internal static PageJson Shared { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
