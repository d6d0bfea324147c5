using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>Which input moves the answer most, as a table.</summary>
internal static class SwingWords
{
    /// <summary>Writes the table, if it was asked for.</summary>
    internal static void Write(Page page, IReadOnlyList<Swing>? swings, UnitStyle units)
    {
        if (swings is null)
        {
            return;
        }

        page.Space();
        if (swings.Count == 0)
        {
            page.Note("What matters", "Write: --bar 600mm to see which input moves the answer most");
            return;
        }

        var table = new Columns("lrr").Row("what matters, from its low to its high end", "comes loose", "lever needed");
        foreach (Swing swing in swings)
        {
            table.Row(
                swing.Input,
                $"{UnitStyle.Percent(swing.ComesLooseLow)} … {UnitStyle.Percent(swing.ComesLooseHigh)}",
                swing.ReachWidthMm < 1 ? "" : $"{Reach(swing.ReachLowMm, units)} … {Reach(swing.ReachHighMm, units)}");
        }

        page.Table(table);
        page.Note("To learn first", $"{swings[0].Input}: {swings[0].Learn}");
    }

    private static string Reach(double lengthMm, UnitStyle units) => units.Reach(Length.FromMillimeters(lengthMm));
}
