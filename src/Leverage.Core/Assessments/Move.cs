using Leverage.BreakLoose;
using Leverage.Tables;

namespace Leverage.Assessments;

/// <summary>What a move changes.</summary>
public enum MoveEffect
{
    /// <summary>Nothing that is counted: it lets the nut turn at all.</summary>
    None,

    /// <summary>How the tool holds the hexagon.</summary>
    Grip,

    /// <summary>What has grown in the joint.</summary>
    Growth,

    /// <summary>The lever.</summary>
    Lever,

    /// <summary>Who pulls, and how.</summary>
    Person,

    /// <summary>What keeps the other end from turning.</summary>
    Hold,

    /// <summary>The tool.</summary>
    Tool,

    /// <summary>The nut itself: it is destroyed.</summary>
    Cut,
}

/// <summary>One thing to do about a nut that stays tight, from the table <c>moves</c>.</summary>
/// <param name="Key">Its name: <c>soak</c>.</param>
/// <param name="Order">Place in the trade's order.</param>
/// <param name="Words">What to do, in words.</param>
/// <param name="EffortMin">Minutes of work.</param>
/// <param name="WaitMin">Minutes of waiting.</param>
/// <param name="Hazard">What to watch; blank for nothing.</param>
/// <param name="Harms">What it must not meet, in the words of <see cref="Place.Near"/>.</param>
/// <param name="Effect">What it changes.</param>
/// <param name="Size">How much, where a figure is published or judged; null where none is known or it is worked out.</param>
/// <param name="Known">What is known of its effect, in words.</param>
/// <param name="Joint">The special joint it belongs to: <c>staked</c>; null for any.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record Move(
    string Key,
    double Order,
    string Words,
    double EffortMin,
    double WaitMin,
    string Hazard,
    IReadOnlyList<string> Harms,
    MoveEffect Effect,
    double? Size,
    string Known,
    string? Joint,
    string Source,
    ValueStatus Status)
{
    /// <summary>What the table says where nobody published or measured an effect.</summary>
    public const string NoFigure = "no figure known";

    /// <summary>Whether nobody knows how much it helps.</summary>
    public bool HasNoFigure => Known == NoFigure;

    /// <summary>Whether it belongs to a kind of joint and comes before any pull; rounded corners come after.</summary>
    public bool IsOfJoint => Joint is not (null or "rounded");

    /// <summary>All moves, in the trade's order.</summary>
    public static IReadOnlyList<Move> All => [.. TableCatalog.Tables["moves"].Rows.Select(Read).OrderBy(move => move.Order)];

    /// <summary>The moves that fit a joint and what stands near it, in the trade's order.</summary>
    /// <param name="place">Where it sits; null where nobody said: then nothing is left out for what is near.</param>
    /// <param name="joints">What is special about it: <c>staked</c>, <c>rounded</c>; none for an ordinary nut.</param>
    /// <returns>Those for any joint and for these, without those that harm what is near.</returns>
    public static IReadOnlyList<Move> For(Place? place, IReadOnlyCollection<string> joints)
    {
        ArgumentNullException.ThrowIfNull(joints);
        return [.. All.Where(move => (move.Joint is null || joints.Contains(move.Joint, StringComparer.Ordinal)) && !move.Harmed(place).Any())];
    }

    /// <summary>What near a place the move would harm.</summary>
    /// <param name="place">The place; null where nobody said.</param>
    /// <returns>The words, none where nothing is harmed.</returns>
    public IEnumerable<string> Harmed(Place? place) => place is null ? [] : Harms.Intersect(place.Near, StringComparer.Ordinal);

    private static Move Read(TableRow row) => new(
        row.Key,
        row.Number("order"),
        row.Text("words"),
        row.Number("effort_min"),
        row.Number("wait_min"),
        row.OptionalText("hazard") ?? "",
        row.OptionalText("harms")?.Split(' ') ?? [],
        Kind(row),
        row.OptionalNumber("size"),
        row.Text("known"),
        row.OptionalText("joint"),
        row.Source,
        row.Status);

    private static MoveEffect Kind(TableRow row) => row.Text("effect") switch
    {
        "none" => MoveEffect.None,
        "grip" => MoveEffect.Grip,
        "growth" => MoveEffect.Growth,
        "lever" => MoveEffect.Lever,
        "person" => MoveEffect.Person,
        "hold" => MoveEffect.Hold,
        "tool" => MoveEffect.Tool,
        "cut" => MoveEffect.Cut,
        _ => throw row.Error("effect", "none, grip, growth, lever, person, hold, tool or cut"),
    };
}
