namespace Leverage.Assessments;

/// <summary>Whether to pull.</summary>
public enum Verdict
{
    /// <summary>Nothing known speaks against it.</summary>
    Go,

    /// <summary>It may work; mind what is named.</summary>
    Care,

    /// <summary>Do not: change what is named first.</summary>
    Stop,
}

/// <summary>The rules a verdict is made by.</summary>
[Flags]
public enum VerdictRules
{
    /// <summary>No rule fired.</summary>
    None = 0,

    /// <summary>Stop: a link's limit is below the likely demand.</summary>
    LinkBelowLikely = 1,

    /// <summary>Stop: what holds the wheel is below the likely demand.</summary>
    HoldBelowLikely = 2,

    /// <summary>Stop: the tube slides at the lowest angle while the nut still holds.</summary>
    SlidesWhileHeld = 4,

    /// <summary>Stop: the vehicle is on stands.</summary>
    OnStands = 8,

    /// <summary>Care: a link's limit is below the hard demand.</summary>
    LinkBelowHigh = 16,

    /// <summary>Care: what holds the wheel is below the hard demand.</summary>
    HoldBelowHigh = 32,

    /// <summary>Care: the tube slides at break-loose.</summary>
    SlidesAtRelease = 64,

    /// <summary>Care: something gives first in more than 5 % of cases.</summary>
    MayGive = 128,

    /// <summary>Care: it stays stuck in more than 50 % of cases.</summary>
    MayStayStaysTight = 256,
}

/// <summary>Makes a verdict of what was found, by fixed rules.</summary>
public static class VerdictOf
{
    /// <summary>Chance that something gives above which care is called for (judgement).</summary>
    public const double GivesShare = 0.05;

    /// <summary>Chance that it stays stuck above which care is called for (judgement).</summary>
    public const double StaysTightShare = 0.50;

    internal const VerdictRules Stops = VerdictRules.LinkBelowLikely | VerdictRules.HoldBelowLikely
        | VerdictRules.SlidesWhileHeld | VerdictRules.OnStands;

    /// <summary>The rules that fire for a judged lever.</summary>
    /// <param name="facts">What was found.</param>
    /// <returns>All rules that fire; a stop rule silences its own care rule.</returns>
    public static VerdictRules Fired(VerdictFacts facts)
    {
        var rules = facts.OnStands ? VerdictRules.OnStands : VerdictRules.None;
        rules |= Step(facts.LowestLimitNmm, facts, VerdictRules.LinkBelowLikely, VerdictRules.LinkBelowHigh);
        rules |= Step(facts.HoldNmm, facts, VerdictRules.HoldBelowLikely, VerdictRules.HoldBelowHigh);
        if (facts.HeldRad < facts.BelowLevelRad)
        {
            rules |= VerdictRules.SlidesWhileHeld;
        }
        else if (facts.ReleaseRad < facts.BelowLevelRad)
        {
            rules |= VerdictRules.SlidesAtRelease;
        }

        rules |= facts.Gives > GivesShare ? VerdictRules.MayGive : VerdictRules.None;
        rules |= facts.StaysTight > StaysTightShare ? VerdictRules.MayStayStaysTight : VerdictRules.None;
        return rules;
    }

    /// <summary>The verdict the fired rules make.</summary>
    /// <param name="rules">The rules.</param>
    /// <returns>Stop if any stop rule fired, care if any other did, else go.</returns>
    public static Verdict From(VerdictRules rules) =>
        (rules & Stops) != VerdictRules.None ? Verdict.Stop : rules == VerdictRules.None ? Verdict.Go : Verdict.Care;

    private static VerdictRules Step(double limitNmm, VerdictFacts facts, VerdictRules stop, VerdictRules care) =>
        limitNmm < facts.DemandLikelyNmm ? stop : limitNmm < facts.DemandHighNmm ? care : VerdictRules.None;
}

/// <summary>What a verdict is made of; infinite or zero where something is not judged.</summary>
/// <param name="DemandLikelyNmm">Likely demand, N·mm.</param>
/// <param name="DemandHighNmm">Hard demand, N·mm.</param>
/// <param name="LowestLimitNmm">Lowest link limit, N·mm; infinite with no link.</param>
/// <param name="HoldNmm">What holds the wheel, N·mm; infinite where not judged.</param>
/// <param name="HeldRad">Last safe angle while the nut holds, rad; infinite with no tube.</param>
/// <param name="ReleaseRad">Last safe angle at break-loose, rad; infinite with no tube.</param>
/// <param name="BelowLevelRad">Lowest angle of the swing, rad.</param>
/// <param name="StaysTight">Chance that it stays stuck; 0 where not judged.</param>
/// <param name="Gives">Chance that something gives; 0 where not judged.</param>
/// <param name="OnStands">The vehicle is on stands.</param>
public readonly record struct VerdictFacts(
    double DemandLikelyNmm,
    double DemandHighNmm,
    double LowestLimitNmm,
    double HoldNmm,
    double HeldRad,
    double ReleaseRad,
    double BelowLevelRad,
    double StaysTight,
    double Gives,
    bool OnStands);
