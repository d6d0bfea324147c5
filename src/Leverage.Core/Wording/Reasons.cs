using Leverage.Assessments;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Sentences for the rules of a verdict that fired.</summary>
public static class Reasons
{
    /// <summary>One sentence for each rule that fired, the stops first.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>The sentences; none for a clean go.</returns>
    public static IReadOnlyList<string> Of(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        var sentences = new List<string>();
        foreach (VerdictRules rule in Enum.GetValues<VerdictRules>())
        {
            if (rule != VerdictRules.None && assessment.Judgement.Rules.HasFlag(rule))
            {
                sentences.Add(Sentence(rule, assessment, style));
            }
        }

        return sentences;
    }

    private static string Sentence(VerdictRules rule, LooseningAssessment a, UnitStyle style) => rule switch
    {
        VerdictRules.LinkBelowLikely => $"The {Weakest(a, style)} gives before the nut turns: it stands "
            + $"{Nmm(a.Judgement.LowestLimitNmm, style)} of {Nmm(a.Judgement.DemandLikelyNmm, style)} likely.",
        VerdictRules.LinkBelowHigh => $"In the hard case the {Weakest(a, style)} gives: it stands "
            + $"{Nmm(a.Judgement.LowestLimitNmm, style)} of {Nmm(a.Judgement.DemandHighNmm, style)}.",
        VerdictRules.HoldBelowLikely => Held(a, a.Judgement.DemandLikelyNmm, "the wheel turns before the nut does", style),
        VerdictRules.HoldBelowHigh => Held(a, a.Judgement.DemandHighNmm, "in the hard case the wheel turns first", style),
        VerdictRules.SlidesWhileHeld => Slides(a),
        VerdictRules.SlidesAtRelease => "As it breaks loose the jam falls and the tube slides if the bar is more than "
            + $"{Below(a.Tube!.Checked.ReleaseRad)}; the swing goes to {UnitStyle.Angle(a.Setup.PastSquare)}.",
        VerdictRules.OnStands => "The vehicle is on stands: one strong pull can tip it. Do it with the wheels on the ground.",
        VerdictRules.MayGive => $"Something gives first in {UnitStyle.Percent(a.Judgement.Gives)} of cases, "
            + $"mostly the {MostGiving(a, style)}.",
        _ => $"It stays stuck in {UnitStyle.Percent(a.Judgement.StaysTight)} of cases: you likely reach "
            + $"{Nmm(a.Hand.Quantile(0.5) * (a.Lever?.ReachMm ?? 0), style)}.",
    };

    private static string Held(LooseningAssessment a, double demandNmm, string so, UnitStyle style) =>
        a.Hold!.Capacity.TotalNmm > 0
            ? $"What holds the wheel stands {Nmm(a.Hold.Capacity.TotalNmm, style)} against {Nmm(demandNmm, style)}: {so}."
            : "Nothing holds the wheel: the vehicle rolls, or the wheel turns.";

    private static string Slides(LooseningAssessment a) => a.Tube!.Checked.Tangent < 0
        ? "The tube walks off the bar even under a perfectly square pull: too loose or too slippery (a prediction, not yet tested)."
        : a.Tube.Checked.HeldRad < 0
            ? "The tube slides off even with the bar level, while the nut still holds."
            : $"The tube slides off while the nut still holds once the bar is more than {Below(a.Tube.Checked.HeldRad)}; "
                + $"the swing goes to {UnitStyle.Angle(a.Setup.PastSquare)}.";

    private static string Below(double angleRad) => angleRad < 0
        ? $"{UnitStyle.Angle(Angle.FromRadians(-angleRad))} above level"
        : $"{UnitStyle.Angle(Angle.FromRadians(angleRad))} below level";

    private static string MostGiving(LooseningAssessment a, UnitStyle style)
    {
        JudgedLink most = a.Links[0];
        for (int i = 1; i < a.Links.Count; i++)
        {
            most = a.Links[i].Gives > most.Gives ? a.Links[i] : most;
        }

        return PartWords.Name(most.Limit, style);
    }

    private static string Weakest(LooseningAssessment a, UnitStyle style) => PartWords.Name(a.Weakest!.Value.Limit, style);

    private static string Nmm(double torqueNmm, UnitStyle style) => style.Torque(Torque.FromNewtonMillimeters(torqueNmm));
}
