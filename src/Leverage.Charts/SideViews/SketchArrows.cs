using Leverage.Answers;
using Leverage.Assessments;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts.SideViews;

/// <summary>Every force on a lever as an arrow that grows with it.</summary>
internal static class SketchArrows
{
    private const float Least = 34;
    private const float Most = 72;

    /// <summary>The arrows: hands, then on a sleeve tip, mouth, pull along it and the friction that holds it.</summary>
    internal static List<ForceArrow> Of(SketchGeometry place, UnitStyle units)
    {
        LeverSketch sketch = place.Sketch;
        double largest = Math.Max(sketch.HandN, sketch.Sleeve?.TipN ?? 0);
        float Size(double newtons) => Least + Most * (float)Math.Min(1, Math.Abs(newtons) / largest);
        var down = new SKPoint(0, 1);
        SKPoint hands = SketchGeometry.Moved(place.Hands, down, -place.HandsHalf - 3);
        var arrows = new List<ForceArrow>
        {
            new($"hands push {Words(sketch.HandN, units)}", SketchGeometry.Moved(hands, down, -Size(sketch.HandN)), hands, Ink.Hand, false),
        };
        if (sketch.Sleeve is { } sleeve)
        {
            AddSleeve(arrows, place, sleeve, units, Size);
        }

        return arrows;
    }

    /// <summary>Length of the arrow at the mouth: dimensions stand clear of it.</summary>
    internal static float MouthLength(SketchGeometry place) => place.Sketch.Sleeve is { } sleeve
        ? Least + Most * (float)(sleeve.MouthN / Math.Max(place.Sketch.HandN, sleeve.TipN))
        : 0;

    private static void AddSleeve(
        List<ForceArrow> arrows, SketchGeometry place, SleeveSketch sleeve, UnitStyle units, Func<double, float> size)
    {
        SKPoint up = SketchGeometry.Above(place.SleeveAlong);
        arrows.Add(new ForceArrow(
            $"tip lifts {Words(sleeve.TipN, units)}", place.Tip, SketchGeometry.Moved(place.Tip, up, size(sleeve.TipN)), Ink.Limit, false));
        arrows.Add(new ForceArrow(
            $"mouth is pressed {Words(sleeve.MouthN, units)}", place.Mouth,
            SketchGeometry.Moved(place.Mouth, up, -size(sleeve.MouthN)), Ink.Limit, false));
        arrows.Add(new ForceArrow(
            $"pull along the sleeve {Words(sleeve.OutwardN, units)}", place.End,
            SketchGeometry.Moved(place.End, place.SleeveAlong, size(sleeve.OutwardN)), Ink.Stop, true));
        float length = size(sleeve.HoldsN);
        SKPoint outer = SketchGeometry.Moved(
            place.OnSleeve(sleeve.OverlapMm / 2, -place.SleeveHalf), up, -14);
        SKPoint tail = SketchGeometry.Moved(outer, place.SleeveAlong, length / 2);
        SKPoint head = SketchGeometry.Moved(outer, place.SleeveAlong, -length / 2);
        arrows.Add(sleeve.HoldsN >= 0
            ? new ForceArrow($"friction holds up to {Words(sleeve.HoldsN, units)}", tail, head, Ink.Works, false)
            : new ForceArrow($"the contacts push it off {Words(-sleeve.HoldsN, units)}", head, tail, Ink.Stop, false));
    }

    private static string Words(double newtons, UnitStyle units) => units.Force(Force.FromNewtons(newtons)).Replace(' ', '\u00A0');
}
