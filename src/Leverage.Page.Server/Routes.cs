using System.Security.Cryptography;
using System.Text;

namespace Leverage.Page.Server;

/// <summary>Hands out the files there are; everything else is not here. No question is answered and no body is read.</summary>
internal sealed class Routes(PageOptions options, IReadOnlyDictionary<string, PageFile> files)
{
    private readonly byte[] _base = Encoding.ASCII.GetBytes(options.Base);

    /// <summary>Answers a request.</summary>
    internal Task Answer(HttpContext context)
    {
        Guard.Headers(context.Response);
        if (!Guard.IsOurs(context.Request.Host, options.Lan))
        {
            return Refuse(context, StatusCodes.Status421MisdirectedRequest, "This page is not served under that name.\n");
        }

        bool reads = HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method);
        return reads && Inside(context.Request.Path.Value ?? "") is { } path && files.TryGetValue(path, out PageFile? file)
            ? Give(context, file)
            : Refuse(context, StatusCodes.Status404NotFound, "There is nothing here.\n");
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

    private static Task Refuse(HttpContext context, int status, string line)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.Body.WriteAsync(Encoding.UTF8.GetBytes(line)).AsTask();
    }

    private static Task Give(HttpContext context, PageFile file)
    {
        HttpResponse response = context.Response;
        response.Headers.ETag = file.Tag;
        response.Headers.CacheControl = "no-cache";
        response.Headers.Vary = "Accept-Encoding";
        if (context.Request.Headers.IfNoneMatch == file.Tag)
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        string accepted = context.Request.Headers.AcceptEncoding.ToString();
        var (bytes, packed) = accepted.Contains("br", StringComparison.Ordinal) && file.Brotli is { } brotli ? (brotli, "br")
            : accepted.Contains("gzip", StringComparison.Ordinal) && file.Gzip is { } gzip ? (gzip, "gzip")
            : (file.Bytes, null);
        response.ContentType = file.Type;
        response.ContentLength = bytes.Length;
        if (context.Request.Path.Value!.EndsWith($"/{PageFile.SingleFile}", StringComparison.Ordinal))
        {
            response.Headers.ContentDisposition = $"attachment; filename={PageFile.SingleFile}";
        }

        if (packed is not null)
        {
            response.Headers.ContentEncoding = packed;
        }

        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }
}
