using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The moves of an answer, in order, with the chances by then.</summary>
internal static class MoveTable
{
    /// <summary>Lays steps out: each with its number, the pull as asked as "now", what comes before that as "first", what destroys the nut as "last".</summary>
    internal static void Write(Page page, IReadOnlyList<LadderStep> steps, UnitStyle units)
    {
        if (steps.Count == 0)
        {
            return;
        }

        page.StepsHead("In this order", "loose by then", "breaks");
        IReadOnlyList<string> marks = MoveWords.Marks(steps);
        for (int i = 0; i < steps.Count; i++)
        {
            page.Step(marks[i], MoveWords.Of(steps[i], units), steps[i].ComesLooseBy, steps[i].BreaksBy, steps[i].Move is { HasNoFigure: true } or { Effect: MoveEffect.Tool });
        }
    }
}
