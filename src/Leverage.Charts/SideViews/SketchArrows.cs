using Leverage.Assessments;
using Leverage.Wording;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts.SideViews;

/// <summary>Every force on a lever as an arrow that grows with it.</summary>
internal static class SketchArrows
{
    private const float Least = 34;
    private const float Most = 72;

    /// <summary>The arrows: hands, then on a tube tip, mouth, pull along it and the friction that holds it.</summary>
    internal static List<ForceArrow> Of(SketchGeometry place, UnitStyle units)
    {
        LeverSketch sketch = place.Sketch;
        double largest = Math.Max(sketch.HandN, sketch.Tube?.TipN ?? 0);
        float Size(double newtons) => Least + Most * (float)Math.Min(1, Math.Abs(newtons) / largest);
        SKPoint hands = SketchGeometry.Moved(place.Hands, place.Push, -place.HandsHalf - 3);
        var arrows = new List<ForceArrow>
        {
            new($"hands {Words(sketch.HandN, units)}", SketchGeometry.Moved(hands, place.Push, -Size(sketch.HandN)), hands, Ink.Hand, false),
        };
        if (sketch.Tube is { } tube)
        {
            AddTube(arrows, place, tube, units, Size);
        }

        return arrows;
    }

    /// <summary>Length of the arrow at the mouth: dimensions stand clear of it.</summary>
    internal static float MouthLength(SketchGeometry place) => place.Sketch.Tube is { } tube
        ? Least + Most * (float)(tube.MouthN / Math.Max(place.Sketch.HandN, tube.TipN))
        : 0;

    private static void AddTube(
        List<ForceArrow> arrows, SketchGeometry place, TubeSketch tube, UnitStyle units, Func<double, float> size)
    {
        SKPoint up = place.Above(place.TubeAlong);
        arrows.Add(new ForceArrow(
            $"tip bears {Words(tube.TipN, units)}", place.Tip, SketchGeometry.Moved(place.Tip, up, size(tube.TipN)), Ink.Limit, false));
        arrows.Add(new ForceArrow(
            $"mouth bears {Words(tube.MouthN, units)}", place.Mouth,
            SketchGeometry.Moved(place.Mouth, up, -size(tube.MouthN)), Ink.Limit, false));
        arrows.Add(new ForceArrow(
            $"pull along the tube {Words(tube.OutwardN, units)}", place.End,
            SketchGeometry.Moved(place.End, place.TubeAlong, size(tube.OutwardN)), Ink.Stop, true));
        float length = size(tube.HoldsN);
        SKPoint outer = SketchGeometry.Moved(
            place.OnTube(tube.OverlapMm / 2, -place.TubeHalf), up, -14);
        SKPoint tail = SketchGeometry.Moved(outer, place.TubeAlong, length / 2);
        SKPoint head = SketchGeometry.Moved(outer, place.TubeAlong, -length / 2);
        arrows.Add(tube.HoldsN >= 0
            ? new ForceArrow($"friction holds up to {Words(tube.HoldsN, units)}", tail, head, Ink.Works, false)
            : new ForceArrow($"the contacts push it off {Words(-tube.HoldsN, units)}", head, tail, Ink.Stop, false));
    }

    private static string Words(double newtons, UnitStyle units) => units.Force(Force.FromNewtons(newtons)).Replace(' ', '\u00A0');
}
