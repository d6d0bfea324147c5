using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The moves of an answer, in order, with the chances by then.</summary>
internal static class MoveTable
{
    /// <summary>Lays steps out: each with its number, the pull as asked as "now", what destroys the nut as "last".</summary>
    internal static void Write(Page page, IReadOnlyList<LadderStep> steps, UnitStyle units)
    {
        if (steps.Count == 0)
        {
            return;
        }

        page.StepsHead("In this order", "loose by then", "breaks");
        for (int i = 0, number = 0; i < steps.Count; i++)
        {
            LadderStep step = steps[i];
            string mark = step.Key == "now" ? "now"
                : i == steps.Count - 1 ? "last"
                : (++number).ToString(CultureInfo.InvariantCulture);
            page.Step(mark, MoveWords.Of(step, units), step.ComesLooseBy, step.BreaksBy);
        }
    }
}
