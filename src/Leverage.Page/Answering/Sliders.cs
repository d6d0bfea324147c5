using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Tubes;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Page.Answering;

/// <summary>What can be dragged, and how far.</summary>
internal static class Sliders
{
    private const double InchMm = 25.4;
    private const double LongestMm = 2500;
    private const double SteepestDeg = 60;

    /// <summary>The sliders of a set-up: reach, overlap, swing and friction with a tube, reach alone without.</summary>
    internal static IReadOnlyList<SliderLine> Of(LooseningAssessment assessment, UnitStyle units)
    {
        LooseningSetup setup = assessment.Setup;
        if (setup.Bar is not { } bar)
        {
            return [];
        }

        if (setup is not { Tube: { } tube, Overlaps: var (least, most) } || assessment.Tube is not { } judged)
        {
            return [LengthLine("bar", "bar length", "{}", Length.FromMillimeters(200), bar.Length, units)];
        }

        double shortest = setup.Overlap.Millimeters + setup.Hands.Stance.GripOffsetMm + 5;
        return
        [
            LengthLine("overlap", "overlap", "{}", least, setup.Overlap, units, most),
            Angle(setup.BelowLevel),
            Friction(judged.Friction),
            LengthLine("tube", "tube length", Tube(tube, units.IsUs ? LengthUnit.Inch : LengthUnit.Millimeter), Length.FromMillimeters(shortest), tube.Length, units),
        ];
    }

    private static SliderLine LengthLine(
        string field, string label, string template, Length least, Length now, UnitStyle units, Length? most = null)
    {
        double one = units.IsUs ? InchMm : 1;
        double step = units.IsUs ? 0.25 : 5;
        double value = now.Millimeters / one;
        double min = Math.Ceiling(least.Millimeters / one / step) * step;
        double max = Math.Floor((most?.Millimeters ?? LongestMm) / one / step) * step;
        return new SliderLine(
            field, label, template.Replace("{}", units.IsUs ? "{}in" : "{}mm", StringComparison.Ordinal),
            Math.Min(min, value), Math.Max(max, value), step, value, units.Length(now));
    }

    private static SliderLine Angle(Angle angle) => new(
        "past-square", "lowest angle of the swing", "{}deg", 0, Math.Max(SteepestDeg, angle.Degrees), 1, angle.Degrees, UnitStyle.Angle(angle));

    private static SliderLine Friction(double friction) => new(
        "surface-friction", "friction of tube on bar", "{}", Math.Min(0.05, friction), Math.Max(0.4, friction), 0.01, friction, UnitStyle.Fixed(friction, 2));

    /// <summary>The tube as the field writes it, its length left open: outside and wall keep their unit, said where it is another.</summary>
    private static string Tube(Tube tube, LengthUnit last) => tube.Wall is { } wall
        ? $"{Text(tube.Bore + 2 * wall, last)}x{Text(wall, last)}x{{}}"
        : "jack:{}";

    private static string Text(Length length, LengthUnit last) => length.Unit == last
        ? Short(length.Value)
        : length.Unit == LengthUnit.Inch ? $"{Short(length.Inches)}in" : $"{Short(length.Millimeters)}mm";

    private static string Short(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}
