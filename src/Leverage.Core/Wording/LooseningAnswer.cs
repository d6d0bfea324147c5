using System.Text.Json.Serialization;

namespace Leverage.Wording;

/// <summary>A spread of torque: one in ten below low, half below likely, one in ten above high.</summary>
public sealed record TorqueSpread(double LowNm, double LikelyNm, double HighNm);

/// <summary>What the hands give.</summary>
public sealed record HandAnswer(string Stance, double LowN, double LikelyN, double HighN);

/// <summary>The lever: as it is (null with no bar) and as needed.</summary>
public sealed record LeverAnswer(
    double? ReachMm, double NeededLikelyMm, double NeededHighMm, double? HandForceLikelyN, double? HandForceHighN);

/// <summary>One link of the load path; safety is limit over the high demand.</summary>
public sealed record LinkAnswer(
    string Link, double DemandLikelyNm, double DemandHighNm, double LimitNm, double Safety, string Source);

/// <summary>The tube; reactions at the likely break-loose, slip angles of the bar below level for a straight-down push.</summary>
public sealed record TubeAnswer(
    double OverlapMm,
    double HandToTipMm,
    double TipReactionN,
    double MouthReactionN,
    double BendingNm,
    double TiltDeg,
    double Friction,
    double SlipAngleDeg,
    double SlipAngleAtReleaseDeg,
    double BestOverlapMm);

/// <summary>What holds the wheel.</summary>
public sealed record HoldAnswer(double DemandNm, double CapacityNm, double Safety, IReadOnlyList<string> By);

/// <summary>What is let loose when it lets go.</summary>
public sealed record ReleaseAnswer(double? EnergyJ, double SpeedTurnsMs, double SpeedSnapsMs);

/// <summary>The three chances; they sum to 1.</summary>
public sealed record OutcomeAnswer(double ComesLoose, double StaysTight, double Gives);

/// <summary>The chances drawn by Monte Carlo.</summary>
public sealed record CrossCheckAnswer(int Samples, int Seed, double ComesLoose, double StaysTight, double Gives);

/// <summary>One input moved from its P10 to its P90.</summary>
public sealed record SwingAnswer(
    string Input, double NeededLowMm, double NeededHighMm, double ComesLooseLow, double ComesLooseHigh, string Learn);

/// <summary>The answer to "what does it take to undo this one", as a script reads it.</summary>
public sealed record LooseningAnswer(
    double BookTorqueNm,
    TorqueSpread Breakaway,
    HandAnswer Hand,
    LeverAnswer Lever,
    IReadOnlyList<LinkAnswer> LoadPath,
    string? WeakestLink,
    TubeAnswer? Tube,
    HoldAnswer? Hold,
    ReleaseAnswer? Release,
    OutcomeAnswer? Outcomes,
    string Verdict,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<string> Advice,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<string> Unconfirmed)
{
    /// <summary>The same chances by Monte Carlo, when that was asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CrossCheckAnswer? CrossCheck { get; init; }

    /// <summary>Which input moves the answer most, when that was asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<SwingAnswer>? WhatMatters { get; init; }
}
