using Leverage.Wording;
using Leverage.Assessments;
using UnitsNet;

namespace Leverage.Charts.Slips;

/// <summary>What the slip chart says in words.</summary>
internal static class SlipChartWords
{
    /// <summary>The answer in a line or two.</summary>
    internal static string Answer(SlipAssessment slip, UnitStyle units)
    {
        string best = Overlap(slip.Best, units);
        string advice = slip.Best.GivesAtN < slip.HandN
            ? $"No overlap stands your likely force; {best} stands most."
            : $"Best overlap the tube stands: {best}, to {SlipWords.Safe(slip.Best.Checked.HeldRad)}.";
        return $"{SlipWords.Verdict(slip)} {advice}";
    }

    /// <summary>An overlap.</summary>
    internal static string Overlap(SlipRow row, UnitStyle units) => units.Length(Length.FromMillimeters(row.OverlapMm));
}
