using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The moves of an answer, in order, with the chances by then.</summary>
internal static class MoveTable
{
    /// <summary>Lays the moves out.</summary>
    internal static void Write(Page page, LooseningAssessment assessment, UnitStyle units)
    {
    }
}
