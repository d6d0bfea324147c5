using Leverage.Levers;
using Leverage.Tubes;

namespace Leverage.Assessments;

/// <summary>When a tube slides, at one friction.</summary>
/// <param name="Tangent">tan θ of the limit, θ from the tube's normal; negative pushes it off at a square pull.</param>
/// <param name="HeldRad">Last safe angle of the bar past square while the nut holds, rad; negative: not even square is safe.</param>
/// <param name="EndRad">Last safe angle with the torque that is left at the end of the swing, rad.</param>
/// <param name="SnapRad">Last safe angle if something snaps, rad.</param>
public readonly record struct SlipAngles(double Tangent, double HeldRad, double EndRad, double SnapRad)
{
    /// <summary>The angles of a tube on a bar.</summary>
    /// <param name="bar">The bar, whose diameter is known.</param>
    /// <param name="tube">The tube.</param>
    /// <param name="lever">The lever's lengths, with a tube on.</param>
    /// <param name="friction">Friction of tube on bar.</param>
    /// <param name="endShare">Torque left at the end of the swing over torque to start.</param>
    /// <returns>The angles.</returns>
    public static SlipAngles Of(Bar bar, Tube tube, LeverGeometry lever, double friction, double endShare)
    {
        double tilt = Tilt(bar, tube, lever.OverlapMm);
        double tangent = SlipLimit.Tangent(
            new TubeHold(friction, lever.HandToTipMm, lever.OverlapMm, tilt, bar.Taper.Radians));
        return new SlipAngles(
            tangent,
            SlipLimit.SafeAngle(tangent, tilt, 1),
            SlipLimit.SafeAngle(tangent, tilt, endShare),
            SlipLimit.SafeAngle(tangent, tilt, 0));
    }

    /// <summary>Tilt of the tube on the bar, rad.</summary>
    internal static double Tilt(Bar bar, Tube tube, double overlapMm) =>
        TubePlay.Tilt(tube.Bore.Millimeters, bar.Diameter!.Value.Millimeters, overlapMm);
}
