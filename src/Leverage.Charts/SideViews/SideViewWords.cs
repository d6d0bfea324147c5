using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Wording;
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
            return $"The {PartWords.Fails(part, units)} at {NewtonMillimetres(part.LimitNmm, units)}. "
                + $"A strong pull makes {NewtonMillimetres(sketch.TorqueNmm, units)}.";
        }

        if (sketch.Tube is not { } tube)
        {
            string torque = units.Torque(Torque.FromNewtonMillimeters(sketch.TorqueNmm));
            return $"{torque} at the nut takes {Newtons(sketch.HandN, units)} straight {Way(sketch.Push)}, at this angle "
                + $"and a reach of {Millimetres(sketch.ReachMm, units)}.";
        }

        if (tube.HoldsN < 0)
        {
            return "The tube slides off even at a square pull: its contacts push it outward (a prediction, not yet tested).";
        }

        string pull = $"You pull {Newtons(tube.OutwardN, units)} along the tube";
        string holds = $"friction ({tube.GripWords}) holds up to {Newtons(tube.HoldsN, units)} while the nut holds, {Newtons(tube.HoldsAsItTurnsN, units)} once it has turned";
        return tube.StaysOnAsItTurns ? $"{pull}; {holds}: the tube stays on."
            : tube.StaysOn ? $"{pull}; {holds}: the tube then slides off."
            : $"{pull}; friction ({tube.GripWords}) holds only {Newtons(tube.HoldsN, units)}: the tube slides off.";
    }

    /// <summary>Notes below the drawing.</summary>
    internal static IReadOnlyList<string> Notes(SketchGeometry place, UnitStyle units)
    {
        LeverSketch sketch = place.Sketch;
        string[] other = sketch.Push == Push.Across ? ["A pull across, the lever drawn upright: turn it the way yours points."] : [];
        string scale = "Lengths and angle of the bar to scale; the stronger a force, the longer its arrow.";
        if (sketch.Tube is not { } tube)
        {
            return place.HandsFit ? [scale, .. other] : [scale, .. other, "The hands hardly fit beside the nut on so short a lever."];
        }

        string tilt = UnitStyle.Fixed(double.RadiansToDegrees(tube.TiltRad), 1);
        string play = units.Length(Length.FromMillimeters(tube.BoreMm - 2 * place.BarHalf));
        string drawn = place.PlayFactor > 1 ? $", drawn {UnitStyle.Trim(place.PlayFactor, 0)} times too large" : ", to scale";
        return [scale, $"Play of the tube {play}{drawn}: it really leans {tilt}° past the bar.", .. other];
    }

    private static string Way(Push push) => push switch
    {
        Push.Down => "down",
        Push.Up => "up",
        _ => "across",
    };

    /// <summary>A force with no break inside it.</summary>
    private static string Newtons(double newtons, UnitStyle units) => units.Force(Force.FromNewtons(newtons)).Replace(' ', '\u00A0');

    private static string NewtonMillimetres(double torqueNmm, UnitStyle units) =>
        units.Torque(Torque.FromNewtonMillimeters(torqueNmm)).Replace(' ', '\u00A0');

    /// <summary>A length.</summary>
    internal static string Millimetres(double mm, UnitStyle units) => units.Any(Length.FromMillimeters(mm)).Replace(' ', '\u00A0');
}
