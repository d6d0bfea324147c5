using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Probability;

namespace Leverage.Assessments;

/// <summary>A lever judged on a nut, in bare numbers: the one place where load, outcomes and verdict are worked out.</summary>
/// <param name="StrongPullNmm">Torque that 1 pull in 10 passes before the nut turns or the strength ends, N·mm.</param>
/// <param name="Weakest">Index of the link of least limit; −1 with no link.</param>
/// <param name="LowestLimitNmm">Limit of that link, N·mm; infinite with none.</param>
/// <param name="Shares">Chances of what happens first; all 0 with no lever, where nothing was judged.</param>
/// <param name="Ruling">The verdict and what it rests on.</param>
public readonly record struct Judgement(
    double StrongPullNmm,
    int Weakest,
    double LowestLimitNmm,
    OutcomeShares Shares,
    Ruling Ruling)
{
    /// <summary>Chance that it comes loose.</summary>
    public double ComesLoose => Shares.ComesLoose;

    /// <summary>Chance that it stays tight.</summary>
    public double StaysTight => Shares.StaysTight;

    /// <summary>Chance that something breaks, slides off or turns first.</summary>
    public double Breaks => Shares.Gives + Shares.SlidesOff + Shares.WheelTurns;

    /// <summary>Margin of the weakest link: its limit over the strong pull; infinite with no link.</summary>
    public double Margin => LowestLimitNmm / StrongPullNmm;

    /// <summary>The verdict.</summary>
    public Verdict Verdict => Ruling.Verdict;

    /// <summary>Judges a lever in a person's hands on a nut.</summary>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="reachMm">Nut's axis to middle of the hands, mm; null with no lever.</param>
    /// <param name="links">Links and their limits.</param>
    /// <param name="around">What is judged besides: hold, slide, stands.</param>
    /// <param name="breaks">Filled with the chance that each link breaks first.</param>
    /// <returns>What it is judged to be.</returns>
    public static Judgement Of(
        NutFigures nut, HandFigures hand, double? reachMm, ReadOnlySpan<LinkLimit> links, Circumstances around, Span<double> breaks)
    {
        ArgumentNullException.ThrowIfNull(nut);
        ArgumentNullException.ThrowIfNull(around);
        int weakest = IndexOfWeakest(links);
        double lowest = weakest < 0 ? double.PositiveInfinity : links[weakest].LimitNmm;
        OutcomeShares shares = reachMm is { } arm ? Chances(nut, hand.Torque(arm), links, around, breaks) : default;
        bool tool = false;
        foreach (LinkLimit link in links)
        {
            tool |= link.Kind is LinkKind.Socket or LinkKind.Ring or LinkKind.Open or LinkKind.Key or LinkKind.Square;
        }

        return new Judgement(StrongPull(nut, hand, reachMm), weakest, lowest, shares, VerdictOf.Of(new VerdictFacts
        {
            ComesLoose = shares.ComesLoose,
            ToolGives = shares.ToolGives,
            SlidesOff = shares.SlidesOff,
            WheelTurns = shares.WheelTurns,
            StudTwistsOff = shares.StudTwistsOff,
            CornersRound = shares.CornersRound,
            SlidesAsItTurns = shares.SlidesAsItTurns,
            HandsMs = around.HandsMs,
            Pulled = reachMm is not null,
            ToolJudged = tool && !around.GripUnknown,
            Stands = around.Stands,
            Tube = around.Tube,
        }));
    }

    /// <summary>The torque that 1 pull in 10 passes: nut still tight and hand still able, N·mm.</summary>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="reachMm">Nut's axis to middle of the hands, mm; null with no lever, where the nut alone decides.</param>
    /// <returns>Torque, N·mm.</returns>
    public static double StrongPull(NutFigures nut, HandFigures hand, double? reachMm)
    {
        ArgumentNullException.ThrowIfNull(nut);
        if (reachMm is not { } arm)
        {
            return nut.HighNmm;
        }

        Strength reached = hand.Torque(arm);
        double high = Math.Min(nut.HighNmm, reached.Quantile(0.9));
        return Above(Math.Log(high)) >= 0
            ? high
            : Math.Exp(Root.Between(Math.Min(nut.Spread.LogLow, new LogNormalCurve(reached).Low), Math.Log(high), Above));

        double Above(double logTorque) => nut.Spread.At(logTorque).Survival * reached.At(logTorque).Survival - 0.1;
    }

    /// <summary>A link as a risk: the bolt or stud by the nut's own figures, the corners by their play, anything else as a tool.</summary>
    internal static Risk RiskOf(LinkLimit link, NutFigures nut) => link.Kind switch
    {
        LinkKind.Stud when nut.Stud is { } stud =>
            new Risk(RiskKind.StudTwistsOff, stud with { MedianNmm = stud.MedianNmm * link.MedianOverLimit }),
        LinkKind.Corners => new Risk(RiskKind.CornersRound, link.Strength, link.MedianAt),
        _ => new Risk(RiskKind.ToolGives, link.Strength),
    };

    /// <summary>What holds the wheel as a risk.</summary>
    internal static Risk RiskOf(Strength hold) =>
        new(RiskKind.WheelTurns, hold with { MedianNmm = Math.Max(Risk.LeastNmm, hold.MedianNmm) });

    /// <summary>All that can end a pull besides nut, hand and a sliding tube: the links in their order, then what holds the wheel.</summary>
    internal static Risk[] Risks(NutFigures nut, ReadOnlySpan<LinkLimit> links, Circumstances around)
    {
        var risks = new Risk[links.Length + (around.Hold is null ? 0 : 1)];
        for (int i = 0; i < links.Length; i++)
        {
            risks[i] = RiskOf(links[i], nut);
        }

        if (around.Hold is { } hold)
        {
            risks[^1] = RiskOf(hold);
        }

        return risks;
    }

    private static OutcomeShares Chances(
        NutFigures nut, Strength hand, ReadOnlySpan<LinkLimit> links, Circumstances around, Span<double> breaks)
    {
        Risk[] risks = Risks(nut, links, around);
        Span<double> each = stackalloc double[risks.Length];
        OutcomeShares shares = CompetingRisks.Split(nut.Spread, hand, risks, around.Sliding, each);
        each[..links.Length].CopyTo(breaks);
        return shares;
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
