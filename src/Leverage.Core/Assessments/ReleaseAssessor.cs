using Leverage.Levers;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out what is let loose when the nut, or the tool, lets go.</summary>
internal static class ReleaseAssessor
{
    /// <summary>Young's modulus of steel, MPa (VDI 2230 uses 205 GPa).</summary>
    internal const double SteelModulusMpa = 205_000;

    /// <summary>Stiffness of a tube of unknown wall, N·mm²: it is taken to store nothing.</summary>
    private const double Rigid = 1e30;

    internal static ReleaseAssessment? Assess(LooseningSetup setup, NutFigures nut, double strongPullNmm, LeverGeometry? lever)
    {
        if (setup.Bar is not { } bar || lever is not { } geometry)
        {
            return null;
        }

        double force = strongPullNmm / geometry.ReachMm;
        double? energy = Beam(bar, setup.Tube, geometry) is { } beam
            ? Release.Energy(force, LeverDeflection.AtHand(force, beam))
            : null;
        Speed Hands(double share) => Speed.FromMetersPerSecond(Math.Max(
            Release.ArmsSpeed(Release.Freed(energy ?? 0, share), setup.Hands.Body.Kilograms),
            Release.PushSpeed(force, share, setup.Hands.Body.Kilograms)));
        return new ReleaseAssessment(
            energy is { } known ? Energy.FromJoules(known) : null, setup.BarAssumed, Hands(nut.RunningShare), Hands(0));
    }

    /// <summary>The lever as a beam; null where the bar's thickness is not known.</summary>
    private static LeverBeam? Beam(Bar bar, Tube? tube, LeverGeometry lever)
    {
        if (bar.Diameter is not { } diameter)
        {
            return null;
        }

        double barStiffness = SteelModulusMpa * RoundBar.Inertia(diameter.Millimeters);
        if (tube is null)
        {
            return new LeverBeam(lever.ReachMm, 0, 0, 0, barStiffness);
        }

        double tubeStiffness = tube.Outside is { } outside
            ? SteelModulusMpa * TubeSection.Inertia(outside.Millimeters, tube.Wall!.Value.Millimeters)
            : Rigid;

        // Hands on the overlap leave what lies behind them out.
        double overlap = Math.Min(lever.OverlapMm, lever.ReachMm);
        return new LeverBeam(lever.ReachMm, lever.HandToTipMm, overlap, tubeStiffness, barStiffness);
    }
}
