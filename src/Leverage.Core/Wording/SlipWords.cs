using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>The words that teach why a slipped-over tube comes off, with this set-up's own figures.</summary>
internal static class SlipWords
{
    /// <summary>The case in one line.</summary>
    internal static string Title(SlipAssessment assessment, UnitStyle style)
    {
        SlipSetup setup = assessment.Setup;
        return $"Tube of {style.Length(setup.Tube.Bore)} bore, {style.Length(setup.Overlap)} on a "
            + $"{style.Length(setup.Bar.Diameter!.Value)} bar, surface {setup.Surface.Words}";
    }

    /// <summary>The judgement in one sentence.</summary>
    internal static string Verdict(SlipAssessment assessment)
    {
        VerdictRules why = assessment.Ruling.Stops != VerdictRules.None ? assessment.Ruling.Stops : assessment.Ruling.Cares;
        return why switch
        {
            _ when why.HasFlag(VerdictRules.SlidesOff) && assessment.SlidesAtSquare => "The tube slides off even at a square pull.",
            _ when why.HasFlag(VerdictRules.SlidesOff) => "The tube can slide off as the pull begins.",
            _ when why.HasFlag(VerdictRules.TubeBelowPush) => assessment.Ruling.Stops != VerdictRules.None
                ? "The tube breaks below your likely force." : "The tube breaks below a strong pull.",
            _ when why.HasFlag(VerdictRules.SlidesAsItTurns) => "The tube stays on while the nut holds, and can slide off as the nut turns.",
            _ => $"The tube stays on through your swing, to {Angle(assessment, assessment.Setup.PastSquare.Radians)}, unless something snaps.",
        };
    }

    /// <summary>What speaks for care or stop.</summary>
    internal static IReadOnlyList<string> Reasons(SlipAssessment assessment, UnitStyle style)
    {
        Ruling ruling = assessment.Ruling;
        return [.. Wording.Reasons.Rules(ruling.Stops).Concat(Wording.Reasons.Rules(ruling.Cares)).Select(rule => rule switch
        {
            VerdictRules.SlidesOff => $"The tube slides off as the pull begins: {UnitStyle.InHundred(assessment.SlidesOff)} pulls"
                + (assessment.SlidesAtSquare ? " (a prediction, not yet tested)." : "."),
            VerdictRules.SlidesAsItTurns => Wording.Reasons.SlidesAsItTurns(assessment.SlidesAsItTurns),
            _ => Wording.Reasons.TubeBelowPush(assessment.WeakestAt(assessment.Here), assessment.Here.GivesAtN, assessment.Hand, ruling, style),
        })];
    }

    /// <summary>What happens first: what speaks for care or stop, else that nothing of the tube does.</summary>
    internal static string First(SlipAssessment assessment, UnitStyle style) => Reasons(assessment, style) is [var reason, ..]
        ? reason
        : $"{(assessment.Setup.Fastener is null ? "Your strength ends" : "The nut turns or your strength ends")}. "
            + $"A strong pull is {Newtons(assessment.StrongN, style)}; the {PartWords.Fails(assessment.WeakestAt(assessment.Here), style)} at {Newtons(assessment.Here.GivesAtN, style)}.";

    /// <summary>Why a tube comes off at all, in one sentence.</summary>
    internal static string Cause(Push push) =>
        $"The further the bar {push switch { Push.Down => "sinks", Push.Up => "rises", _ => "swings" }} past square, the more of your push drags the tube outward.";

    /// <summary>The shortest overlap that will do, and why no shorter one does.</summary>
    internal static string Least(SlipAssessment assessment, UnitStyle style)
    {
        bool Slides(SlipRow row) => row.Checked.HeldRad <= assessment.Setup.StartPastSquare.Radians;
        if (assessment.Least is not { } least)
        {
            return assessment.Rows.All(Slides) ? "none: at any overlap the tube slides off as the pull begins." : "none: at no overlap does the tube both stay on and take a strong pull.";
        }

        return Length(least.OverlapMm, style) + (assessment.Rows.LastOrDefault(row => row.OverlapMm < least.OverlapMm) is not { OverlapMm: > 0 } shorter ? "."
            : Slides(shorter) ? ": shorter, the tube slides off as the pull begins."
            : $": shorter, the {PartWords.Fails(assessment.WeakestAt(shorter), style)} below a strong pull.");
    }

    /// <summary>The overlap of widest safe angle, and what it bears.</summary>
    internal static string Best(SlipAssessment assessment, UnitStyle style)
    {
        SlipRow best = assessment.Best;
        return $"{Length(best.OverlapMm, style)}: the tube stays on to {Angle(assessment, best.Checked.HeldRad)}, "
            + (best.TakesStrongPull ? "and takes a strong pull." : $"but breaks at {Newtons(best.GivesAtN, style)} of your hands, as at any overlap.");
    }

    /// <summary>The last safe angles in one line.</summary>
    internal static string Safe(SlipAssessment assessment) => $"{Angle(assessment, assessment.Here.Checked.HeldRad)} while the nut holds, "
        + $"{Angle(assessment, assessment.Here.Checked.EndRad)} as the nut turns. If something snaps, nothing grips the tube: it can fly off.";

    /// <summary>The three states, in order: while the nut holds, at the end of the swing, if something snaps.</summary>
    internal static IReadOnlyList<(string State, string Angle, string What)> States(SlipAssessment assessment)
    {
        SlipAngles angles = assessment.Here.Checked;
        string turn = UnitStyle.Angle(UnitsNet.Angle.FromRadians(assessment.Setup.TurnRad));
        string clamp = assessment.ClampGone
            ? "The clamp is gone: only your grip holds the tube."
            : "The tube jams less, and you still push as before.";
        return
        [
            ("Nut holds", Angle(assessment, angles.HeldRad), "A harder pull jams the tube harder: only the angle counts."),
            ("Nut turns", Angle(assessment, angles.EndRad), $"After {turn} the nut takes {UnitStyle.Percent(assessment.EndShare)} of the torque. {clamp}"),
            ("Something snaps", Angle(assessment, angles.SnapRad), "Nothing grips the tube: it can fly off."),
        ];
    }

    /// <summary>What makes it worse, in the order it matters here.</summary>
    internal static IReadOnlyList<string> Worse(SlipAssessment assessment, UnitStyle style)
    {
        int here = Nearest(assessment, assessment.Here.OverlapMm);
        var (shortest, longest) = (assessment.Rows[0], assessment.Rows[^1]);
        string Holds(double rad) => rad > 0 ? $"holds to {Angle(assessment, rad)}" : "slides off even at a square pull";
        return
        [
            "oil or grease on the bar: " + string.Join(", ", assessment.Curves.Select(curve => $"{curve.State} {(curve.HeldRad[here] > 0 ? "to " + Angle(assessment, curve.HeldRad[here]) : "not at all")}")),
            $"a loose tube: yours is {UnitStyle.Percent(assessment.PlayShare)} wider than the bar and leans {Deg(assessment.Here.TiltRad)}"
                + (assessment.PlayShare > Tube.LoosePlayShare ? " (over 15 % is loose)" : "") + $"; a snug one {Holds(assessment.SnugRad)}",
            $"a long overlap: {Length(longest.OverlapMm, style)} {Holds(longest.Checked.HeldRad)}; the tube dents less, but slides off sooner",
            $"a short overlap: {Length(shortest.OverlapMm, style)} leans {Deg(shortest.TiltRad)}, {Holds(shortest.Checked.HeldRad)}, "
                + $"and the tube breaks at {Newtons(shortest.GivesAtN, style)} of your hands",
            "a bar that tapers to its end",
            "bouncing: each bounce frees the tube, and the tube creeps outward",
        ];
    }

    /// <summary>What helps, best first.</summary>
    internal static IReadOnlyList<string> Helps(SlipAssessment assessment, UnitStyle style)
    {
        var lines = new List<string>
        {
            $"push the tube on {Best(assessment, style)}",
            Swing(assessment),
            "clean off oil and grease; file the tube's mouth square; a bolt through tube and bar holds without friction",
        };
        if (assessment.TippingRatio is { } ratio)
        {
            lines.Add($"the lever stands {UnitStyle.Fixed(ratio, 1)} times as far off as the socket sits deep: "
                + (ratio > 1 ? "support the head with a hand or a stand, or the socket tips off the nut" : "a hand under the head is enough"));
        }

        return lines;
    }

    /// <summary>Where to start the pull and where to stop.</summary>
    internal static string Swing(SlipAssessment assessment) =>
        $"start {Before(assessment.Setup.Hands.Stance.Push)}, and stop at {Angle(assessment, assessment.Here.Checked.EndRad)}";

    private static string Before(Push push) => push switch
    {
        Push.Down => "with the bar above level",
        Push.Up => "with the bar below level",
        _ => "with the bar before square",
    };

    private static int Nearest(SlipAssessment assessment, double overlapMm) =>
        Enumerable.Range(0, assessment.Rows.Count).MinBy(i => Math.Abs(assessment.Rows[i].OverlapMm - overlapMm));

    private static string Angle(SlipAssessment assessment, double angleRad) => VerdictWords.Angle(angleRad, assessment.Setup.Hands.Stance.Push);

    private static string Deg(double angleRad) => $"{UnitStyle.Fixed(double.RadiansToDegrees(angleRad), 0)}°";

    private static string Newtons(double forceN, UnitStyle style) => style.Force(Force.FromNewtons(forceN));

    private static string Length(double lengthMm, UnitStyle style) => style.Length(UnitsNet.Length.FromMillimeters(lengthMm));
}
