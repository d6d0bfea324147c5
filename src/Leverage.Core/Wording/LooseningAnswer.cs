using System.Text.Json.Serialization;

namespace Leverage.Wording;

/// <summary>A spread of torque: one in ten below low, half below likely, one in ten above high.</summary>
public sealed record TorqueSpread(double LowNm, double LikelyNm, double HighNm);

/// <summary>What it was tightened to: a torque that was given, or a spread from a table or a thread.</summary>
public sealed record StartAnswer(string From)
{
    /// <summary>The torque given; absent otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? TorqueNm { get; init; }

    /// <summary>The turn that followed it; absent where there was none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ThenDeg { get; init; }

    /// <summary>One in ten was tightened to less; absent where it was given.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? LowNm { get; init; }

    /// <summary>Half were tightened to less; absent where it was given.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? LikelyNm { get; init; }

    /// <summary>One in ten was tightened to more; absent where it was given.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? HighNm { get; init; }
}

/// <summary>What the hands give.</summary>
public sealed record HandAnswer(string Stance, double LowN, double LikelyN, double HighN);

/// <summary>The lever: as it is (null with no bar) and as needed.</summary>
public sealed record LeverAnswer(double? ReachMm, double NeededLikelyMm, double NeededHighMm);

/// <summary>One link of the load path; the load is the strong pull, margin is limit over load.</summary>
public sealed record LinkAnswer(string Link, double LimitNm, double LoadNm, double Margin, string Source, bool Confirmed);

/// <summary>The tube; reactions at the strong pull, angles of the bar past square in the direction it moves, at low friction.</summary>
public sealed record TubeAnswer(
    double OverlapMm,
    double HandToTipMm,
    double TipReactionN,
    double MouthReactionN,
    double BendingNm,
    double TiltDeg,
    double Friction,
    string Pushes,
    double SlipAngleDeg,
    double SlipAngleAtEndDeg,
    double? ClampGoneDeg,
    double BestOverlapMm);

/// <summary>What holds the wheel.</summary>
public sealed record HoldAnswer(double CapacityNm, IReadOnlyList<string> By, bool EngineRunning);

/// <summary>What is let loose when it lets go at the strong pull: energy null where the bar is not known.</summary>
public sealed record ReleaseAnswer(double? EnergyJ, double SpeedTurnsMs, double SpeedSnapsMs);

/// <summary>Chances of what happens first; those present sum to 1, those not judged are absent.</summary>
public sealed record OutcomeAnswer(double ComesLoose, double StaysTight)
{
    /// <summary>A tool breaks.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ToolGives { get; init; }

    /// <summary>The bolt or stud twists off.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? StudTwistsOff { get; init; }

    /// <summary>The corners round off.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? CornersRound { get; init; }

    /// <summary>The tube slides off.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? SlidesOff { get; init; }

    /// <summary>The wheel turns.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? WheelTurns { get; init; }

    /// <summary>Of those that come loose, the share in which the tube then slides off.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? SlidesAsItTurns { get; init; }
}

/// <summary>A step, with the chances by then; null where no figure is known.</summary>
public sealed record MoveAnswer(string Key, string Words, double? ComesLooseBy, double? BreaksBy);

/// <summary>For several alike: the chance that one of them breaks and that all come, independent and wholly alike.</summary>
public sealed record CountedAnswer(int Count, double OneBreaksLow, double OneBreaksHigh, double AllComeLow, double AllComeHigh);

/// <summary>The chances drawn by Monte Carlo.</summary>
public sealed record CrossCheckAnswer(int Draws, int StartNumber, double ComesLoose, double StaysTight, double Breaks);

/// <summary>One input moved from its P10 to its P90.</summary>
public sealed record SensitivityAnswer(
    string Input, double NeededLowMm, double NeededHighMm, double ComesLooseLow, double ComesLooseHigh, string Learn);

/// <summary>The answer to "will it come, is it safe, and what do I do next", as a script reads it.</summary>
public sealed record LooseningAnswer(
    TorqueSpread Breakaway,
    StartAnswer Start,
    HandAnswer Hand,
    LeverAnswer Lever,
    double StrongPullNm,
    IReadOnlyList<LinkAnswer> LoadPath,
    string? WeakestLink,
    IReadOnlyList<string> NotJudged,
    TubeAnswer? Tube,
    HoldAnswer? Hold,
    ReleaseAnswer? Release,
    OutcomeAnswer? Outcomes,
    string Safe,
    string Comes,
    string Verdict,
    IReadOnlyList<MoveAnswer> Moves,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<string> Watch,
    IReadOnlyList<string> Assumed)
{
    /// <summary>Several alike, when that was asked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CountedAnswer? Counted { get; init; }

    /// <summary>The same chances by Monte Carlo, when that was asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CrossCheckAnswer? CrossCheck { get; init; }

    /// <summary>Which input moves the answer most, when that was asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<SensitivityAnswer>? WhatMatters { get; init; }
}
