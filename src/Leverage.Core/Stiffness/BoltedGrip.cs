using System.Globalization;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Stiffness;

/// <summary>A steel bolt, thread all through its grip, and what it clamps.</summary>
/// <param name="PitchMm">P, pitch, mm.</param>
/// <param name="GripMm">l, clamped length, mm: also the length of bolt that can stretch.</param>
/// <param name="BoltNPerMm">k_b, stiffness of the bolt, N/mm.</param>
/// <param name="ClampedNPerMm">k_m, stiffness of what it clamps, N/mm.</param>
public readonly record struct BoltedGrip(double PitchMm, double GripMm, double BoltNPerMm, double ClampedNPerMm)
{
    /// <summary>Clamped length over diameter where it is not known (judgement: the middle of usual grips, 1 to 6).</summary>
    public const double UsualDiameters = 3;

    /// <summary>k, compliance of bolt and clamped parts together over the bolt's alone.</summary>
    public double ComplianceRatio => JointStiffness.ComplianceRatio(BoltNPerMm, ClampedNPerMm);

    /// <summary>The grip of a thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="grip">The clamped length; null for three diameters.</param>
    /// <param name="clamped">What is clamped; null for steel.</param>
    /// <returns>The grip.</returns>
    /// <exception cref="InputException">The grip is under a fifth of the diameter or over 50 of it.</exception>
    public static BoltedGrip Of(ScrewThread thread, Length? grip, ClampedMaterial? clamped)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ClampedMaterial material = clamped ?? ClampedMaterial.Steel;
        double d = thread.DiameterMm;
        double l = grip?.Millimeters ?? UsualDiameters * d;
        if (!(l >= 0.2 * d && l <= 50 * d))
        {
            throw new InputException(string.Create(
                CultureInfo.InvariantCulture,
                $"{l:0.##} mm is no grip for {thread.Printed}: it clamps {0.2 * d:0.#} to {50 * d:0.#} mm. Write: {3 * d:0}mm"));
        }

        return new BoltedGrip(
            thread.PitchMm,
            l,
            BoltStiffness.InGrip(d, thread.StressAreaMm2, l, 0, BoltStiffness.SteelModulusMpa),
            ClampedParts.Stiffness(d, l, material.Modulus.Megapascals, material.Factor, material.Exponent));
    }

    /// <summary>Turn that makes a preload, and on the way back lets go of it, rad.</summary>
    /// <param name="preloadN">F, N, 0 or more.</param>
    public double AngleRad(double preloadN) => TurnOfNut.Angle(preloadN, PitchMm, BoltNPerMm, ClampedNPerMm);
}
