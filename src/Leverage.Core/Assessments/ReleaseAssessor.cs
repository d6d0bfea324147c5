using Leverage.Levers;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out what is let loose when the nut, or the tool, lets go.</summary>
internal static class ReleaseAssessor
{
    /// <summary>Young's modulus of steel, MPa (VDI 2230 uses 205 GPa).</summary>
    internal const double SteelModulusMpa = 205_000;

    /// <summary>Diameter taken for a bar that is not known, mm: it stores little either way (judgement).</summary>
    private const double UnknownBarMm = 16;

    /// <summary>Wall taken for a jack handle, mm (judgement).</summary>
    private const double UnknownWallMm = 2.5;

    internal static ReleaseAssessment? Assess(LooseningSetup setup, NutFigures nut, Judgement judged, LeverGeometry? lever)
    {
        if (setup.Bar is not { } bar || lever is not { } geometry)
        {
            return null;
        }

        // Nothing stores more than what gives first lets it: past the weakest limit it bends, it does not spring back.
        double force = Math.Min(judged.DemandLikelyNmm, judged.LowestLimitNmm) / geometry.ReachMm;
        double bend = LeverDeflection.AtHand(force, Beam(bar, setup.Tube, geometry));
        double energy = Release.Energy(force, bend);
        double speed = Release.HandSpeed(force, nut.RunningShare, setup.Hands.Body.Kilograms);
        return new ReleaseAssessment(
            Energy.FromJoules(energy),
            Speed.FromMetersPerSecond(speed),
            Length.FromMillimeters(Release.HammerDrop(energy)));
    }

    private static LeverBeam Beam(Bar bar, Tube? tube, LeverGeometry lever)
    {
        double barStiffness = SteelModulusMpa * RoundBar.Inertia(bar.Diameter?.Millimeters ?? UnknownBarMm);
        if (tube is null)
        {
            return new LeverBeam(lever.ReachMm, 0, 0, 0, barStiffness);
        }

        double wall = tube.Wall?.Millimeters ?? UnknownWallMm;
        double tubeStiffness = SteelModulusMpa * TubeSection.Inertia(tube.Bore.Millimeters + 2 * wall, wall);
        double overlap = Math.Min(lever.OverlapMm, lever.ReachMm - lever.HandToTipMm);
        return new LeverBeam(lever.ReachMm, lever.HandToTipMm, overlap, tubeStiffness, barStiffness);
    }
}
