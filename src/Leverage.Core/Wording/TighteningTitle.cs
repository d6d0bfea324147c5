using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>The case in one line: what is tightened, and how far.</summary>
public static class TighteningTitle
{
    /// <summary>The title of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>One line.</returns>
    public static string Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return $"Tighten {assessment.Setup.Thread.Printed}, grade {assessment.Grade.Name}, "
            + $"to {UnitStyle.Percent(assessment.Setup.YieldShare)} of yield";
    }
}
