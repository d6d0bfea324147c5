using Leverage.Assessments;

namespace Leverage.Workshop.Picking;

/// <summary>What one set-up is better by than the next, in the order it counts.</summary>
public enum Lead
{
    /// <summary>The verdict.</summary>
    Verdict,

    /// <summary>The chance that the nut comes loose.</summary>
    Chance,

    /// <summary>The margin of the weakest link.</summary>
    Margin,

    /// <summary>The effort of the hands.</summary>
    Effort,

    /// <summary>The number of pieces.</summary>
    Pieces,

    /// <summary>Nothing but the order in the chest.</summary>
    Order,
}

/// <summary>
/// How a set-up stands among others: verdict, then chance to come loose, then margin, then effort, then pieces. Chance and
/// effort count by the whole percent and margin by the tenth, for no model of a rusty nut knows more; a safety of
/// 2 is ample and a pull of half the likely force easy, so that no small nut gets the stoutest bar and the longest tube.
/// </summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="ComesLoosePercent">Chance that it comes loose, %.</param>
/// <param name="SafetyTenths">Safety of the weakest link, tenths, 20 for anything ample.</param>
/// <param name="EffortPercent">Likely force needed over the likely force there is, %, 50 for anything easy.</param>
/// <param name="Pieces">Pieces to put together.</param>
public readonly record struct Standing(Verdict Verdict, int ComesLoosePercent, int SafetyTenths, int EffortPercent, int Pieces)
    : IComparable<Standing>
{
    private const double MostEffort = 1000;

    /// <summary>Safety above which a link is strong enough and more is no better (judgement).</summary>
    private const double Ample = 2;

    /// <summary>Points of chance worth a change (judgement).</summary>
    private const int WorthPercent = 5;

    /// <summary>Share of the likely force below which a pull is easy and less is no better (judgement).</summary>
    private const double Easy = 0.5;

    /// <summary>The standing of a judged set-up.</summary>
    /// <param name="judgement">What it was judged to be.</param>
    /// <param name="effort">Likely force needed, as a share of the likely force there is.</param>
    /// <param name="pieces">Pieces to put together.</param>
    /// <returns>The standing.</returns>
    public static Standing Of(Judgement judgement, double effort, int pieces) => new(
        judgement.Verdict,
        (int)Math.Round(100 * judgement.ComesLoose),
        (int)Math.Round(10 * Math.Min(Ample, judgement.Margin)),
        (int)Math.Round(100 * Math.Clamp(effort, Easy, MostEffort)),
        pieces);

    /// <summary>Below 0 when this one is the better.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The sign of the first difference that counts.</returns>
    public int CompareTo(Standing other) =>
        Verdict != other.Verdict ? Verdict.CompareTo(other.Verdict)
            : ComesLoosePercent != other.ComesLoosePercent ? other.ComesLoosePercent.CompareTo(ComesLoosePercent)
            : SafetyTenths != other.SafetyTenths ? other.SafetyTenths.CompareTo(SafetyTenths)
            : EffortPercent != other.EffortPercent ? EffortPercent.CompareTo(other.EffortPercent)
            : Pieces.CompareTo(other.Pieces);

    /// <summary>What this one is better by than one that stands below it.</summary>
    /// <param name="below">The one below.</param>
    /// <returns>The first difference that counts.</returns>
    public Lead Over(Standing below) =>
        Verdict != below.Verdict ? Lead.Verdict
            : ComesLoosePercent != below.ComesLoosePercent ? Lead.Chance
            : SafetyTenths != below.SafetyTenths ? Lead.Margin
            : EffortPercent != below.EffortPercent ? Lead.Effort
            : Pieces != below.Pieces ? Lead.Pieces
            : Lead.Order;

    /// <summary>Whether this one is enough better than another to change something for it: a better verdict, or five points of chance.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if it is.</returns>
    public bool IsWorthMoreThan(Standing other) =>
        Verdict != other.Verdict ? Verdict < other.Verdict : ComesLoosePercent >= other.ComesLoosePercent + WorthPercent;

    /// <summary>Whether the left one is the better.</summary>
    public static bool operator <(Standing left, Standing right) => left.CompareTo(right) < 0;

    /// <summary>Whether the right one is the better.</summary>
    public static bool operator >(Standing left, Standing right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left one is no worse.</summary>
    public static bool operator <=(Standing left, Standing right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the right one is no worse.</summary>
    public static bool operator >=(Standing left, Standing right) => left.CompareTo(right) >= 0;
}
