using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Slips;

/// <summary>What the slip chart says in words.</summary>
internal static class SlipChartWords
{
    /// <summary>The answer in a line or two.</summary>
    internal static string Answer(SlipAssessment slip, UnitStyle units)
    {
        string best = Overlap(slip.Best, units).Replace(' ', '\u00A0');
        string advice = slip.Best.TakesStrongPull
            ? $"Best overlap that takes a strong pull: {best}, to {VerdictWords.Angle(slip.Best.Checked.HeldRad, slip.Setup.Hands.Stance.Push)}."
            : $"No overlap takes a strong pull; {best} takes most.";
        return $"{SlipWords.Verdict(slip)} {advice}";
    }

    /// <summary>The note below the chart.</summary>
    internal static string Note(SlipAssessment slip) => "Angles while the nut holds, at the low friction of each surface; dashed: "
        + $"yours at the end of the swing, {UnitStyle.Percent(slip.EndShare)} of the torque left.";

    /// <summary>An overlap.</summary>
    internal static string Overlap(SlipRow row, UnitStyle units) => units.Length(Length.FromMillimeters(row.OverlapMm));
}
