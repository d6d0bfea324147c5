using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>The case in one line: what is tightened; no torque stands before the one asked for.</summary>
public static class TighteningTitle
{
    /// <summary>The title of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>One line.</returns>
    public static string Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return $"Tighten {assessment.Setup.Thread.Printed}, grade {assessment.Grade.Name}";
    }
}
