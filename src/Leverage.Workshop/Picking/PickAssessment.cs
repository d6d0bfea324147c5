using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Requests;

namespace Leverage.Workshop.Picking;

/// <summary>A set of tools in its best use: the overlap and the stance in which it ranks highest.</summary>
/// <param name="Set">The tools.</param>
/// <param name="Stance">The stance.</param>
/// <param name="Request">The whole of it as a request.</param>
/// <param name="Effort">Likely force needed, as a share of the likely force there is.</param>
/// <param name="Assessment">What it means, in full, without moves.</param>
public sealed record PickedSetUp(ToolSet Set, Stance Stance, LooseningRequest Request, double Effort, LooseningAssessment Assessment);

/// <summary>How many set-ups were tried and how they were judged.</summary>
/// <param name="Sets">Sets of tools that fit together on the nut.</param>
/// <param name="Go">Set-ups judged go: sets at every overlap in every stance.</param>
/// <param name="Care">Set-ups judged care.</param>
/// <param name="Short">Set-ups judged short.</param>
/// <param name="NotJudged">Set-ups not judged.</param>
/// <param name="Stop">Set-ups judged stop.</param>
public readonly record struct PickTally(int Sets, int Go, int Care, int Short, int NotJudged, int Stop)
{
    /// <summary>All set-ups.</summary>
    public int Setups => Go + Care + Short + NotJudged + Stop;
}

/// <summary>Which set-up of a chest to take first for a nut, and what to do if it stays tight.</summary>
public sealed record PickAssessment
{
    /// <summary>Most set-ups shown.</summary>
    public const int Most = 3;

    /// <summary>What was asked.</summary>
    public required PickRequest Request { get; init; }

    /// <summary>The nut with no lever on it: what it takes.</summary>
    public required LooseningAssessment Nut { get; init; }

    /// <summary>What was tried.</summary>
    public required PickTally Tally { get; init; }

    /// <summary>The best sets of tools, each in its best use, best first; none where nothing fits.</summary>
    public required IReadOnlyList<PickedSetUp> SetUps { get; init; }

    /// <summary>What to do, one step after another, the first set-up first.</summary>
    public IReadOnlyList<LadderStep> Moves { get; init; } = [];

    /// <summary>Every set of tools in its best use.</summary>
    internal IReadOnlyList<ToolOption> Options { get; init; } = [];

    /// <summary>The same with what to do, where that was left out.</summary>
    internal PickAssessment Advised() => this with { Moves = Picker.Moves(this) };

    /// <summary>The verdict on the first set-up; not judged where nothing fits.</summary>
    public Verdict Verdict => SetUps.Count > 0 ? SetUps[0].Assessment.Verdict : Verdict.NotJudged;
}
