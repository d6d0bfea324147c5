using Leverage.Assessments;
using Leverage.Levers;

namespace Leverage.Answers;

/// <summary>The cautions that matter for a set-up; the maker's manual always comes first.</summary>
public static class Cautions
{
    /// <summary>The cautions of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>One line.</returns>
    public static string Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var parts = new List<string> { "glasses on", "on its wheels and chocked, never under it on a jack" };
        parts.Add(assessment.Setup.Hands.Stance.Push == Push.Down
            ? "one foot back so that you do not fall with the bar"
            : "brace a foot, open palm, face out of the arc");
        if (assessment.Sleeve is not null)
        {
            parts.Add("no bouncing: it walks the sleeve off");
        }

        parts.Add("pull, don't push, where you can");
        parts.Add("the maker's manual and local rules come first");
        return string.Join("; ", parts) + ".";
    }
}
