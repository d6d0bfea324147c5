using System.Text.Json;
using Leverage.Page.Answering;
using Leverage.Page.Asking;

namespace Leverage.Page.Lesson;

/// <summary>One step of the lesson: words, a figure and a question with the answer of the learner's own numbers.</summary>
internal sealed record LessonStep(
    string Title, IReadOnlyList<string> Words, string Figure, string Question, string Unit, double Answer, double Within, string Worked);

/// <summary>The lesson for one set-up.</summary>
internal sealed record LessonAnswer(string Title, string Given, IReadOnlyList<LessonStep> Steps, string Cautions)
{
    /// <summary>The lesson as JSON.</summary>
    /// <exception cref="Reading.InputException">The set-up cannot be, or has no tube.</exception>
    internal static byte[] Of(Said said) => JsonSerializer.SerializeToUtf8Bytes(LessonText.Of(said), PageJson.Shared.LessonAnswer);
}
