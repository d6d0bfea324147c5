using Leverage.Assessments;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>The words that teach why a slipped-over extension comes off, with this set-up's own figures.</summary>
public static class SlipWords
{
    /// <summary>The case in one line.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>Bore, overlap, bar and handle.</returns>
    public static string Title(SlipAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        SlipSetup setup = assessment.Setup;
        return $"A tube of {style.Length(setup.Tube.Bore)} bore, {style.Length(setup.Overlap)} on a "
            + $"{style.Length(setup.Bar.Diameter!.Value)} bar, handle {setup.GripWords}";
    }

    /// <summary>The three states, in order: while the nut holds, at break-loose, if something snaps.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>State, last safe angle, what happens.</returns>
    public static IReadOnlyList<(string State, string Angle, string What)> States(SlipAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        SlipAngles angles = assessment.Here.Checked;
        string left = UnitStyle.Percent(assessment.Setup.RunningShare);
        return
        [
            ("while it holds", Safe(angles.HeldRad), "the harder you pull, the harder it jams: force makes no difference, the angle does"),
            ("at break-loose", Safe(angles.ReleaseRad), $"the torque falls to {left} and the jam with it; you still push as before"),
            ("if something snaps", Safe(angles.SnapRad), "no jam is left: any outward pull takes the tube off"),
        ];
    }

    /// <summary>What makes it worse, in the order it matters here.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Worse(SlipAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        var lines = new List<string>();
        int here = Nearest(assessment, assessment.Here.OverlapMm);
        lines.Add("oil or grease on the handle: " + string.Join(", ", assessment.Curves.Select(
            curve => $"{curve.State} {Safe(curve.HeldRad[here])}")));
        lines.Add($"a loose tube: yours has {UnitStyle.Percent(assessment.PlayShare)} play and hangs {Deg(assessment.Here.TiltRad)}; "
            + $"a snug one would hold to {Safe(assessment.SnugRad)}"
            + (assessment.PlayShare > Tube.LoosePlayShare ? " (over 15 % is loose)" : ""));
        lines.Add($"a long overlap: {Length(assessment.Rows[^1].OverlapMm, style)} holds to {Safe(assessment.Rows[^1].Checked.HeldRad)}, "
            + "gentle on the tube, yet it slides sooner");
        lines.Add($"a short overlap: {Length(assessment.Rows[0].OverlapMm, style)} tilts {Deg(assessment.Rows[0].TiltRad)} "
            + $"and holds to {Safe(assessment.Rows[0].Checked.HeldRad)}; the tube gives at {style.Force(Force.FromNewtons(assessment.Rows[0].GivesAtN))} of your hands");
        lines.Add("a handle that tapers to its end, and bouncing: every swing unloads the jam and the tube walks outward");
        return lines;
    }

    /// <summary>What helps, best first.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Helps(SlipAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        SlipRow best = assessment.Best;
        var lines = new List<string>
        {
            $"push it on {Length(best.OverlapMm, style)}: holds to {Safe(best.Checked.HeldRad)}, the best this tube stands at "
                + $"{style.Force(Force.FromNewtons(assessment.HandN))} of your hands",
            $"start with the bar above level and stop {StopAt(assessment)}",
            "degrease handle and tube; file the mouth square; a pin or bolt through both beats all friction",
        };
        if (assessment.TippingRatio is { } ratio)
        {
            lines.Add($"the lever stands {UnitStyle.Fixed(ratio, 1)} times as far off as the socket sits deep: "
                + (ratio > 1 ? "support the head with a hand or a stand, or it tips off the nut" : "little tipping, a hand under the head is enough"));
        }

        return lines;
    }

    /// <summary>The one-line judgement.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>A sentence.</returns>
    public static string Verdict(SlipAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        string swing = UnitStyle.Angle(assessment.Setup.PastSquare);
        return assessment switch
        {
            { WalksOff: true } => "It walks off the bar even under a perfectly square pull: too loose or too slippery (a prediction, not yet tested).",
            { SlidesWhileHeld: true } => $"It slides off while the nut still holds, before the bar is {swing} below level.",
            { SlidesAtRelease: true } => $"It stays on while the nut holds, and slides as it breaks loose if the bar is then {swing} below level.",
            _ => $"It stays on through a swing to {swing} below level, unless something snaps.",
        };
    }

    private static string StopAt(SlipAssessment assessment) => assessment.Here.Checked.ReleaseRad > 0
        ? $"{Deg(assessment.Here.Checked.ReleaseRad)} below it: safe even as it lets go"
        : "well above it: it slides from a level bar as it lets go";

    private static int Nearest(SlipAssessment assessment, double overlapMm)
    {
        int nearest = 0;
        for (int i = 1; i < assessment.Rows.Count; i++)
        {
            bool nearer = Math.Abs(assessment.Rows[i].OverlapMm - overlapMm) < Math.Abs(assessment.Rows[nearest].OverlapMm - overlapMm);
            nearest = nearer ? i : nearest;
        }

        return nearest;
    }

    /// <summary>A last safe angle of the bar in words.</summary>
    /// <param name="angleRad">Angle below level, rad.</param>
    /// <returns>"38° below level", or above level where negative.</returns>
    public static string Safe(double angleRad) => angleRad < 0 ? $"{Deg(-angleRad)} above level" : $"{Deg(angleRad)} below level";

    private static string Deg(double angleRad) => $"{UnitStyle.Fixed(double.RadiansToDegrees(angleRad), 0)}°";

    private static string Length(double lengthMm, UnitStyle style) => style.Length(UnitsNet.Length.FromMillimeters(lengthMm));
}
