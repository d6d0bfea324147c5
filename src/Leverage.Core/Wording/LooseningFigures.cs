using Leverage.Assessments;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>A figure of an answer.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure with its unit.</param>
/// <param name="Note">What belongs to it.</param>
internal sealed record FigureLine(string Label, string Value, string Note);

/// <summary>The figures of a loosening answer, worded: the same for the terminal and the page.</summary>
internal static class LooseningFigures
{
    /// <summary>What the nut takes, what you make, what lever it needs.</summary>
    internal static IReadOnlyList<FigureLine> Takes(LooseningAssessment assessment, UnitStyle style)
    {
        var takes = new FigureLine(
            "Nut takes",
            $"easy {Number(assessment.Nut.LowNmm, style)}, likely {Number(assessment.Nut.LikelyNmm, style)}, hard {style.Torque(Nm(assessment.Nut.HighNmm))}"
                + Mark(assessment.Setup.Fastener.Condition.Status),
            "");
        string mass = style.Mass(assessment.Setup.Hands.Body) + Mark(assessment.Setup.Hands.Stance.Status);
        string who = $"{(assessment.Setup.Hands.Two ? "two people, " : "")}{(assessment.Moves.Any(step => step.Key == "now") ? "" : assessment.Setup.Hands.Stance.Short + ", ")}{mass}";
        if (assessment.Lever is not { } lever)
        {
            return
            [
                takes,
                new("You push", $"likely {style.Force(Force.FromNewtons(assessment.Hand.Quantile(0.5)))}", who),
                new("Lever needed", $"{style.Reach(assessment.NeededBarLikely)} likely", $"{style.Reach(assessment.NeededBarHigh)} for a hard one, square to end"),
            ];
        }

        double makes = assessment.Hand.Quantile(0.5) * lever.ReachMm;
        return
        [
            takes,
            new(
                "You make",
                $"likely {Number(makes, style)}, strong pull {style.Torque(Nm(assessment.Judgement.StrongPullNmm))}",
                makes > assessment.Judgement.StrongPullNmm ? $"nut turns first; {mass}" : who),
            new("Lever", $"needed {style.Reach(assessment.NeededLikely)}, yours {style.Reach(Mm(lever.ReachMm))}", "nut to middle of the hands"),
        ];
    }

    /// <summary>The tube, with one on; none without.</summary>
    internal static IReadOnlyList<FigureLine> Tube(LooseningAssessment assessment, UnitStyle style) =>
        assessment.Tube is not { } tube
            ? []
            :
            [
                new(
                    "Tube stays on",
                    $"to {VerdictWords.Angle(tube.Checked.HeldRad, assessment.Setup.Hands.Stance.Push)}",
                    $"best overlap {style.Length(tube.BestOverlap)}"),
                new(
                    "Once it turns",
                    $"to {VerdictWords.Angle(tube.Checked.EndRad, assessment.Setup.Hands.Stance.Push)}",
                    $"the nut then takes {UnitStyle.Percent(tube.EndShare)} of the torque"),
                new("Tube bears", $"{style.Force(tube.TipReaction)} at the tip", $"{style.Force(tube.MouthReaction)} at the mouth"
                    + (tube.WillMark ? ": the mouth marks the bar" : "")),
            ];

    /// <summary>What holds the wheel, and what is let loose.</summary>
    internal static IReadOnlyList<FigureLine> Around(LooseningAssessment assessment, UnitStyle style)
    {
        var lines = new List<FigureLine>(2);
        if (assessment.Hold is { } hold)
        {
            string parts = string.Join(", ", hold.Capacity.Parts.Select(
                part => $"{VerdictWords.Name(part.Restraint)} {Number(part.CapacityNmm, style)}{Mark(part.Status)}"));
            lines.Add(new("Wheel held to", style.Torque(Nm(hold.Capacity.TotalNmm)), parts.Length > 0 ? parts : "nothing"));
        }

        if (assessment.Release is { } release)
        {
            lines.Add(new(
                "When it lets go",
                $"hands reach {UnitStyle.Fixed(release.Turns.MetersPerSecond, 1)} m/s",
                $"{UnitStyle.Fixed(release.Snaps.MetersPerSecond, 1)} m/s if something snaps"
                    + (release.Energy is { } energy ? $"; {UnitStyle.Figures(energy.Joules)} J stored" : "")));
        }

        return lines;
    }

    private static string Mark(ValueStatus status) => UnconfirmedWords.MarkOf(status);

    private static string Number(double torqueNmm, UnitStyle style) => style.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);

    private static Length Mm(double lengthMm) => Length.FromMillimeters(lengthMm);
}
