using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Words of a picking: what to take, how it stands, why it loses, what to get.</summary>
public static class PickWords
{
    /// <summary>What to take, from the hands to the nut: "long bar + fence pipe 240 mm on + hub nut socket".</summary>
    /// <param name="place">The place.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line.</returns>
    public static string Tools(Place place, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(style);
        var parts = new List<string>();
        if (place.Set.Tube is { } tube)
        {
            parts.Add($"{tube.Name} {style.Length(place.Assessment.Setup.Overlap)} over");
        }

        parts.AddRange(place.Set.Bar is { } bar ? [bar.Name] : []);
        parts.AddRange(place.Set.Adapters.Select(adapter => adapter.Name));
        parts.Add(Tool(place, style));
        return string.Join(" + ", parts).Replace("over + ", "over ", StringComparison.Ordinal);
    }

    /// <summary>Marks the figure by which a place loses to the one above.</summary>
    public const string LossMark = " ↓";

    /// <summary>How it stands: chance, margin, effort, stance; what it loses by is marked.</summary>
    /// <param name="place">The place.</param>
    /// <returns>One line.</returns>
    public static string Figures(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        string Marked(string figure, Lead lead) => place.LosesBy == lead ? figure + LossMark : figure;
        var parts = new List<string> { Marked($"comes loose {InHundred(place)}", Lead.Chance) };
        if (double.IsFinite(place.Assessment.Judgement.Margin))
        {
            parts.Add(Marked($"safety {Safety(place)}", Lead.Margin));
        }

        parts.Add(Marked($"{Effort(place)} of your pull", Lead.Effort));
        parts.Add(place.Stance.Key);
        parts.AddRange(place.LosesBy is Lead.Pieces ? [Marked("more pieces", Lead.Pieces)] : []);
        return string.Join(" · ", parts);
    }

    /// <summary>Why a place has a worse verdict than the one above: the first rule that fired; empty where it has not.</summary>
    /// <param name="place">The place.</param>
    /// <param name="style">Units.</param>
    /// <returns>A phrase.</returns>
    public static string WorseVerdict(Place place, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.LosesBy == Lead.Verdict ? Lower(Reasons.Of(place.Assessment, style)[0]) : "";
    }

    /// <summary>Why a place stands below another, with the figures of both.</summary>
    /// <param name="place">The place.</param>
    /// <param name="above">The one above it.</param>
    /// <param name="style">Units.</param>
    /// <returns>A phrase.</returns>
    public static string Loss(Place place, Place above, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(above);
        var (own, other) = (place.Standing, above.Standing);
        return place.LosesBy switch
        {
            Lead.Verdict => $"{VerdictWords.Word(own.Verdict)}: {WorseVerdict(place, style)}",
            Lead.Chance => $"less likely: {Percent(own.ComesLoosePercent)} against {Percent(other.ComesLoosePercent)}",
            Lead.Margin => $"less margin, the {Weakest(place, style)}: safety {Safety(place)} against {Safety(above)}",
            Lead.Effort => $"harder work: {Effort(place)} of your pull against {Effort(above)}",
            Lead.Pieces => "more pieces",
            _ => "as good: only later in the chest",
        };
    }

    private static string? Weakest(Place place, UnitStyle style) =>
        place.Assessment.Weakest is { } weakest ? PartWords.Name(weakest.Limit, style) : null;

    /// <summary>What one place leads by, as the answer spells it.</summary>
    /// <param name="lead">The lead.</param>
    /// <returns>verdict, chance, margin, effort, pieces or order.</returns>
    public static string Word(Lead lead) => lead switch
    {
        Lead.Verdict => "verdict",
        Lead.Chance => "chance",
        Lead.Margin => "margin",
        Lead.Effort => "effort",
        Lead.Pieces => "pieces",
        _ => "order",
    };

    /// <summary>A piece to get: "3/4 in bar 1.00 m", "tube 42.4 × 3.2 mm, 1.50 m (42.4x3.2)".</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="style">Units.</param>
    /// <returns>A phrase.</returns>
    public static string Piece(NewPiece piece, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(style);
        return piece switch
        {
            { Bar: { } bar } => $"{bar.Name}, {style.Reach(bar.Length)} long",
            { Tube.Tube: { Outside: { } outside, Wall: { } wall } tube } =>
                $"tube {style.Length(outside)} wide, {style.Length(wall)} wall, {style.Reach(tube.Length)} long",
            _ => $"{piece.Name} {style.Length(piece.Socket!.Sizes[0])}",
        };
    }

    /// <summary>A change that needs no other tools, and what it makes.</summary>
    /// <param name="change">The change.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line.</returns>
    public static string Change(PickChange change, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(change);
        string what = change switch
        {
            { Hold: { } hold } => $"hold the wheel with your {hold.Name} too",
            { Kind: AdviceKind.Helper } => "a helper on the foot brake",
            { Kind: AdviceKind.OnTheGround } => "lower it: wheels on the ground",
            { Kind: AdviceKind.Soak } => "soak it overnight",
            _ => $"heat the stud by {style.Warming(Heat(change.Then))}, with no seal, bearing, grease or tyre near",
        };
        return $"{what}: {Outcome(change.Then, style)}";
    }

    /// <summary>What to borrow or buy, how to use it and what it makes.</summary>
    /// <param name="get">The purchase.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line.</returns>
    public static string Get(Purchase get, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(get);
        string what = string.Join(" and ", get.Pieces.Select(piece => Piece(piece, style)));
        return $"{what}: {Outcome(get.Then, style)}";
    }

    /// <summary>The set-up whose assumptions an answer tells: the first place's, else the nut's alone.</summary>
    internal static LooseningSetup Setup(PickAssessment pick) =>
        pick.Places.Count > 0 ? pick.Places[0].Assessment.Setup : pick.Nut.Setup;

    private static TemperatureDelta Heat(Place then) =>
        TemperatureDelta.FromKelvins(then.Assessment.Setup.Fastener.Heating?.ByK ?? 0);

    private static string Outcome(Place then, UnitStyle style) =>
        $"{VerdictWords.Word(then.Standing.Verdict)}, comes loose {InHundred(then)} ({Tools(then, style)})";

    /// <summary>The tool on the nut; of a set, which one.</summary>
    private static string Tool(Place place, UnitStyle style) =>
        place.Set.Tool.Sizes.Count > 1 && place.Assessment.Setup.Fastener.AcrossFlats is { } flats
            ? $"{place.Set.Tool.Name} {Width(place, style).Length(flats)}"
            : place.Set.Tool.Name;

    /// <summary>Widths across flats are told as the thread is: a 36 mm socket is no 1.417 in one.</summary>
    private static UnitStyle Width(Place place, UnitStyle style) => place.Assessment.Setup.Fastener.Thread?.Family switch
    {
        null => style,
        ThreadFamily.Unified => UnitStyle.Us,
        _ => UnitStyle.Metric,
    };

    private static string Safety(Place place) => UnitStyle.Fixed(place.Assessment.Judgement.Margin, 1);

    private static string Effort(Place place) => UnitStyle.Percent(place.Effort);

    private static string InHundred(Place place) => string.Create(CultureInfo.InvariantCulture, $"{place.Standing.ComesLoosePercent} in 100");

    private static string Percent(int percent) => string.Create(CultureInfo.InvariantCulture, $"{percent} %");

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
