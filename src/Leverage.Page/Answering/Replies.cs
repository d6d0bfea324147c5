using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Leverage.Assessments;
using Leverage.Page.Asking;
using Leverage.Page.Lesson;
using Leverage.Page.Looking;
using Leverage.Page.Opening;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;

namespace Leverage.Page.Answering;

/// <summary>From what the page says to JSON of the answer; a refusal is JSON too, and no exception leaves here.</summary>
internal static class Replies
{
    /// <summary>The answer to a loosening.</summary>
    internal static string Loosen(string query) => Guarded(() =>
    {
        var asked = Query.Of(query);
        return Json(PageAnswers.Of(asked, Loosening.Assess(asked.Loosening())), AnswerPageJson.Default.PageAnswer);
    });

    /// <summary>The verdict's line and the pictures in view, for the frames of a drag.</summary>
    internal static string Sketch(string query, bool chart) => Guarded(() =>
    {
        var asked = Query.Of(query);
        return Json(PageAnswers.Sketch(asked, LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(asked.Loosening())), chart), AnswerPageJson.Default.SketchAnswer);
    });

    /// <summary>What to set.</summary>
    internal static string Tighten(string query) => Guarded(() => SetReplies.Set(query));

    /// <summary>Whether a quoted torque is believable.</summary>
    internal static string Check(string query) => Guarded(() => SetReplies.Check(query));

    /// <summary>Rows of a table.</summary>
    internal static string Table(string name, string search) => Guarded(() => Json(TableLook.Up(name, search), PageJson.Shared.TableRows));

    /// <summary>Pieces of opened files.</summary>
    internal static string Open(string files) => Guarded(() => Json(OpenedFile.Read(Texts(files)), PageJson.Shared.OpenedPieces));

    /// <summary>The best set-up of a chest.</summary>
    internal static string Pick(string chest, string query) => Guarded(() => Json(Picking.Of(chest, Query.Of(query)), PageJson.Shared.PickReply));

    /// <summary>The job in its order.</summary>
    internal static string Job(string files, string query) => Guarded(() =>
        Json(JobReply.Of(OpenedFile.Named(Texts(files)), Query.Of(query).Units), PageJson.Shared.JobReply));

    /// <summary>The files of a job with something that happened written in.</summary>
    internal static string Mark(string files, string mark) => Guarded(() => Json(
        JobReply.Marked(OpenedFile.Named(Texts(files)), Read(mark, PageJson.Shared.JobMark)), PageJson.Shared.OpenedTextArray));

    /// <summary>The lesson.</summary>
    internal static string Lesson(string query) => Guarded(() => Json(LessonText.Of(Query.Of(query)), PageJson.Shared.LessonAnswer));

    /// <summary>A QR code.</summary>
    internal static string Code(string text) => Guarded(() => Json(ScanCode.Rows(text), PageJson.Shared.StringArray));

    /// <summary>A chest and a job to start from.</summary>
    internal static string Starters() => Guarded(() => Json(new Starter(StarterChest.Text(), StarterJob.Text()), PageJson.Shared.Starter));

    private static OpenedText[] Texts(string files) => Read(files, PageJson.Shared.OpenedTextArray);

    private static T Read<T>(string json, JsonTypeInfo<T> type)
    {
        try
        {
            return JsonSerializer.Deserialize(json, type) ?? throw new JsonException();
        }
        catch (JsonException)
        {
            throw new InputException("file", "cannot be read: the page hands files over as text.");
        }
    }

    private static string Json<T>(T value, JsonTypeInfo<T> type) => JsonSerializer.Serialize(value, type);

    private static string Guarded(Func<string> reply)
    {
        try
        {
            return reply();
        }
        catch (InputException e)
        {
            return Json(new Refused(new Refusal(e.IsPlaced ? "file" : e.Subject, Words(e), e.Lines)), PageJson.Shared.Refused);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return Json(new Refused(new Refusal(null, $"The program failed at this ({e.GetType().Name}). Change something and try again.", [], true)), PageJson.Shared.Refused);
        }
    }

    /// <summary>The refusal in the page's dress: the field by its label, as is each field of a cure.</summary>
    private static string Words(InputException e)
    {
        string message = e.MessageIn(cure => $"{FieldWords.LabelOf(cure.Field)} {cure.Example}".TrimEnd());
        return e.Subject is null ? Begun(message) : e.IsPlaced ? $"{e.Subject}: {message}" : $"{Begun(FieldWords.LabelOf(e.Subject))}: {message}";
    }

    private static string Begun(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";
}

/// <summary>A refusal: the field it is about, if it is about one, and its line.</summary>
internal sealed record Refusal(string? Field, string Text, IReadOnlyList<string> Lines, bool Failed = false);

/// <summary>An answer that is a refusal.</summary>
internal sealed record Refused(Refusal Refusal);

/// <summary>Files to start from.</summary>
internal sealed record Starter(string Chest, string Job);
