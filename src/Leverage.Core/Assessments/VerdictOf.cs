namespace Leverage.Assessments;

/// <summary>What a verdict is made of; a chance that is not judged is 0.</summary>
public readonly record struct VerdictFacts
{
    /// <summary>Chance that the nut comes loose.</summary>
    public double ComesLoose { get; init; }

    /// <summary>Chance that a tool breaks first.</summary>
    public double ToolGives { get; init; }

    /// <summary>Chance that the tube slides off first.</summary>
    public double SlidesOff { get; init; }

    /// <summary>Chance that the wheel turns first.</summary>
    public double WheelTurns { get; init; }

    /// <summary>Chance that the bolt or stud twists off first.</summary>
    public double StudTwistsOff { get; init; }

    /// <summary>Chance that the corners round off first.</summary>
    public double CornersRound { get; init; }

    /// <summary>Of the pulls that loosen the nut, the share in which the tube then slides off.</summary>
    public double SlidesAsItTurns { get; init; }

    /// <summary>Speed of the hands when it lets go, m/s; 0 where not known.</summary>
    public double HandsMs { get; init; }

    /// <summary>Whether a lever and a force are known.</summary>
    public bool Pulled { get; init; }

    /// <summary>Whether a socket, spanner, key or square was judged.</summary>
    public bool ToolJudged { get; init; }

    /// <summary>What the pull does to a vehicle on stands.</summary>
    public Safe Stands { get; init; }

    /// <summary>Whether the tube stands what the stance pushes.</summary>
    public Safe Tube { get; init; }
}

/// <summary>The verdict with what it rests on.</summary>
/// <param name="Stops">Rules that call for a stop.</param>
/// <param name="Cares">Rules that call for care.</param>
/// <param name="Safe">Is it safe?</param>
/// <param name="Comes">Will it come?</param>
/// <param name="Verdict">Whether to pull.</param>
public readonly record struct Ruling(VerdictRules Stops, VerdictRules Cares, Safe Safe, Comes Comes, Verdict Verdict);

/// <summary>Makes a verdict of what was found. Every threshold stands here, each our own.</summary>
public static class VerdictOf
{
    /// <summary>Chance of harm to a person above which it is not safe (judgement).</summary>
    public const double HurtStop = 0.10;

    /// <summary>Chance of harm to a person above which care is called for (judgement).</summary>
    public const double HurtCare = 0.02;

    /// <summary>Chance of damage to the work above which it is not safe (judgement).</summary>
    public const double DamageStop = 0.25;

    /// <summary>Chance of damage to the work above which care is called for (judgement).</summary>
    public const double DamageCare = 0.05;

    /// <summary>Share of loosening pulls in which the tube slides off, above which care is called for (judgement).</summary>
    public const double SlidingCare = 0.05;

    /// <summary>Speed of the hands above which care is called for, m/s (judgement).</summary>
    public const double FastMs = 3;

    /// <summary>Chance from which a nut likely comes (judgement).</summary>
    public const double LikelyShare = 0.50;

    /// <summary>Chance from which a nut perhaps comes (judgement).</summary>
    public const double MaybeShare = 0.20;

    /// <summary>Share of the harm or damage from which a cause is named: of three alike each is.</summary>
    private const double Named = 0.3;

    /// <summary>The ruling on what was found.</summary>
    /// <param name="facts">What was found.</param>
    /// <returns>Stop where it is not safe, else not judged, else short where it likely stays tight, else care, else go.</returns>
    public static Ruling Of(VerdictFacts facts)
    {
        VerdictRules stops = At(facts, HurtStop, DamageStop) | Where(Safe.No, facts);
        VerdictRules cares = (At(facts, HurtCare, DamageCare) | Where(Safe.Care, facts)
            | (facts.SlidesAsItTurns > SlidingCare ? VerdictRules.SlidesAsItTurns : VerdictRules.None)
            | (facts.HandsMs > FastMs ? VerdictRules.FastHands : VerdictRules.None)) & ~stops;
        bool judged = facts is { Pulled: true, ToolJudged: true };
        Safe safe = stops != VerdictRules.None ? Safe.No : !judged ? Safe.NotJudged : cares != VerdictRules.None ? Safe.Care : Safe.Yes;
        Comes comes = !facts.Pulled ? Comes.NotJudged
            : facts.ComesLoose >= LikelyShare ? Comes.Likely
            : facts.ComesLoose >= MaybeShare ? Comes.Maybe
            : Comes.No;
        return new Ruling(stops, cares, safe, comes, Verdict(safe, comes));
    }

    private static Verdict Verdict(Safe safe, Comes comes) => safe switch
    {
        Safe.No => Assessments.Verdict.Stop,
        Safe.NotJudged => Assessments.Verdict.NotJudged,
        _ when comes != Comes.Likely => Assessments.Verdict.Short,
        Safe.Care => Assessments.Verdict.Care,
        _ => Assessments.Verdict.Go,
    };

    private static VerdictRules At(VerdictFacts facts, double hurtAbove, double damageAbove)
    {
        double hurt = facts.ToolGives + facts.SlidesOff + facts.WheelTurns;
        double damage = facts.StudTwistsOff + facts.CornersRound;

        // A pull that likelier ruins the work than frees it is none to make, however rarely it does either.
        damageAbove = Math.Min(damageAbove, Math.Max(DamageCare, facts.ComesLoose));
        VerdictRules Cause(double share, double of, double above, VerdictRules rule) =>
            of > above && share >= Named * of ? rule : VerdictRules.None;
        return Cause(facts.ToolGives, hurt, hurtAbove, VerdictRules.ToolGives)
            | Cause(facts.SlidesOff, hurt, hurtAbove, VerdictRules.SlidesOff)
            | Cause(facts.WheelTurns, hurt, hurtAbove, VerdictRules.WheelTurns)
            | Cause(facts.StudTwistsOff, damage, damageAbove, VerdictRules.StudTwistsOff)
            | Cause(facts.CornersRound, damage, damageAbove, VerdictRules.CornersRound);
    }

    private static VerdictRules Where(Safe level, VerdictFacts facts) =>
        (facts.Stands == level ? VerdictRules.OnStands : VerdictRules.None) | (facts.Tube == level ? VerdictRules.TubeBelowPush : VerdictRules.None);
}
