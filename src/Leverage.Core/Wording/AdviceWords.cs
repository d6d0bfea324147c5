using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Words of what to change, each with what it gains.</summary>
public static class AdviceWords
{
    /// <summary>The advice of an assessment, best first.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line each.</returns>
    public static IReadOnlyList<string> Of(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        var lines = new List<string>();
        if (assessment.Lever is null)
        {
            lines.Add($"take a bar of at least {style.Reach(assessment.NeededLikely + Grip(assessment))}, "
                + $"{style.Reach(assessment.NeededHigh + Grip(assessment))} for the hard case");
        }

        if (assessment.StudMayTwist)
        {
            lines.Add($"the stud may twist off first: hard case {Nmm(assessment.Nut.HighNmm, style)}, it twists off at "
                + $"{style.Torque(assessment.StudGuard!.Value)}; soak it, and stop if it feels soft");
        }

        if (assessment.Setup.Hold is { HalfShafts: HalfShafts.One } hold && hold.By.Contains(Restraint.Gear))
        {
            lines.Add("in gear holds nothing once a half shaft is out: the differential lets the wheel turn");
        }

        lines.AddRange(assessment.Advice.Select(a => $"{What(a, style)}: {Gain(a, style)}"));
        if (assessment.Tube is { PlayShare: > Tube.LoosePlayShare } loose)
        {
            lines.Add($"the tube is loose: play {UnitStyle.Percent(loose.PlayShare)} of the bar, it hangs {UnitStyle.Angle(loose.Tilt)}; "
                + "a snugger one slides later");
        }

        if (assessment.Hold?.Roll is { } roll)
        {
            lines.Add($"undoing it drives the vehicle {(roll == Roll.Forward ? "forward" : "backward")}: "
                + $"chock the {(roll == Roll.Forward ? "front" : "rear")} of the wheel");
        }

        lines.AddRange(HeatWords.Of(assessment, style));
        return lines;
    }

    private static Length Grip(LooseningAssessment a) => Length.FromMillimeters(a.Setup.Hands.Stance.GripOffsetMm);

    private static string What(Advice advice, UnitStyle style) => advice.Kind switch
    {
        AdviceKind.NextSquare => $"{advice.Name} in bar and socket",
        AdviceKind.BiggerSet => $"{advice.Name} in bar {style.Any(advice.Value!)} long, and its socket",
        AdviceKind.LongerLever => $"{style.Any(advice.Value!)} more lever",
        AdviceKind.ShorterReach => $"hold it {style.Any(advice.Value!)} nearer: you cannot overload it there",
        AdviceKind.ThickerTube => $"a tube of {style.Any(advice.Value!)} wall",
        AdviceKind.Overlap => $"push the tube on {style.Any(advice.Value!)}",
        AdviceKind.Degrease => "degrease handle and tube",
        AdviceKind.StartAboveLevel => $"start with the bar above level, stop at {style.Any(advice.Value!)} below",
        AdviceKind.Chock => $"chock the wheel, {style.Any(advice.Value!)} high",
        AdviceKind.Helper => "a helper on the foot brake",
        AdviceKind.ChockAndHelper => $"chock the wheel, {style.Any(advice.Value!)} high, and a helper on the foot brake",
        AdviceKind.Soak => "soak it overnight",
        AdviceKind.HeatStud => $"heat the stud by {style.Any(advice.Value!)}, with no seal, bearing, grease or tyre near",
        _ => "lower it: wheels on the ground",
    };

    /// <summary>Verdict and figure, before and after; chances are told only where there is a lever to have them.</summary>
    private static string Gain(Advice advice, UnitStyle style)
    {
        var (before, after) = (advice.Before, advice.After);
        var parts = new List<string>(3);
        if (after.Verdict != before.Verdict)
        {
            parts.Add($"{LooseningAnswers.Word(before.Verdict)} → {LooseningAnswers.Word(after.Verdict)}");
        }

        parts.Add(Figure(advice, style));
        if (TellsChance(advice.Kind) && before.Lever is not null)
        {
            parts.Add($"undone {UnitStyle.Percent(before.Judgement.ComesLoose)} → {UnitStyle.Percent(after.Judgement.ComesLoose)}");
        }

        return string.Join(", ", parts.Where(part => part.Length > 0));
    }

    private static string Figure(Advice advice, UnitStyle style)
    {
        var (before, after) = (advice.Before, advice.After);
        return advice.Kind switch
        {
            AdviceKind.Chock or AdviceKind.Helper or AdviceKind.ChockAndHelper or AdviceKind.OnTheGround =>
                $"holds {Nmm(before.Hold!.Capacity.TotalNmm, style)} → {Nmm(after.Hold!.Capacity.TotalNmm, style)}",
            AdviceKind.Overlap or AdviceKind.Degrease when Turned(before, after) =>
                $"slides beyond {Held(before)} → {Held(after)}",
            AdviceKind.StartAboveLevel => $"the tube is safe to {Held(before)} held, "
                + $"{UnitStyle.Angle(Angle.FromRadians(before.Tube!.Checked.ReleaseRad))} at release",
            AdviceKind.Soak or AdviceKind.HeatStud =>
                $"likely {style.TorqueNumber(Nm(before.Nut.LikelyNmm))} → {Nmm(after.Nut.LikelyNmm, style)}",
            AdviceKind.LongerLever => "",
            _ => $"safety {UnitStyle.Fixed(before.Judgement.Safety, 1)} → {UnitStyle.Fixed(after.Judgement.Safety, 1)}",
        };
    }

    private static bool Turned(LooseningAssessment before, LooseningAssessment after) =>
        Math.Abs(after.Tube!.Checked.HeldRad - before.Tube!.Checked.HeldRad) > 0.02;

    private static string Held(LooseningAssessment a) => UnitStyle.Angle(Angle.FromRadians(a.Tube!.Checked.HeldRad));

    private static bool TellsChance(AdviceKind kind) => kind is not (AdviceKind.Chock or AdviceKind.Helper or AdviceKind.ChockAndHelper
        or AdviceKind.OnTheGround or AdviceKind.StartAboveLevel or AdviceKind.Degrease or AdviceKind.Overlap);

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);

    private static string Nmm(double torqueNmm, UnitStyle style) => style.Torque(Nm(torqueNmm));
}
