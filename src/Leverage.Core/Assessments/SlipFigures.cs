using Leverage.Levers;
using Leverage.Sleeves;

namespace Leverage.Assessments;

/// <summary>When a sleeve slides, at one friction.</summary>
/// <param name="Tangent">tan θ of the limit, θ from the sleeve's normal; negative walks off under a square pull.</param>
/// <param name="HeldRad">Last safe angle of the bar below level while the nut holds, rad.</param>
/// <param name="ReleaseRad">Last safe angle at break-loose, rad.</param>
/// <param name="SnapRad">Last safe angle if something snaps, rad.</param>
public readonly record struct SlipAngles(double Tangent, double HeldRad, double ReleaseRad, double SnapRad)
{
    /// <summary>The angles of a sleeve on a bar.</summary>
    /// <param name="bar">The bar, whose diameter is known.</param>
    /// <param name="sleeve">The sleeve.</param>
    /// <param name="lever">The lever's lengths, with a sleeve on.</param>
    /// <param name="friction">Friction of sleeve on bar.</param>
    /// <param name="runningShare">q, torque once moving over torque to start.</param>
    /// <returns>The angles.</returns>
    public static SlipAngles Of(Bar bar, Sleeve sleeve, LeverGeometry lever, double friction, double runningShare)
    {
        double tilt = Tilt(bar, sleeve, lever.OverlapMm);
        double tangent = SlipLimit.Tangent(
            new SleeveHold(friction, lever.HandToTipMm, lever.OverlapMm, tilt, bar.Taper.Radians));
        return new SlipAngles(
            tangent,
            SlipLimit.AngleBelowLevel(tangent, tilt, 1),
            SlipLimit.AngleBelowLevel(tangent, tilt, runningShare),
            SlipLimit.AngleBelowLevel(tangent, tilt, 0));
    }

    /// <summary>Tilt of the sleeve on the bar, rad.</summary>
    internal static double Tilt(Bar bar, Sleeve sleeve, double overlapMm) =>
        SleevePlay.Tilt(sleeve.Bore.Millimeters, bar.Diameter!.Value.Millimeters, overlapMm);
}
