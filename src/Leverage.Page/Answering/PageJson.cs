using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Page.Lesson;
using Leverage.Page.Looking;
using Leverage.Page.Opening;
using Leverage.Workshop.Jobs;

namespace Leverage.Page.Answering;

/// <summary>JSON of everything the page is told, written without reflection.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(PageAnswer))]
[JsonSerializable(typeof(SketchAnswer))]
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
