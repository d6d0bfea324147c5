using System.Text.Json;
using Leverage.Hostile.Tests.Generated;
using Leverage.Page.Answering;

namespace Leverage.Hostile.Tests.Running;

/// <summary>The page's own code, without a browser: JSON of an answer, or of a refusal of one line that is no failure.</summary>
internal static class PageTrial
{
    internal static string? Broken(HostileInput input)
    {
        string query = input.Words[1];
        string reply = input.Words[0] switch
        {
            "loosen" => Replies.Loosen(query),
            "sketch" => Replies.Sketch(query, chart: true),
            "lesson" => Replies.Lesson(query),
            "tighten" => Replies.Tighten(query),
            "check" => Replies.Check(query),
            "open" => Replies.Open(input.Text ?? ""),
            "job" => Replies.Job(input.Text ?? "", ""),
            "mark" => Replies.Mark(input.Text ?? "", query),
            "pick" => Replies.Pick(input.Text ?? "", query),
            "code" => Replies.Code(query),
            _ => Replies.Table(query, input.Text ?? ""),
        };
        return Manners.BrokenJson(reply) ?? Refusal(reply);
    }

    private static string? Refusal(string reply)
    {
        using JsonDocument parsed = JsonDocument.Parse(reply);
        return parsed.RootElement.ValueKind != JsonValueKind.Object || !parsed.RootElement.TryGetProperty("refusal", out JsonElement refusal) ? null
            : refusal.GetProperty("failed").GetBoolean() ? refusal.GetProperty("text").GetString()
            : Manners.BrokenLine(refusal.GetProperty("text").GetString() + "\n");
    }
}
