using System.Text;
using System.Text.Json;
using Leverage.Hostile.Tests.Generated;
using Leverage.Page.Serving;
using Microsoft.AspNetCore.Http;

namespace Leverage.Hostile.Tests.Running;

/// <summary>The page's own handler, without a socket: an answer, or a refusal of one line.</summary>
internal static class PageTrial
{
    private static readonly Routes Routes = new(new PageOptions(0, null));

    internal static string? Broken(HostileInput input)
    {
        DefaultHttpContext context = Request(input);
        using var body = new MemoryStream();
        context.Response.Body = body;
        Refusals.Around(context, Routes.Answer).GetAwaiter().GetResult();
        string text = Encoding.UTF8.GetString(body.ToArray());
        int status = context.Response.StatusCode;
        return status is not (200 or 400 or 404 or 421) ? $"status {status.ToString(System.Globalization.CultureInfo.InvariantCulture)}: {text}"
            : context.Response.Headers.ContentSecurityPolicy.Count == 0 ? "no policy in the headers"
            : context.Response.ContentType?.StartsWith("application/json", StringComparison.Ordinal) != true ? null
            : Manners.BrokenJson(text) ?? (status == 200 ? null : Refusal(text));
    }

    private static string? Refusal(string text)
    {
        using JsonDocument parsed = JsonDocument.Parse(text);
        return Manners.BrokenLine(parsed.RootElement.GetProperty("error").GetString() + "\n");
    }

    private static DefaultHttpContext Request(HostileInput input)
    {
        var context = new DefaultHttpContext();
        HttpRequest request = context.Request;
        request.Method = input.Words[0];
        request.Scheme = "http";
        request.Host = new HostString("127.0.0.1", 8460);
        request.Path = new PathString(input.Words[1].StartsWith('/') ? input.Words[1] : $"/{input.Words[1]}");
        request.QueryString = new QueryString(input.Words[2].Length > 0 ? $"?{input.Words[2]}" : "");
        if (input.Text is { } text)
        {
            request.Body = new MemoryStream(Encoding.UTF8.GetBytes(text));
        }

        return context;
    }
}
