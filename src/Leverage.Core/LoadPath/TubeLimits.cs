using Leverage.Levers;
using Leverage.Tubes;

namespace Leverage.LoadPath;

/// <summary>What a tube stands, as moment and forces, once.</summary>
/// <param name="MomentNmm">Bending moment it stands, N·mm.</param>
/// <param name="TipN">Force of the bar's tip it stands, N; infinite where the wall is not known.</param>
/// <param name="MouthN">Force at its mouth it stands, N; infinite where the wall is not known.</param>
/// <param name="Source">Full plastic moment of a compact section, first yield, or a jack handle's own standard.</param>
/// <param name="Least">Whether these are least values: of an unknown steel, or of a jack handle.</param>
public readonly record struct TubeLimits(double MomentNmm, double TipN, double MouthN, LimitSource Source, bool Least)
{
    /// <summary>Dent depth over diameter at which a tube counts as dented: 1 %.</summary>
    public const double DentShare = 0.01;

    /// <summary>Share of the dent resistance left at a free mouth (finite elements on two tubes).</summary>
    public const double MouthShare = 0.7;

    /// <summary>Limits of a tube.</summary>
    /// <param name="tube">The tube.</param>
    /// <returns>Its limits; for a jack handle of unknown wall only the moment its own standard makes it carry.</returns>
    public static TubeLimits Of(Tube tube)
    {
        if (tube.Wall is not { } wall)
        {
            double floor = Tube.JackHandleForceN * tube.Length.Millimeters;
            return new TubeLimits(floor, double.PositiveInfinity, double.PositiveInfinity, LimitSource.JackHandle, true);
        }

        double outside = (tube.Bore + 2 * wall).Millimeters;
        double wallMm = wall.Millimeters;
        double yield = tube.Yield.Megapascals;
        bool compact = TubeSection.IsCompact(outside, wallMm, yield);
        double modulus = compact
            ? TubeSection.PlasticModulus(outside, wallMm)
            : TubeSection.ElasticModulus(outside, wallMm);
        double dent = TubeDent.Resistance(yield, outside, wallMm, 0, DentShare);
        return new TubeLimits(
            yield * modulus, dent, MouthShare * dent, compact ? LimitSource.PlasticTube : LimitSource.ElasticTube, tube.UnknownSteel);
    }

    /// <summary>Torque at the nut at which the tube first bends or dents, N·mm.</summary>
    /// <param name="lever">The lever it is part of.</param>
    /// <returns>The least of the three.</returns>
    public double BreakingTorque(LeverGeometry lever) =>
        Math.Min(BendingTorque(lever), Math.Min(TipTorque(lever), MouthTorque(lever)));

    /// <summary>Torque at the nut at which the tube bends at the bar's tip, N·mm.</summary>
    /// <param name="lever">The lever it is part of.</param>
    /// <returns>Torque, infinite where the hands stand at the tip.</returns>
    public double BendingTorque(LeverGeometry lever) => MomentNmm / lever.HandToTipMm * lever.ReachMm;

    /// <summary>Torque at the nut at which the bar's tip dents the tube, N·mm.</summary>
    /// <param name="lever">The lever it is part of.</param>
    /// <returns>Torque, infinite where the wall is not known.</returns>
    public double TipTorque(LeverGeometry lever) =>
        TipN / TubeBearing.TipReaction(1, lever.HandToTipMm, lever.OverlapMm) * lever.ReachMm;

    /// <summary>Torque at the nut at which the tube's mouth dents, N·mm.</summary>
    /// <param name="lever">The lever it is part of.</param>
    /// <returns>Torque, infinite where the wall is not known or the hands stand at the tip.</returns>
    public double MouthTorque(LeverGeometry lever) =>
        MouthN / TubeBearing.MouthReaction(1, lever.HandToTipMm, lever.OverlapMm) * lever.ReachMm;
}
