using Leverage.Probability;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Outcomes;

namespace Leverage.Assessments;

/// <summary>A lever judged on a nut, in bare numbers: the one place where demand, outcomes and verdict are worked out.</summary>
/// <param name="DemandLikelyNmm">Break-loose at P50, no more than the hands' P90 gives, N·mm.</param>
/// <param name="DemandHighNmm">Break-loose at P90, no more than the hands' P90 gives, N·mm.</param>
/// <param name="Weakest">Index of the link of least safety; −1 with no link.</param>
/// <param name="LowestLimitNmm">Limit of that link, N·mm; infinite with none.</param>
/// <param name="Shares">Chances of what happens first; all 0 with no bar, where nothing was judged.</param>
/// <param name="Rules">Rules of the verdict that fire.</param>
public readonly record struct Judgement(
    double DemandLikelyNmm,
    double DemandHighNmm,
    int Weakest,
    double LowestLimitNmm,
    OutcomeShares Shares,
    VerdictRules Rules)
{
    /// <summary>Chance that it comes loose.</summary>
    public double ComesLoose => Shares.ComesLoose;

    /// <summary>Chance that it stays tight.</summary>
    public double StaysTight => Shares.StaysTight;

    /// <summary>Chance that something gives first.</summary>
    public double Gives => Shares.Gives;

    /// <summary>Safety of the weakest link: its limit over the hard demand; infinite with no link.</summary>
    public double Safety => LowestLimitNmm / DemandHighNmm;

    /// <summary>The verdict.</summary>
    public Verdict Verdict => VerdictOf.From(Rules);

    /// <summary>Judges a lever in a person's hands on a nut.</summary>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="reachMm">Nut's axis to middle of the hands, mm; null with no bar.</param>
    /// <param name="links">Links and their limits.</param>
    /// <param name="around">What is judged besides: hold, slip, stands.</param>
    /// <param name="gives">Filled with the chance that each link gives first.</param>
    /// <returns>What it is judged to be; with no bar the chances are all of staying unjudged, 0.</returns>
    public static Judgement Of(
        NutFigures nut, HandFigures hand, double? reachMm, ReadOnlySpan<LinkLimit> links, Surroundings around, Span<double> gives)
    {
        ArgumentNullException.ThrowIfNull(nut);
        double most = reachMm is { } reach ? hand.Quantile(0.9) * reach : double.PositiveInfinity;
        double likely = Math.Min(nut.LikelyNmm, most);
        double high = Math.Min(nut.HighNmm, most);
        int weakest = IndexOfWeakest(links);
        double lowest = weakest < 0 ? double.PositiveInfinity : links[weakest].LimitNmm;
        OutcomeShares shares = reachMm is { } arm ? Chances(nut, hand.Torque(arm), links, gives) : default;
        var rules = VerdictOf.Fired(new VerdictFacts(
            likely, high, lowest, around.HoldNmm, around.HeldRad, around.ReleaseRad, around.BelowLevelRad, shares.StaysTight, shares.Gives, around.OnStands));
        return new Judgement(likely, high, weakest, lowest, shares, rules);
    }

    /// <summary>A link as a risk: the stud by the nut's own figures, anything else as a tool.</summary>
    internal static Risk RiskOf(LinkLimit link, NutFigures nut) => link.Kind == LinkKind.Stud && nut.Stud is { } stud
        ? new Risk(RiskKind.StudTwistsOff, stud with { MedianNmm = stud.MedianNmm * link.MedianOverLimit })
        : new Risk(RiskKind.ToolGives, link.Strength);

    private static OutcomeShares Chances(
        NutFigures nut, Strength hand, ReadOnlySpan<LinkLimit> links, Span<double> gives)
    {
        var risks = new Risk[links.Length];
        for (int i = 0; i < risks.Length; i++)
        {
            risks[i] = RiskOf(links[i], nut);
        }

        return CompetingRisks.Split(nut.Spread, hand, risks, null, gives);
    }

    private static int IndexOfWeakest(ReadOnlySpan<LinkLimit> links)
    {
        int weakest = -1;
        for (int i = 0; i < links.Length; i++)
        {
            weakest = weakest < 0 || links[i].LimitNmm < links[weakest].LimitNmm ? i : weakest;
        }

        return weakest;
    }
}
