using Leverage.Assessments;
using Leverage.Levers;

namespace Leverage.Wording;

/// <summary>The cautions that fit a set-up; the maker's manual always comes first.</summary>
internal static class Cautions
{
    /// <summary>The cautions of an assessment.</summary>
    internal static string Of(LooseningAssessment assessment)
    {
        List<string> parts = ["glasses on"];
        Stance stance = assessment.Setup.Hands.Stance;
        bool under = stance.Posture == Posture.Lying;
        if (under || assessment.Stands is not null)
        {
            parts.Add("sound stands, never under a vehicle on a jack");
        }
        else if (assessment.Setup.Place is null or { TurnsWheel: true })
        {
            parts.Add("wheels chocked, never under a vehicle on a jack");
        }

        parts.Add(Braced(stance));
        if (assessment.Heat is not null)
        {
            parts.Add("no flame near fuel, penetrant, brake hoses or a tyre");
        }

        if (assessment.Tube is not null)
        {
            parts.Add("no bouncing");
        }

        parts.Add("the maker's manual first");
        return string.Join("; ", parts);
    }

    /// <summary>How to stand, by the way the hands push.</summary>
    internal static string Braced(Stance stance) => (stance.Posture, stance.Push) switch
    {
        (Posture.Lying, _) => "back flat, face clear of bar and nut",
        (Posture.Kneeling, _) => "knees apart, face out of the arc",
        (_, Push.Down) => "one foot back, face out of the arc",
        (_, Push.Up) => "straight back, lift with the legs",
        _ => "a foot braced, face out of the arc",
    };
}
