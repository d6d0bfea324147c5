using Leverage.Friction;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>How a torque sits with a joint.</summary>
public enum TorqueVerdict
{
    /// <summary>It tightens the bolt well and does not yield it.</summary>
    Fits,

    /// <summary>It leaves the bolt loose.</summary>
    Low,

    /// <summary>It takes the bolt near yield, or past it where friction is low.</summary>
    High,

    /// <summary>It yields the bolt at the likely friction.</summary>
    Yields,

    /// <summary>It twists the bolt off at the likely friction.</summary>
    Breaks,

    /// <summary>It strips the thread of the tapped hole, or of the bolt in it, at the low friction if not before.</summary>
    Strips,
}

/// <summary>What a torque to set is held down by.</summary>
public enum TorqueLimit
{
    /// <summary>The share of yield wanted at the likely friction.</summary>
    YieldShare,

    /// <summary>Yield at the low friction.</summary>
    LowFriction,

    /// <summary>The thread of the tapped hole, or of the bolt in it.</summary>
    Thread,
}

/// <summary>The one rule by which a torque is set and a torque is judged.</summary>
public static class TighteningRule
{
    /// <summary>Least share of yield at likely friction (judgement: less may work loose).</summary>
    public const double LeastShare = 0.45;

    /// <summary>Largest share of yield at likely friction (judgement: 90 % and what tables round).</summary>
    public const double MostShare = 0.95;

    /// <summary>Share of yield at low friction that a torque is set to at most: it just yields.</summary>
    public const double SetAtLow = 1;

    /// <summary>Largest share of yield at low friction that still fits (judgement: a printed yield is a least one).</summary>
    public const double MostAtLow = 1.05;

    /// <summary>Largest share of what strips the thread that a torque is set to at low friction (judgement: as the bolt's own 90 % of yield).</summary>
    public const double MostOfStrip = 0.9;

    /// <summary>Lowest friction looked at: the low end of the slipperiest class (VDI 2230 class A).</summary>
    public const double LeastFriction = 0.04;

    /// <summary>Highest friction looked at: past the driest class.</summary>
    public const double MostFriction = 0.5;

    /// <summary>
    /// The torque to set: the smaller of a share of yield at the likely friction and just yield at the low one, and no more
    /// than the thread it goes into holds.
    /// </summary>
    /// <param name="joint">The joint.</param>
    /// <param name="friction">Its friction.</param>
    /// <param name="yieldShare">Share of yield wanted at the likely friction.</param>
    /// <param name="strips">Load at which the thread strips; null where that is not known.</param>
    /// <returns>The torque, N·mm, and what sets it.</returns>
    public static (double TorqueNmm, TorqueLimit By) Set(BoltedJoint joint, FrictionRange friction, double yieldShare, Force? strips = null)
    {
        double likely = joint.AtYieldShare(yieldShare, friction.Likely).TorqueNmm;
        double low = joint.AtYieldShare(SetAtLow, friction.Low).TorqueNmm;
        return strips is { } load && joint.AtPreload(MostOfStrip * load.Newtons, friction.Low).TorqueNmm is var thread && thread < Math.Min(low, likely)
            ? (thread, TorqueLimit.Thread)
            : low < likely ? (low, TorqueLimit.LowFriction) : (likely, TorqueLimit.YieldShare);
    }

    /// <summary>Judges shares of yield.</summary>
    /// <param name="share">Shares of yield; high is at the low friction.</param>
    /// <returns>The verdict.</returns>
    public static TorqueVerdict Judge(ShareRange share) =>
        share.Likely > 1 ? TorqueVerdict.Yields
        : share.Likely > MostShare || share.High > MostAtLow ? TorqueVerdict.High
        : share.Likely < LeastShare ? TorqueVerdict.Low
        : TorqueVerdict.Fits;
}
