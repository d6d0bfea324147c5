using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Page.Lesson;

/// <summary>The last three steps: the angle, the moment it lets go, what helps.</summary>
internal static class AngleSteps
{
    private const double WithinDeg = 1;
    private const double WithinMm = 25;

    /// <summary>Step 4: the angle decides.</summary>
    internal static LessonStep Angle(LessonNumbers n)
    {
        SlipAngles angles = n.Slip.Here.Checked;
        string tangent = UnitStyle.Fixed(angles.Tangent, 2);
        string tilt = LessonNumbers.Degrees(n.Slip.Here.TiltRad);
        return Step(
            "The angle decides, not the force",
            [
                "You push straight down. While the bar is level that is square to the tube. As the bar sinks, part of your push points along the tube, outward, and that part grows with the angle.",
                $"At {UnitStyle.Angle(n.Slip.Setup.PastSquare)} below level you pull {n.ForceText(n.Tube.OutwardN)} along the tube, and it holds {n.ForceText(n.Tube.HoldsN)}. "
                    + "Where the two are equal it starts to slide, however strong or weak you are.",
            ],
            "dial",
            $"Along over across may be {tangent} at most, counted from the tube's own square, and the tube hangs {tilt} below the bar. How many degrees below level may the bar go while the nut holds?",
            "degrees",
            double.RadiansToDegrees(angles.HeldRad),
            WithinDeg,
            $"The angle whose tangent is {tangent} is {LessonNumbers.Degrees(Math.Atan(angles.Tangent))}; less {tilt} leaves {LessonNumbers.Degrees(angles.HeldRad)}.");
    }

    /// <summary>Step 5: the jam falls with the torque.</summary>
    internal static LessonStep LettingGo(LessonNumbers n)
    {
        SlipAngles angles = n.Slip.Here.Checked;
        string share = UnitStyle.Percent(n.Slip.EndShare);
        string tangent = UnitStyle.Fixed(angles.Tangent, 2);
        return Step(
            "It comes off in the moment the nut lets go",
            [
                $"A nut that starts to turn needs less than one that sticks: here {share} of it is left at the end of your swing. The tube jams that much less, but your body still leans on the tube as before.",
                $"So an angle that was safe is safe no more. If something snaps, no jam is left at all: {(angles.SnapRad < 0 ? "any bar that is level or lower" : "any sinking bar")} throws the tube. "
                    + "Bouncing does the same at every swing, a little at a time.",
            ],
            "letting-go",
            $"Only {share} of the torque is left, so along over across may be {share} of {tangent}. How many degrees below level is still safe there?",
            "degrees",
            double.RadiansToDegrees(angles.EndRad),
            WithinDeg,
            $"The tangent falls to {UnitStyle.Fixed(angles.Tangent * n.Slip.EndShare, 2)}, less the {LessonNumbers.Degrees(n.Slip.Here.TiltRad)} it hangs: {LessonNumbers.Degrees(angles.EndRad)}. "
                + $"Your swing goes to {UnitStyle.Angle(n.Slip.Setup.PastSquare)}: {SlipWords.Verdict(n.Slip)}");
    }

    /// <summary>Step 6: what helps.</summary>
    internal static LessonStep Helps(LessonNumbers n)
    {
        SlipRow best = n.Slip.Best;
        return Step(
            "What helps",
            [
                "A short overlap jams harder, but it tilts more and dents the tube; a long one dents the tube less, but slides off sooner. For each tube there is a best overlap between.",
                .. SlipWords.Helps(n.Slip, n.Units).Skip(1).Select(VerdictWords.Sentence),
            ],
            "overlaps",
            "Read it off the figure: at which overlap does your tube stay on to the widest angle and still take your force?",
            n.LengthUnit,
            n.LengthValue(best.OverlapMm),
            n.LengthValue(WithinMm),
            $"{n.Long(best.OverlapMm)}: it holds to {VerdictWords.Angle(best.Checked.HeldRad, n.Slip.Setup.Hands.Stance.Push)}. Yours, {n.Long(n.Slip.Here.OverlapMm)}, holds to {VerdictWords.Angle(n.Slip.Here.Checked.HeldRad, n.Slip.Setup.Hands.Stance.Push)}.");
    }

    private static LessonStep Step(
        string title, string[] words, string figure, string question, string unit, double answer, double within, string worked) =>
        new(title, words, figure, question, unit, answer, within, worked);
}
