using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Levers;
using UnitsNet;

namespace Leverage.Charts.SideViews;

/// <summary>What a side view says in words.</summary>
internal static class SideViewWords
{
    /// <summary>The answer in a line or two.</summary>
    internal static string Answer(LeverSketch sketch, UnitStyle units)
    {
        if (sketch is { Gives: { } part, Tube: null or { StaysOn: true } })
        {
            return $"The {PartWords.Name(part, units)} gives before the nut turns: it stands {NewtonMillimetres(part.LimitNmm, units)} "
                + $"of {NewtonMillimetres(sketch.TorqueNmm, units)} likely.";
        }

        if (sketch.Tube is not { } tube)
        {
            string torque = units.Torque(Torque.FromNewtonMillimeters(sketch.TorqueNmm));
            return $"{torque} at the nut takes {Newtons(sketch.HandN, units)} straight down, at this angle "
                + $"and a reach of {Millimetres(sketch.ReachMm, units)}.";
        }

        if (tube.HoldsN < 0)
        {
            return "The tube walks off even under a square pull: its contacts push it outward (a prediction, not yet tested).";
        }

        string pull = $"You pull {Newtons(tube.OutwardN, units)} along the tube";
        return tube.StaysOn
            ? $"{pull}; friction ({tube.GripWords}) holds up to {Newtons(tube.HoldsN, units)}: it stays on while the nut holds."
            : $"{pull}; friction ({tube.GripWords}) holds only {Newtons(tube.HoldsN, units)}: it slides off.";
    }

    /// <summary>Notes below the drawing.</summary>
    internal static IReadOnlyList<string> Notes(SketchGeometry place, UnitStyle units)
    {
        LeverSketch sketch = place.Sketch;
        string[] other = sketch.Push switch
        {
            Push.Up => ["Drawn for a push down. Lifting, turn it half round: bar on the other side, angles above level."],
            Push.Across => ["Drawn for a push down. Turn it until the blue arrow points the way you pull or push."],
            _ => [],
        };
        string scale = "Lengths and angle of the bar to scale; the stronger a force, the longer its arrow.";
        if (sketch.Tube is not { } tube)
        {
            return place.HandsFit ? [scale, .. other] : [scale, .. other, "Both hands do not fit on so short a lever: count on one."];
        }

        string tilt = UnitStyle.Fixed(double.RadiansToDegrees(tube.TiltRad), 1);
        string play = units.Length(Length.FromMillimeters(tube.BoreMm - 2 * place.BarHalf));
        string drawn = place.PlayFactor > 1 ? $", drawn {UnitStyle.Trim(place.PlayFactor, 0)} times too large" : ", to scale";
        return [scale, $"Play of the tube {play}{drawn}: it really hangs {tilt}° below the bar.", .. other];
    }

    /// <summary>A force with no break inside it.</summary>
    private static string Newtons(double newtons, UnitStyle units) => units.Force(Force.FromNewtons(newtons)).Replace(' ', '\u00A0');

    private static string NewtonMillimetres(double torqueNmm, UnitStyle units) =>
        units.Torque(Torque.FromNewtonMillimeters(torqueNmm)).Replace(' ', '\u00A0');

    /// <summary>A length.</summary>
    internal static string Millimetres(double mm, UnitStyle units) => units.Any(Length.FromMillimeters(mm)).Replace(' ', '\u00A0');
}
