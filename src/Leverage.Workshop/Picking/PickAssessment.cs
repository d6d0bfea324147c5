using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A set of tools in its best use: the overlap and the stance in which it stands highest.</summary>
/// <param name="Set">The tools.</param>
/// <param name="Stance">The stance.</param>
/// <param name="Standing">How it stands among the others.</param>
/// <param name="Effort">Likely force needed, as a share of the likely force there is.</param>
/// <param name="Assessment">What it means, in full, without advice.</param>
/// <param name="LosesBy">What the place above is better by; null for the first.</param>
public sealed record Place(
    ToolSet Set, Stance Stance, Standing Standing, double Effort, LooseningAssessment Assessment, Lead? LosesBy);

/// <summary>How many set-ups were tried and how they were judged.</summary>
/// <param name="Sets">Sets of tools that fit together on the nut.</param>
/// <param name="Go">Set-ups judged go: sets at every overlap in every stance.</param>
/// <param name="Care">Set-ups judged care.</param>
/// <param name="Short">Set-ups judged short.</param>
/// <param name="NotJudged">Set-ups of which nothing that could break was judged.</param>
/// <param name="Stop">Set-ups judged stop.</param>
public readonly record struct PickTally(int Sets, int Go, int Care, int Short, int NotJudged, int Stop)
{
    /// <summary>All set-ups.</summary>
    public int Setups => Go + Care + Short + NotJudged + Stop;
}

/// <summary>A change that needs no other tools, and the best that can then be done with the chest.</summary>
/// <param name="Kind">The change.</param>
/// <param name="Hold">What of the chest is to hold the wheel besides, if that is the change.</param>
/// <param name="Then">The best use of the chest with it.</param>
public sealed record PickChange(AdviceKind Kind, ChestHold? Hold, Place Then);

/// <summary>Pieces to borrow or buy, and the best that can then be done.</summary>
/// <param name="Pieces">What to get, in the trade's words.</param>
/// <param name="Mass">What the bars and tubes among it weigh: the smaller, the smaller the change.</param>
/// <param name="Then">The best use of the chest with it.</param>
public sealed record Purchase(IReadOnlyList<NewPiece> Pieces, Mass Mass, Place Then);

/// <summary>Which set-up of a chest is best for a nut, and what would make a better one.</summary>
public sealed record PickAssessment
{
    /// <summary>Most places shown.</summary>
    public const int MostPlaces = 5;

    /// <summary>What was asked.</summary>
    public required PickRequest Request { get; init; }

    /// <summary>The nut with no lever on it: what it takes.</summary>
    public required LooseningAssessment Nut { get; init; }

    /// <summary>What was tried.</summary>
    public required PickTally Tally { get; init; }

    /// <summary>The best sets of tools, each in its best use, best first; none where nothing fits.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>Changes that need no other tools, where nothing is a go: those that make one, else the one that helps most.</summary>
    public IReadOnlyList<PickChange> Changes { get; init; } = [];

    /// <summary>What to borrow or buy where nothing is a go: what makes one, smallest first, else what helps most.</summary>
    public IReadOnlyList<Purchase> ToGet { get; init; } = [];

    /// <summary>Whether a change or a purchase makes a go.</summary>
    public bool CanGo => Changes.Any(change => IsGo(change.Then)) || ToGet.Any(get => IsGo(get.Then));

    /// <summary>The verdict on the first place; stop where nothing fits.</summary>
    public Verdict Verdict => Places.Count > 0 ? Places[0].Assessment.Verdict : Verdict.Stop;

    private static bool IsGo(Place place) => place.Standing.Verdict == Verdict.Go;
}
