using Leverage.Assessments;
using Leverage.Page.Asking;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Page.Lesson;

/// <summary>The lesson "Why a slipped-over tube comes off" with the learner's own numbers.</summary>
internal static class LessonText
{
    private const string Title = "Why a slipped-over tube comes off";

    /// <summary>The six steps for what an address says.</summary>
    /// <exception cref="InputException">The set-up cannot be, or has no tube.</exception>
    internal static LessonAnswer Of(Query asked)
    {
        LooseningRequest request = asked.Loosening();
        SlipAssessment slip = SlipAssessor.Assess(SlipDefaults.Complete(request));
        LooseningAssessment loosening = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request));
        var numbers = new LessonNumbers(loosening, slip, asked.Units);
        return new LessonAnswer(
            Title,
            Given(numbers),
            [
                ForceSteps.Lever(numbers), ForceSteps.Reactions(numbers), ForceSteps.Jam(numbers),
                AngleSteps.Angle(numbers), AngleSteps.LettingGo(numbers), AngleSteps.Helps(numbers),
            ],
            Cautions.Of(loosening),
            Figures(numbers));
    }

    private static LessonFigures Figures(LessonNumbers n) => new(
        n.Tube.OverlapMm, n.Tube.HandToTipMm, n.Sketch.SquareN, n.Tube.TipN, n.Tube.MouthN, n.Slip.SnugHoldsN(n.Sketch.SquareN), n.Tube.HoldsN,
        n.Tube.OutwardN, double.RadiansToDegrees(n.Slip.Here.Checked.HeldRad), double.RadiansToDegrees(n.Slip.Here.Checked.EndRad),
        n.Slip.Setup.PastSquare.Degrees, n.Slip.Best.OverlapMm, n.Slip.HandN,
        [.. n.Slip.Rows.Select(row => row.OverlapMm)],
        [.. n.Slip.Rows.Select(row => double.RadiansToDegrees(row.Checked.HeldRad))],
        [.. n.Slip.Rows.Select(row => double.IsFinite(row.GivesAtN) ? row.GivesAtN : (double?)null)],
        new FigureWords(
            n.ForceText(n.Sketch.SquareN), n.ForceText(n.Tube.TipN), n.ForceText(n.Tube.MouthN), n.ForceText(n.Slip.SnugHoldsN(n.Sketch.SquareN)),
            n.ForceText(n.Tube.HoldsN), n.ForceText(n.Tube.OutwardN), n.Long(n.Slip.Best.OverlapMm)));

    private static string Given(LessonNumbers n)
    {
        SlipSetup setup = n.Slip.Setup;
        return $"{LooseningTitle.Of(n.Loosening.Setup, n.Units)}. Bar {n.Long(setup.Bar.Length.Millimeters)} of {n.Units.Length(setup.Bar.Diameter!.Value)}, "
            + $"tube {n.Long(setup.Tube.Length.Millimeters)} with a bore of {n.Units.Length(setup.Tube.Bore)}, overlap {n.Long(n.Slip.Here.OverlapMm)}, "
            + $"{setup.Surface.Words} handle, friction {UnitStyle.Fixed(setup.Surface.Friction.Low, 2)}; the bar swings to {UnitStyle.Angle(setup.PastSquare)} below level.";
    }
}

/// <summary>The numbers of a lesson, each from an assessment, with the words for them.</summary>
/// <param name="Loosening">What the nut takes.</param>
/// <param name="Slip">What the tube does.</param>
/// <param name="Units">Units.</param>
internal sealed record LessonNumbers(LooseningAssessment Loosening, SlipAssessment Slip, UnitStyle Units)
{
    /// <summary>The lever as it breaks the nut loose.</summary>
    internal LeverSketch Sketch { get; } = LeverSketcher.Of(Loosening)!;

    /// <summary>The tube on it.</summary>
    internal TubeSketch Tube => Sketch.Tube!;

    /// <summary>A force's number.</summary>
    internal double ForceValue(double newtons) => Units.ForceValue(Force.FromNewtons(newtons));

    /// <summary>A force in words.</summary>
    internal string ForceText(double newtons) => Units.Force(Force.FromNewtons(newtons));

    /// <summary>A length's number: millimetres, or inches.</summary>
    internal double LengthValue(double mm) => Units.IsUs ? Length.FromMillimeters(mm).Inches : mm;

    /// <summary>Unit of that number.</summary>
    internal string LengthUnit => Units.IsUs ? "in" : "mm";

    /// <summary>A length in words, never in metres.</summary>
    internal string Long(double mm) => Units.Length(Length.FromMillimeters(mm));

    /// <summary>A torque in words.</summary>
    internal string TorqueText(double torqueNmm) => Units.Torque(Torque.FromNewtonMillimeters(torqueNmm));

    /// <summary>An angle in words, to a tenth.</summary>
    internal static string Degrees(double radians) => $"{UnitStyle.Fixed(double.RadiansToDegrees(radians), 1)}°";
}
