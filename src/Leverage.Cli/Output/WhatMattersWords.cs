using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>Which input moves the answer most, as a table.</summary>
internal static class WhatMattersWords
{
    /// <summary>Writes the table, if it was asked for.</summary>
    internal static void Write(TextPage page, IReadOnlyList<Sensitivity>? effects, UnitStyle units)
    {
        if (effects is null)
        {
            return;
        }

        page.Space();
        if (effects.Count == 0)
        {
            page.Note("What matters", "Write: --bar 600mm to see which input moves the answer most");
            return;
        }

        var table = new Columns("lrr").Row("what matters, from its low to its high end", "comes loose", "lever needed");
        foreach (Sensitivity one in effects)
        {
            table.Row(
                SensitivityWords.Input(one.Input),
                $"{UnitStyle.Percent(one.ComesLooseLow)} … {UnitStyle.Percent(one.ComesLooseHigh)}",
                one.ReachWidthMm < 1 ? "" : $"{Reach(one.ReachLowMm, units)} … {Reach(one.ReachHighMm, units)}");
        }

        page.Table(table);
        page.Note("To learn first", $"{SensitivityWords.Input(effects[0].Input)}: {SensitivityWords.Learn(effects[0].Input)}");
    }

    private static string Reach(double lengthMm, UnitStyle units) => units.Reach(Length.FromMillimeters(lengthMm));
}
