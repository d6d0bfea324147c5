using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Page.Lesson;
using Leverage.Page.Opening;

namespace Leverage.Page.Answering;

/// <summary>JSON of everything the page is sent, written without reflection and safe to stand in a page.</summary>
[JsonSerializable(typeof(PageAnswer))]
[JsonSerializable(typeof(Refusal))]
[JsonSerializable(typeof(ChoiceLists))]
[JsonSerializable(typeof(OpenedPieces))]
[JsonSerializable(typeof(OpenedText[]))]
[JsonSerializable(typeof(LessonAnswer))]
internal sealed partial class PageJson : JsonSerializerContext
{
    /// <summary>The writer every answer goes through.</summary>
    internal static PageJson Shared { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.Create(System.Text.Unicode.UnicodeRanges.All),
    });
}
