using System.Text.Json.Serialization;
using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>The answer of <c>leverage tighten --json</c>; the unit stands at the end of each name, shares are 0 to 1.</summary>
/// <param name="TorqueNm">Torque to set by the rule.</param>
/// <param name="TargetNm">The torque the rest is about: the one asked about, else the one set.</param>
/// <param name="PreloadN">Preload it makes, with the turn where one follows; low is at high friction.</param>
/// <param name="YieldShare">Share of yield that preload uses, at most 1, where the bolt yields; low is at high friction, high at low friction.</param>
/// <param name="Angle">What the turn does; null for none.</param>
/// <param name="AlphaA">Largest over smallest clamp by the way of tightening.</param>
/// <param name="Verdict"><c>low</c>, <c>fits</c>, <c>high</c>, <c>yields</c>, <c>breaks</c> or <c>strips</c>; null for the nut of an adjustable bearing.</param>
/// <param name="Split">Where the torque goes.</param>
/// <param name="NutFactor">K = T/(F·d).</param>
/// <param name="LoosenNm">Torque that loosens it at the same friction.</param>
/// <param name="StressAreaMm2">Stress area.</param>
/// <param name="PitchDiameterMm">Pitch diameter.</param>
/// <param name="Unconfirmed">What the figures rest on that is recalled or judged.</param>
public sealed record TighteningAnswer(
    double TorqueNm,
    double TargetNm,
    RangeAnswer PreloadN,
    RangeAnswer YieldShare,
    AngleAnswer? Angle,
    double AlphaA,
    string? Verdict,
    SplitAnswer Split,
    double NutFactor,
    double LoosenNm,
    double StressAreaMm2,
    double PitchDiameterMm,
    IReadOnlyList<string> Unconfirmed)
{
    /// <summary>Where to hang the mass; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ByWeightAnswer? ByWeight { get; init; }

    /// <summary>What to set on the wrench; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public AdapterAnswer? Adapter { get; init; }

    /// <summary>What the way to a castle nut's next slot adds; absent unless it is one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CastleAnswer? Castle { get; init; }

    /// <summary>Whether the tapped hole stands it; absent unless asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StripAnswer? Strip { get; init; }

    /// <summary>The answer of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The answer.</returns>
    public static TighteningAnswer Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        JointAssessment result = assessment.Result;
        return new TighteningAnswer(
            assessment.Torque.NewtonMeters,
            assessment.Target.NewtonMeters,
            RangeAnswer.Of(result.End),
            RangeAnswer.Of(result.End.YieldShare),
            AngleAnswer.Of(result.Angle),
            result.Method.AlphaA,
            result.Quote is { } quote ? CheckingAnswer.Word(quote) : null,
            SplitAnswer.Of(assessment.Split),
            assessment.NutFactor,
            result.Loosening.NewtonMeters,
            assessment.StressArea.SquareMillimeters,
            assessment.PitchDiameter.Millimeters,
            UnconfirmedWords.Of(assessment.Result))
        {
            ByWeight = assessment is { HangAt: { } at, Setup.HungMass: { } mass }
                ? new ByWeightAnswer(assessment.Target.NewtonMeters, mass.Kilograms, at.Millimeters)
                : null,
            Adapter = AdapterAnswer.Of(assessment),
            Castle = result.Castle is { } castle
                ? new CastleAnswer(castle.Slots, castle.Step.Degrees, castle.Adds.Newtons, Math.Min(1, castle.YieldShare))
                : null,
            Strip = StripAnswer.Of(result),
        };
    }
}

/// <summary>What the turn after a first torque does, at the likely snug.</summary>
/// <param name="ElasticDeg">The part of the turn before yield.</param>
/// <param name="PreloadN">Preload at its end.</param>
/// <param name="Yields">Whether the bolt yields.</param>
/// <param name="StretchMm">Lasting stretch; 0 while elastic.</param>
public sealed record AngleAnswer(double ElasticDeg, double PreloadN, bool Yields, double StretchMm)
{
    internal static AngleAnswer? Of(AngleFigures? angle) => angle is null
        ? null
        : new AngleAnswer(angle.Elastic.Degrees, angle.Preload.Newtons, angle.Yields, angle.Stretch.Millimeters);
}

/// <summary>The way from one slot of a castle nut to the next.</summary>
/// <param name="Slots">How many slots.</param>
/// <param name="StepDeg">The turn from one to the next.</param>
/// <param name="AddsN">The most preload that way adds.</param>
/// <param name="YieldShare">Share of yield at the likely friction with all of it; 1 where the bolt yields on the way.</param>
public sealed record CastleAnswer(int Slots, double StepDeg, double AddsN, double YieldShare);

/// <summary>Where a tightening torque goes.</summary>
/// <param name="PitchNm">What stretches the bolt.</param>
/// <param name="ThreadNm">Friction in the thread.</param>
/// <param name="FaceNm">Friction under the head or nut.</param>
public sealed record SplitAnswer(double PitchNm, double ThreadNm, double FaceNm)
{
    internal static SplitAnswer Of(TorqueSplit split) =>
        new(split.Pitch.NewtonMeters, split.Thread.NewtonMeters, split.Face.NewtonMeters);
}

/// <summary>A figure that scatters.</summary>
/// <param name="Low">Low figure.</param>
/// <param name="Likely">Likely figure.</param>
/// <param name="High">High figure.</param>
public sealed record RangeAnswer(double Low, double Likely, double High)
{
    internal static RangeAnswer Of(PreloadFigures preloads) =>
        new(preloads.Low.Newtons, preloads.Likely.Newtons, preloads.High.Newtons);

    internal static RangeAnswer Of(ShareRange range) => new(Math.Min(1, range.Low), Math.Min(1, range.Likely), Math.Min(1, range.High));
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
/// <param name="Safety">Strip load over the largest preload the torque can make.</param>
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
    internal static StripAnswer? Of(JointAssessment result) =>
        result is { Strip: { } strip, Setup.Tapped: { } hole }
            ? new StripAnswer(
                hole.Engagement.Millimeters,
                hole.Material.Name,
                strip.InternalShearArea.SquareMillimeters,
                strip.ExternalShearArea.SquareMillimeters,
                strip.StripLoad.Newtons,
                strip.HoleStrips ? "hole" : "bolt",
                strip.BreakLoad.Newtons,
                strip.EngagementToBreak.Millimeters,
                result.StripMargin!.Value)
            : null;
}
