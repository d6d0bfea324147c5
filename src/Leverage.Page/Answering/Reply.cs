using System.Text.Json;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Page.Asking;

namespace Leverage.Page.Answering;

/// <summary>From what an address says to everything the page shows: the command line's own path, then its words and charts.</summary>
internal static class Reply
{
    /// <summary>The answer as JSON.</summary>
    /// <exception cref="Reading.InputException">The address says something that cannot be.</exception>
    internal static byte[] Bytes(Said said) => JsonSerializer.SerializeToUtf8Bytes(Of(said), PageJson.Shared.PageAnswer);

    /// <summary>The answer.</summary>
    internal static PageAnswer Of(Said said)
    {
        LooseningAssessment assessment = Assess(said);
        return new PageAnswer(
            LooseningAnswers.Of(assessment, said.Units),
            AnswerWords.Of(assessment, said.Units),
            Drawings(assessment, said),
            Sliders.Of(assessment, said.Units),
            CommandText.Of(said));
    }

    /// <summary>The assessment of what an address says.</summary>
    internal static LooseningAssessment Assess(Said said) => Loosening.Assess(Address.Read(said));

    /// <summary>The drawings; the case itself stands above them on the page.</summary>
    private static PageDrawings Drawings(LooseningAssessment assessment, Said said) => new(
        Inline.Svg(WindowChart.Draw(WindowMaker.Of(assessment), "Force against length", said.Units, said.Drawing.Window), "w"),
        LeverSketcher.Of(assessment) is { } sketch
            ? Inline.Svg(SideView.Draw(sketch, "From the side", said.Units, said.Drawing.Side), "s")
            : null);
}
