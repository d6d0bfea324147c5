using Leverage.Assessments;
using Leverage.Levers;

namespace Leverage.Wording;

/// <summary>The cautions that matter for a set-up; the maker's manual always comes first.</summary>
public static class Cautions
{
    /// <summary>The cautions of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>One line.</returns>
    public static string Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var parts = new List<string> { "glasses on", "on its wheels, chocked, never under it on a jack" };
        parts.Add(assessment.Setup.Hands.Stance.Push == Push.Down
            ? "one foot back, face out of the arc"
            : "brace a foot, open palm, face out of the arc");
        if (assessment.Tube is not null)
        {
            parts.Add("no bouncing");
        }

        parts.Add("pull rather than push");
        parts.Add("the maker's manual and local rules first");
        return string.Join("; ", parts) + ".";
    }
}
