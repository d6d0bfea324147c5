using Leverage.BreakLoose;
using Leverage.Stiffness;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What the heat does to this joint.</summary>
/// <param name="Heating">Which part, by how much.</param>
/// <param name="PreloadShare">Preload left over preload before.</param>
/// <param name="ReleaseAt">How much hotter than the rest the stud must be for its preload to be gone.</param>
/// <param name="FlankOpening">How far the flanks of a hot nut open, in diameter.</param>
/// <param name="AluminiumClearance">How far the thread opens with a steel bolt in warm aluminium, in diameter.</param>
public sealed record HeatAssessment(
    Heating Heating, double PreloadShare, TemperatureDelta ReleaseAt, Length FlankOpening, Length AluminiumClearance)
{
    private static readonly string[] Told = ["nitrile-seal-briefly", "bearing", "grease", "insert-nut", "locker-softens"];

    /// <summary>What may stand near it, and the temperature that stands.</summary>
    public IReadOnlyList<NearbyLimit> Near { get; } = [.. Told.Select(NearbyLimit.Named)];

    /// <summary>What the heat does to a fastener.</summary>
    /// <param name="fastener">The fastener; its thread must be known.</param>
    /// <returns>The assessment, or null where it is not heated or its thread is not known.</returns>
    public static HeatAssessment? Of(Fastener fastener)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        if (fastener is not { Heating: { } heating, Thread: { } thread })
        {
            return null;
        }

        double stress = BreakLooseSpread.Joint(fastener).StressMpa;
        double ratio = BoltedGrip.Of(thread, fastener.Grip, fastener.Clamped).ComplianceRatio;
        double pitchDiameter = thread.PitchDiameterMm;
        return new HeatAssessment(
            heating,
            heating.PreloadShare(stress, ratio),
            TemperatureDelta.FromKelvins(HeatedJoint.ReleaseTemperature(stress, ratio)),
            Length.FromMillimeters(HeatedJoint.DiametralGrowth(pitchDiameter, heating.ByK)),
            Length.FromMillimeters(HeatedJoint.AluminiumClearance(pitchDiameter, heating.ByK)));
    }
}
