using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Levers;

namespace Leverage.Wording;

/// <summary>The cautions that fit a set-up; the maker's manual always comes first.</summary>
internal static class Cautions
{
    /// <summary>The cautions of an assessment.</summary>
    internal static string Of(LooseningAssessment assessment)
    {
        List<string> parts = ["glasses on"];
        if (assessment.Setup.Place is null or { Turns: TurnsWith.Wheel })
        {
            parts.Add("wheels chocked, never under a vehicle on a jack");
        }

        parts.Add(Braced(assessment.Setup.Hands.Stance.Push));
        if (assessment.Tube is not null)
        {
            parts.Add("no bouncing");
        }

        parts.Add("the maker's manual first");
        return string.Join("; ", parts);
    }

    /// <summary>How to stand, by the way the hands push.</summary>
    internal static string Braced(Push push) => push switch
    {
        Push.Down => "one foot back, face out of the arc",
        Push.Up => "straight back, lift with the legs",
        _ => "a foot braced, face out of the arc",
    };
}
