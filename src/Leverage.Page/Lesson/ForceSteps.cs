using Leverage.Wording;

namespace Leverage.Page.Lesson;

/// <summary>The first three steps: the lever, the two reactions, the jam.</summary>
internal static class ForceSteps
{
    /// <summary>A share of the answer that a learner's rounding may be off.</summary>
    private const double Rounding = 0.03;

    /// <summary>Step 1: what a longer lever buys.</summary>
    internal static LessonStep Lever(LessonNumbers n)
    {
        string torque = n.TorqueText(n.Sketch.TorqueNmm);
        string reach = n.Long(n.Sketch.ReachMm);
        return Step(
            "A lever trades force for length",
            [
                $"Your nut is likely to break loose at {torque}. From its middle to the middle of your hands it is {reach}.",
                "Torque is force times reach, counted square to the lever. Twice the reach, half the force. That is all a tube over the bar does, and it does it well.",
            ],
            "lever",
            $"How hard must you push, square to the lever, to reach {torque} with a reach of {reach}?",
            n.Units.ForceUnit,
            n.ForceValue(n.Sketch.SquareN),
            $"{torque} over {reach} is {n.ForceText(n.Sketch.SquareN)}. Pushing straight down on a bar below level, only part of your push is square to it: it takes {n.ForceText(n.Sketch.HandN)}.");
    }

    /// <summary>Step 2: where tube and bar touch.</summary>
    internal static LessonStep Reactions(LessonNumbers n)
    {
        string beyond = n.Long(n.Tube.HandToTipMm);
        string overlap = n.Long(n.Tube.OverlapMm);
        double times = n.Tube.TipN / n.Sketch.SquareN;
        return Step(
            "The tube touches the bar at two places",
            [
                "There is always some play, so the tube tilts. It then bears in two places only: inside on the bar's tip, and on the handle at its own mouth.",
                $"Your hands push down {beyond} beyond the tip. The tip must push up, harder than you do, and the mouth is pressed down to make up the difference. The tube is a lever of its own, with the tip for a fulcrum.",
            ],
            "reactions",
            $"You push square to the tube, {beyond} beyond the tip; the overlap is {overlap}. How many times as hard as you does the tip press?",
            "times",
            times,
            $"Moments about the mouth: {beyond} and {overlap}, together over {overlap}, is {UnitStyle.Fixed(times, 2)} times. "
                + $"You push {n.ForceText(n.Sketch.SquareN)}, so the tip presses {n.ForceText(n.Tube.TipN)}. The mouth gets the rest, {n.ForceText(n.Tube.MouthN)}.");
    }

    /// <summary>Step 3: the two presses are what holds it.</summary>
    internal static LessonStep Jam(LessonNumbers n)
    {
        double snug = n.Slip.SnugHoldsN(n.Sketch.SquareN);
        string presses = n.ForceText(n.Tube.TipN + n.Tube.MouthN);
        string friction = UnitStyle.Fixed(n.Slip.Setup.Surface.Friction.Low, 2);
        return Step(
            "The harder you push, the harder it jams",
            [
                "Nothing but friction at those two places keeps the tube on. Both presses grow with your push, so the grip does too: push twice as hard and it holds twice as much.",
                "That is why force never tells whether it stays on. A loose tube holds less than a snug one: it leans on the mouth, and a leaning contact pushes outward. Yours is "
                    + $"{LessonNumbers.Degrees(n.Tube.TiltRad)} out of line and holds {n.ForceText(n.Tube.HoldsN)}.",
            ],
            "balance",
            $"Tip and mouth press {presses} together, and friction is {friction}. How much pull along the tube would a snug tube hold?",
            n.Units.ForceUnit,
            n.ForceValue(snug),
            $"{friction} × {presses} is {n.ForceText(snug)}. With the play of yours it is {n.ForceText(n.Tube.HoldsN)}.");
    }

    private static LessonStep Step(
        string title, string[] words, string figure, string question, string unit, double answer, string worked) =>
        new(title, words, figure, question, unit, answer, Math.Abs(answer) * Rounding, worked);
}
