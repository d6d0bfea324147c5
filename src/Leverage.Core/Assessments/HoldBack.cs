using Leverage.LoadPath;

namespace Leverage.Assessments;

/// <summary>Where somebody strong enough to break the work stops in time.</summary>
/// <param name="Part">What would break: bolt or stud, or the corners.</param>
/// <param name="TorqueNmm">Torque at the nut to stop at, N·mm.</param>
internal readonly record struct HoldBack(LinkLimit Part, double TorqueNmm)
{
    /// <summary>Share of parts that break below the torque at which one is to stop (judgement).</summary>
    private const double StopShare = 0.05;

    /// <summary>Where to stop; null where damage is no matter of care, or the easiest nut takes more.</summary>
    internal static HoldBack? Of(LooseningAssessment assessment)
    {
        Ruling ruling = assessment.Judgement.Ruling;
        if (((ruling.Stops | ruling.Cares) & (VerdictRules.StudTwistsOff | VerdictRules.CornersRound)) == VerdictRules.None)
        {
            return null;
        }

        LinkLimit part = assessment.Links.Select(link => link.Limit)
            .Where(link => link.Kind is LinkKind.Stud or LinkKind.Corners)
            .MinBy(link => link.Strength.Quantile(StopShare));
        double stop = part.Strength.Quantile(StopShare);
        return stop > assessment.Nut.LowNmm ? new HoldBack(part, stop) : null;
    }
}
