using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>The tube of a sketch with the forces on it, seen from the side.</summary>
/// <param name="LengthMm">Whole length, mm.</param>
/// <param name="BoreMm">Inside diameter, mm.</param>
/// <param name="WallMm">Wall, mm; null where it is not known.</param>
/// <param name="OverlapMm">c, how far it is on, mm.</param>
/// <param name="HandToTipMm">a, bar's tip to the hands, mm.</param>
/// <param name="TiltRad">δ, how far it leans past the bar, rad.</param>
/// <param name="TipN">Force of the bar's tip on it, N.</param>
/// <param name="MouthN">Force of the bar at its mouth, N.</param>
/// <param name="OutwardN">The hands' pull along it, outward, N; negative is a push on.</param>
/// <param name="HoldsN">Most that friction holds along it while the nut holds, N; negative where the contacts push it off.</param>
/// <param name="HoldsAsItTurnsN">The same with the torque that is left at the end of the swing, N.</param>
/// <param name="GripWords">State of the surface in words.</param>
public sealed record TubeSketch(
    double LengthMm,
    double BoreMm,
    double? WallMm,
    double OverlapMm,
    double HandToTipMm,
    double TiltRad,
    double TipN,
    double MouthN,
    double OutwardN,
    double HoldsN,
    double HoldsAsItTurnsN,
    string GripWords)
{
    /// <summary>Whether it stays on while the nut holds.</summary>
    public bool StaysOn => OutwardN <= HoldsN;

    /// <summary>Whether it stays on at the end of the swing, once the nut has turned that far.</summary>
    public bool StaysOnAsItTurns => OutwardN <= HoldsAsItTurnsN;
}

/// <summary>A lever seen from the side at the end of its swing, with every force on it while the nut holds: what a side view is drawn from.</summary>
public sealed record LeverSketch
{
    /// <summary>Bar, nut's axis to end, mm.</summary>
    public required double BarMm { get; init; }

    /// <summary>Diameter of the bar, mm; null where it is not known.</summary>
    public double? BarDiameterMm { get; init; }

    /// <summary>Width across flats of the nut, mm; null where it is not known.</summary>
    public double? AcrossFlatsMm { get; init; }

    /// <summary>Nut's axis to middle of the hands, mm.</summary>
    public required double ReachMm { get; init; }

    /// <summary>Angle of the bar past square in the direction it moves, rad: below level for a push down, above it for a lift.</summary>
    public required double PastSquareRad { get; init; }

    /// <summary>Push of the hands, straight down, up or across, N.</summary>
    public required double HandN { get; init; }

    /// <summary>Its part square to the lever, N.</summary>
    public required double SquareN { get; init; }

    /// <summary>Torque at the nut, N·mm.</summary>
    public double TorqueNmm => SquareN * ReachMm;

    /// <summary>Left-hand thread: facing the nut, a push down loosens it with the lever at three o'clock, not at nine.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Way the hands push.</summary>
    public Push Push { get; init; }

    /// <summary>The tube; null with none on.</summary>
    public TubeSketch? Tube { get; init; }

    /// <summary>The weakest part where the strong pull passes its limit; null where every part stands that.</summary>
    public LinkLimit? Gives { get; init; }
}

/// <summary>Draws up sketches.</summary>
public static class LeverSketcher
{
    /// <summary>Steepest angle of the lever that is sketched, rad: past it a push hardly turns anything.</summary>
    private const double Steepest = 1.5;

    /// <summary>The lever under the strong pull, at the end of the swing.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The sketch; null with no bar.</returns>
    public static LeverSketch? Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever || assessment.Setup.Bar is not { } bar)
        {
            return null;
        }

        double square = assessment.Judgement.StrongPullNmm / lever.ReachMm;
        LeverSketch sketch = Bare(bar, lever, assessment.Setup.PastSquare, square) with
        {
            AcrossFlatsMm = assessment.Setup.Fastener.AcrossFlats?.Millimeters,
            LeftHand = assessment.Setup.Fastener.LeftHand,
            Push = assessment.Setup.Hands.Stance.Push,
            Gives = assessment.Judgement.Margin < 1 ? assessment.Weakest?.Limit : null,
        };
        return assessment is { Tube: { } judged, Setup.Tube: { } tube }
            ? WithTube(sketch, tube, lever, judged.Tilt.Radians, judged.Checked.Tangent, judged.EndShare, assessment.Setup.Surface.Words)
            : sketch;
    }

    /// <summary>The lever under the strong pull, at the end of the swing.</summary>
    /// <param name="slip">The assessment.</param>
    /// <returns>The sketch.</returns>
    public static LeverSketch Of(SlipAssessment slip)
    {
        ArgumentNullException.ThrowIfNull(slip);
        SlipSetup setup = slip.Setup;
        var lever = LeverGeometry.WithTube(
            setup.Bar.Length.Millimeters, setup.Tube.Length.Millimeters, setup.Overlap.Millimeters, setup.Hands.Stance.GripOffsetMm);
        LeverSketch sketch = Bare(setup.Bar, lever, setup.PastSquare, slip.StrongN) with
        {
            LeftHand = setup.Fastener?.LeftHand ?? false,
            AcrossFlatsMm = setup.Fastener?.AcrossFlats?.Millimeters,
            Push = setup.Hands.Stance.Push,
            Gives = slip.Here.GivesAtN < slip.StrongN ? slip.WeakestAt(slip.Here) : null,
        };
        return WithTube(sketch, setup.Tube, lever, slip.Here.TiltRad, slip.Here.Checked.Tangent, slip.EndShare, setup.Surface.Words);
    }

    private static LeverSketch Bare(Bar bar, LeverGeometry lever, Angle pastSquare, double squareN) => new()
    {
        BarMm = bar.Length.Millimeters,
        BarDiameterMm = bar.Diameter?.Millimeters,
        ReachMm = lever.ReachMm,
        PastSquareRad = pastSquare.Radians,
        SquareN = squareN,
        HandN = squareN / Math.Cos(Lean(pastSquare.Radians, 0)),
    };

    private static LeverSketch WithTube(
        LeverSketch sketch, Tube tube, LeverGeometry lever, double tiltRad, double limitTangent, double endShare, string gripWords)
    {
        double lean = Lean(sketch.PastSquareRad, tiltRad);
        double square = sketch.SquareN;
        return sketch with
        {
            HandN = square / Math.Cos(lean),
            Tube = new TubeSketch(
                tube.Length.Millimeters,
                tube.Bore.Millimeters,
                tube.Wall?.Millimeters,
                lever.OverlapMm,
                lever.HandToTipMm,
                tiltRad,
                TubeBearing.TipReaction(square, lever.HandToTipMm, lever.OverlapMm),
                TubeBearing.MouthReaction(square, lever.HandToTipMm, lever.OverlapMm),
                square * Math.Tan(lean),
                square * limitTangent,
                square * limitTangent * endShare,
                gripWords),
        };
    }

    /// <summary>Angle between the push and the lever's normal, rad.</summary>
    private static double Lean(double pastSquareRad, double tiltRad) => Math.Min(pastSquareRad + tiltRad, Steepest);
}
