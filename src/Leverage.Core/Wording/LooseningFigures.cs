using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>A figure of an answer.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure with its unit.</param>
/// <param name="Note">What belongs to it.</param>
public sealed record FigureLine(string Label, string Value, string Note);

/// <summary>The figures of a loosening answer, worded: the same for the terminal and the page.</summary>
public static class LooseningFigures
{
    /// <summary>What it takes, what you can give, what lever it needs.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>The figures.</returns>
    public static IReadOnlyList<FigureLine> Takes(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        var takes = new FigureLine(
            "It takes",
            $"{Number(assessment.Nut.LowNmm, style)} · {Number(assessment.Nut.LikelyNmm, style)} · {style.Torque(Nm(assessment.Nut.HighNmm))}",
            $"easy · likely · hard{Mark(assessment.Setup.Fastener.Condition.Status)}");
        string stance = $"{assessment.Setup.Hands.Stance.Key}, {style.Mass(assessment.Setup.Hands.Body)}"
            + Mark(assessment.Setup.Hands.Stance.Status);
        if (assessment.Lever is not { } lever)
        {
            return
            [
                takes,
                new("You can give", style.Force(Force.FromNewtons(assessment.Hand.Quantile(0.5))), stance),
                new("Lever needed", $"{style.Reach(assessment.NeededLikely)} likely", $"{style.Reach(assessment.NeededHigh)} in the hard case, nut to hands"),
            ];
        }

        double more = assessment.NeededLikely.Millimeters - lever.ReachMm;
        return
        [
            takes,
            new("You can give", $"{style.Torque(Nm(assessment.Hand.Quantile(0.5) * lever.ReachMm))} at {style.Reach(Mm(lever.ReachMm))}", stance),
            new(
                "Lever needed",
                $"{style.Reach(assessment.NeededLikely)} likely",
                more > 0 ? $"{style.Reach(Mm(more))} more than this one reaches" : "this one reaches that far"),
        ];
    }

    /// <summary>The tube, with a bar; none without.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>The figures.</returns>
    public static IReadOnlyList<FigureLine> Tube(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        return assessment.Tube is not { } tube
            ? []
            :
            [
                new("Tube stays on", $"to {SlipWords.Safe(tube.Checked.HeldRad)}", $"held, {SlipWords.Safe(tube.Checked.ReleaseRad)} at "
                    + $"break-loose; best overlap {style.Length(tube.BestOverlap)}"),
                new("It bears", $"{style.Force(tube.TipReaction)} at the tip", $"{style.Force(tube.MouthReaction)} at the mouth"
                    + (tube.WillMark ? ": it will be marked" : "")),
            ];
    }

    /// <summary>What holds the wheel, and what is let loose.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="style">Units.</param>
    /// <returns>The figures.</returns>
    public static IReadOnlyList<FigureLine> Around(LooseningAssessment assessment, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(style);
        var lines = new List<FigureLine>(2);
        if (assessment.Hold is { } hold)
        {
            lines.Add(new("Wheel held to", style.Torque(Nm(hold.Capacity.TotalNmm)), HoldWords(hold, style)));
        }

        if (assessment.Release is { } release)
        {
            string turns = UnitStyle.Fixed(release.Turns.MetersPerSecond, 1);
            string snaps = UnitStyle.Fixed(release.Snaps.MetersPerSecond, 1);
            lines.Add(new("When it lets go", $"hands at {turns} to {snaps} m/s", release.Energy is { } energy
                ? $"as the nut turns, and if a part breaks; {UnitStyle.Figures(energy.Joules)} J stored{(release.Assumed ? UnconfirmedWords.Mark : "")}"
                : "as the nut turns, and if a part breaks"));
        }

        return lines;
    }

    private static string HoldWords(HoldAssessment hold, UnitStyle style)
    {
        string parts = string.Join(", ", hold.Capacity.Parts.Select(
            part => $"{LooseningAnswers.Word(part.Restraint)} {style.TorqueNumber(Nm(part.CapacityNmm))}"
                + UnconfirmedWords.MarkOf(part)));
        string roll = hold.Roll is { } way ? $"; else it rolls {(way == Roll.Forward ? "forward" : "backward")}" : "";
        return $"{(parts.Length > 0 ? parts : "nothing")}{roll}";
    }

    private static string Mark(ValueStatus status) => status.IsUnconfirmed() ? UnconfirmedWords.Mark : "";

    private static string Number(double torqueNmm, UnitStyle style) => style.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);

    private static Length Mm(double lengthMm) => Length.FromMillimeters(lengthMm);
}
