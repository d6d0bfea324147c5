using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The moves of an answer, in order, with the chances by then in 100.</summary>
internal static class MoveTable
{
    private const int MarkWidth = 8;
    private const int ComesWidth = 15;
    private const int BreaksWidth = 8;
    private const int Room = TextPage.Width - 2 - ComesWidth - BreaksWidth;

    /// <summary>Lays steps out: each with its number, the pull as asked as "now", what comes before that as "first", what destroys the nut as "last".</summary>
    internal static void Write(TextPage page, IReadOnlyList<LadderStep> steps, UnitStyle units)
    {
        if (steps.Count == 0)
        {
            return;
        }

        page.Line("In this order".PadRight(Room) + "loose by then".PadLeft(ComesWidth) + "breaks".PadLeft(BreaksWidth));
        IReadOnlyList<string> marks = MoveWords.Marks(steps);
        for (int i = 0; i < steps.Count; i++)
        {
            string start = $"  {marks[i]}".PadRight(MarkWidth);
            foreach (string words in UnitGlue.Lines(MoveWords.Of(steps[i], units), Room - MarkWidth))
            {
                page.Line((start + words).PadRight(Room) + (start.TrimStart().Length > 0 ? Chances(steps[i]) : ""));
                start = new string(' ', MarkWidth);
            }
        }
    }

    private static string Chances(LadderStep step) => step is { ComesLooseBy: { } comes, BreaksBy: { } breaks }
        ? Hundreds(comes).PadLeft(ComesWidth) + Hundreds(breaks).PadLeft(BreaksWidth)
        : step.Move is { HasNoFigure: true } or { Effect: MoveEffect.Tool } ? "no figure".PadLeft(ComesWidth) : "";

    private static string Hundreds(double share) => Math.Round(100 * share).ToString("0", CultureInfo.InvariantCulture);
}
