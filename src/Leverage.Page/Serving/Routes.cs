using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Leverage.Page.Answering;
using Leverage.Page.Asking;
using Leverage.Page.Lesson;
using Leverage.Page.Opening;
using Leverage.Reading;

namespace Leverage.Page.Serving;

/// <summary>Which path gets which answer.</summary>
internal sealed class Routes(PageOptions options)
{
    private readonly byte[] _base = Encoding.ASCII.GetBytes(options.Base);

    /// <summary>Answers a request.</summary>
    internal Task Answer(HttpContext context)
    {
        if (!Guard.IsOurs(context.Request.Host, options.Lan))
        {
            return Refusals.Write(context, StatusCodes.Status421MisdirectedRequest, "this page is not served under that name.", null);
        }

        if (Inside(context.Request.Path.Value ?? "") is not { } path)
        {
            return Refusals.Write(context, StatusCodes.Status404NotFound, "there is nothing here.", null);
        }

        return (context.Request.Method, path) switch
        {
            ("GET", "/loosen") => Json(context, Reply.Bytes(Said.Of(context.Request.Query))),
            ("GET", "/lesson-steps") => Json(context, LessonAnswer.Of(Said.Of(context.Request.Query))),
            ("GET", "/choices") => Json(context, Choices.Json),
            ("POST", "/open") => Open(context),
            ("GET" or "HEAD", _) when PageFile.All.TryGetValue(path, out PageFile? file) => File(context, file),
            _ => Refusals.Write(context, StatusCodes.Status404NotFound, "there is nothing here.", null),
        };
    }

    /// <summary>The path behind the code, or null without the right code; the comparison takes as long for any code.</summary>
    private string? Inside(string path)
    {
        if (_base.Length == 0)
        {
            return path;
        }

        byte[] asked = Encoding.UTF8.GetBytes(path);
        bool right = asked.Length > _base.Length && asked[_base.Length] == (byte)'/'
            && CryptographicOperations.FixedTimeEquals(asked.AsSpan(0, _base.Length), _base);
        return right ? path[options.Base.Length..] : null;
    }

    private static async Task Open(HttpContext context)
    {
        OpenedText[]? texts;
        try
        {
            texts = await JsonSerializer.DeserializeAsync(context.Request.Body, PageJson.Shared.OpenedTextArray, context.RequestAborted);
        }
        catch (JsonException)
        {
            throw new InputException("file", "cannot be read: the page sends files as text.");
        }

        await Json(context, OpenedFile.Json(texts));
    }

    private static Task Json(HttpContext context, byte[] json)
    {
        context.Response.ContentType = "application/json; charset=utf-8";
        context.Response.ContentLength = json.Length;
        return context.Response.Body.WriteAsync(json).AsTask();
    }

    private static Task File(HttpContext context, PageFile file)
    {
        context.Response.Headers.ETag = file.Tag;
        context.Response.Headers.CacheControl = "no-cache";
        if (context.Request.Headers.IfNoneMatch == file.Tag)
        {
            context.Response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        context.Response.ContentType = file.Type;
        context.Response.ContentLength = file.Bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(file.Bytes).AsTask();
    }
}
