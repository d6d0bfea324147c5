using System.Runtime.InteropServices.JavaScript;
using Leverage.Page.Answering;

namespace Leverage.Page;

/// <summary>What the page's scripts may call: text in, JSON out, a refusal as JSON too.</summary>
internal static partial class Door
{
    /// <summary>Will it come, is it safe, what next: the answer to a query.</summary>
    [JSExport]
    internal static string Loosen(string query) => Replies.Loosen(query);

    /// <summary>What is in view of it while a finger drags: the verdict's line, the side view, the chart where that is asked for.</summary>
    [JSExport]
    internal static string Sketch(string query, bool chart) => Replies.Sketch(query, chart);

    /// <summary>What to set, and what preload that makes.</summary>
    [JSExport]
    internal static string Tighten(string query) => Replies.Tighten(query);

    /// <summary>Whether a quoted torque is believable.</summary>
    [JSExport]
    internal static string Check(string query) => Replies.Check(query);

    /// <summary>Rows of a table that hold every word searched for.</summary>
    [JSExport]
    internal static string Table(string name, string search) => Replies.Table(name, search);

    /// <summary>Pieces of a chest or a job, each with the fields that picking it writes.</summary>
    [JSExport]
    internal static string Open(string files) => Replies.Open(files);

    /// <summary>The best set-up out of a chest.</summary>
    [JSExport]
    internal static string Pick(string chest, string query) => Replies.Pick(chest, query);

    /// <summary>The whole job in its order, with its sheet.</summary>
    [JSExport]
    internal static string Job(string files, string query) => Replies.Job(files, query);

    /// <summary>The files of a job with something that happened written in.</summary>
    [JSExport]
    internal static string Mark(string files, string mark) => Replies.Mark(files, mark);

    /// <summary>The lesson with the pupil's own numbers.</summary>
    [JSExport]
    internal static string Lesson(string query) => Replies.Lesson(query);

    /// <summary>A QR code as rows of dark modules.</summary>
    [JSExport]
    internal static string Code(string text) => Replies.Code(text);

    /// <summary>A chest and a job to start from.</summary>
    [JSExport]
    internal static string Starters() => Replies.Starters();
}
