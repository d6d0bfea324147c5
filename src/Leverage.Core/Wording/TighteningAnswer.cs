using System.Text.Json.Serialization;
using Leverage.Assessments;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>The answer of <c>leverage tighten --json</c>; the unit stands at the end of each name, shares are 0 to 1.</summary>
/// <param name="PreloadN">Preload at the wanted share of yield.</param>
/// <param name="TorqueNm">Torque that buys it at the likely friction.</param>
/// <param name="TorqueLowNm">Torque for the same preload at the low friction.</param>
/// <param name="TorqueHighNm">Torque for the same preload at the high friction.</param>
/// <param name="Split">Where the torque goes.</param>
/// <param name="NutFactor">K = T/(F·d).</param>
/// <param name="YieldShare">The share of yield aimed at.</param>
/// <param name="LoosenNm">Torque that undoes it at the same preload and friction.</param>
/// <param name="StressAreaMm2">Stress area.</param>
/// <param name="PitchDiameterMm">Pitch diameter.</param>
/// <param name="Unconfirmed">What the figures rest on that is recalled or judged.</param>
public sealed record TighteningAnswer(
    double PreloadN,
    double TorqueNm,
    double TorqueLowNm,
    double TorqueHighNm,
    SplitAnswer Split,
    double NutFactor,
    double YieldShare,
    double LoosenNm,
    double StressAreaMm2,
    double PitchDiameterMm,
    IReadOnlyList<string> Unconfirmed)
{
    /// <summary>What the torque asked about buys; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public InverseAnswer? Inverse { get; init; }

    /// <summary>Where to hang the mass; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ByWeightAnswer? ByWeight { get; init; }

    /// <summary>What to set on the wrench; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public AdapterAnswer? Adapter { get; init; }

    /// <summary>Whether the tapped hole stands it; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StripAnswer? Strip { get; init; }

    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The answer.</returns>
    public static TighteningAnswer Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return new TighteningAnswer(
            assessment.Preload.Newtons,
            assessment.Torque.NewtonMeters,
            assessment.TorqueLow.NewtonMeters,
            assessment.TorqueHigh.NewtonMeters,
            SplitAnswer.Of(assessment.Split),
            assessment.NutFactor,
            assessment.Setup.YieldShare,
            assessment.Loosening.NewtonMeters,
            assessment.StressArea.SquareMillimeters,
            assessment.PitchDiameter.Millimeters,
            UnconfirmedWords.Of(assessment.Setup.Thread, assessment.Grade, assessment.Friction))
        {
            Inverse = InverseAnswer.Of(assessment.Inverse),
            ByWeight = assessment is { HangAt: { } at, Setup.HungMass: { } mass }
                ? new ByWeightAnswer(assessment.Target.NewtonMeters, mass.Kilograms, at.Millimeters)
                : null,
            Adapter = AdapterAnswer.Of(assessment),
            Strip = StripAnswer.Of(assessment),
        };
    }
}

/// <summary>Where a tightening torque goes.</summary>
/// <param name="PitchNm">What stretches the bolt.</param>
/// <param name="ThreadNm">Friction in the thread.</param>
/// <param name="FaceNm">Friction under the head or nut.</param>
public sealed record SplitAnswer(double PitchNm, double ThreadNm, double FaceNm)
{
    internal static SplitAnswer Of(TorqueSplit split) =>
        new(split.Pitch.NewtonMeters, split.Thread.NewtonMeters, split.Face.NewtonMeters);
}

/// <summary>What a torque buys; low is at high friction, high at low friction.</summary>
/// <param name="TorqueNm">The torque asked about.</param>
/// <param name="PreloadN">Preload.</param>
/// <param name="YieldShare">Share of yield.</param>
public sealed record InverseAnswer(double TorqueNm, RangeAnswer PreloadN, RangeAnswer YieldShare)
{
    internal static InverseAnswer? Of(InverseTightening? inverse) => inverse is null ? null : new InverseAnswer(
        inverse.Torque.NewtonMeters,
        new RangeAnswer(inverse.PreloadLow.Newtons, inverse.PreloadLikely.Newtons, inverse.PreloadHigh.Newtons),
        RangeAnswer.Of(inverse.YieldShare));
}

/// <summary>A figure that scatters.</summary>
/// <param name="Low">Low figure.</param>
/// <param name="Likely">Likely figure.</param>
/// <param name="High">High figure.</param>
public sealed record RangeAnswer(double Low, double Likely, double High)
{
    internal static RangeAnswer Of(ShareRange range) => new(range.Low, range.Likely, range.High);
}

/// <summary>Where to hang a known mass on a level bar.</summary>
/// <param name="TorqueNm">The torque aimed at.</param>
/// <param name="MassKg">The mass.</param>
/// <param name="DistanceMm">Distance from the nut's axis.</param>
public sealed record ByWeightAnswer(double TorqueNm, double MassKg, double DistanceMm);

/// <summary>What to set on a torque wrench with an adapter.</summary>
/// <param name="TorqueNm">The torque aimed at.</param>
/// <param name="SettingNm">What to set.</param>
/// <param name="AdapterMm">Wrench square to nut.</param>
/// <param name="WrenchMm">Wrench square to the middle of its grip.</param>
/// <param name="AngleDeg">Adapter against the wrench.</param>
public sealed record AdapterAnswer(
    double TorqueNm, double SettingNm, double AdapterMm, double WrenchMm, double AngleDeg)
{
    internal static AdapterAnswer? Of(TighteningAssessment assessment) =>
        assessment is { AdapterSetting: { } setting, Setup.Adapter: { } fitting }
            ? new AdapterAnswer(
                assessment.Target.NewtonMeters,
                setting.NewtonMeters,
                fitting.Adapter.Millimeters,
                fitting.Wrench.Millimeters,
                fitting.Angle.Degrees)
            : null;
}

/// <summary>Will the bolt break or the thread strip.</summary>
/// <param name="EngagementMm">Length of thread engaged.</param>
/// <param name="Tapped">What it is tapped into.</param>
/// <param name="InternalShearAreaMm2">Area the hole's thread shears over.</param>
/// <param name="ExternalShearAreaMm2">Area the bolt's thread shears over.</param>
/// <param name="StripLoadN">Load at which the weaker of the two strips.</param>
/// <param name="Strips">Which one: <c>hole</c> or <c>bolt</c>.</param>
/// <param name="BreakLoadN">Load at which the bolt breaks.</param>
/// <param name="EngagementToBreakMm">Engagement from which on the bolt breaks first.</param>
/// <param name="Safety">Strip load over the preload aimed at.</param>
public sealed record StripAnswer(
    double EngagementMm,
    string Tapped,
    double InternalShearAreaMm2,
    double ExternalShearAreaMm2,
    double StripLoadN,
    string Strips,
    double BreakLoadN,
    double EngagementToBreakMm,
    double Safety)
{
    internal static StripAnswer? Of(TighteningAssessment assessment) =>
        assessment is { Strip: { } strip, Setup.Tapped: { } hole }
            ? new StripAnswer(
                hole.Engagement.Millimeters,
                hole.Material.Name,
                strip.InternalShearArea.SquareMillimeters,
                strip.ExternalShearArea.SquareMillimeters,
                strip.StripLoad.Newtons,
                strip.HoleStrips ? "hole" : "bolt",
                strip.BreakLoad.Newtons,
                strip.EngagementToBreak.Millimeters,
                strip.Safety)
            : null;
}
