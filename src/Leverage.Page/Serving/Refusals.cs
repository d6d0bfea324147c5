using System.Text.Json;
using Leverage.Page.Answering;
using Leverage.Reading;

namespace Leverage.Page.Serving;

/// <summary>Refusals as JSON, one line each; what went wrong inside stays inside.</summary>
internal static class Refusals
{
    /// <summary>Runs what follows and turns every exception into a refusal.</summary>
    internal static async Task Around(HttpContext context, RequestDelegate next)
    {
        Guard.Headers(context.Response);
        try
        {
            await next(context);
        }
        catch (InputException e)
        {
            await Write(context, StatusCodes.Status400BadRequest, e.Line, Field(e.Subject));
        }
        catch (BadHttpRequestException e)
        {
            string line = e.StatusCode == StatusCodes.Status413PayloadTooLarge
                ? $"the file is larger than {PageServer.MostBodyBytes / 1_000_000} MB. Is it the right one?"
                : "the request is not whole.";
            await Write(context, e.StatusCode, line, null);
        }
        catch (Exception e) when (e is not OutOfMemoryException && !context.RequestAborted.IsCancellationRequested)
        {
            // The reason is for the terminal of whoever runs the page; the browser learns only that it failed.
            await Console.Error.WriteLineAsync($"leverage-page: the program failed ({e.GetType().Name}): {e.Message.ReplaceLineEndings(" ")}");
            await Write(context, StatusCodes.Status500InternalServerError, "the program failed at this; the terminal it runs in says how.", null);
        }
    }

    /// <summary>The refusal of one who asks too often.</summary>
    internal static ValueTask TooMany(HttpContext context) =>
        new(Write(context, StatusCodes.Status429TooManyRequests, "too many requests at once. Wait a second.", null));

    /// <summary>Writes a refusal.</summary>
    internal static Task Write(HttpContext context, int status, string line, string? field)
    {
        if (context.Response.HasStarted)
        {
            return Task.CompletedTask;
        }

        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json; charset=utf-8";
        return context.Response.Body.WriteAsync(JsonSerializer.SerializeToUtf8Bytes(new Refusal(line, field), PageJson.Shared.Refusal)).AsTask();
    }

    /// <summary>The field a refusal is about: the subject, without dashes; a place in a file is about the file.</summary>
    private static string? Field(string? subject) => subject is null ? null
        : subject.Contains('(', StringComparison.Ordinal) ? "file"
        : subject.TrimStart('-');
}
