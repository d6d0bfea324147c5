using Leverage.Assessments;
using Leverage.BreakLoose;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>The case in one line: what is to be loosened, how tight it was, how it looks.</summary>
public static class LooseningTitle
{
    /// <summary>The title of a set-up.</summary>
    /// <param name="setup">The set-up.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line.</returns>
    public static string Of(LooseningSetup setup, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(style);
        string what = setup is { ThreadBySight: false, Fastener.Thread: { } thread } ? thread.Printed : Nut(setup, style);
        string hand = setup.Fastener.LeftHand ? ", left-hand" : "";
        string soaked = setup.Fastener.Soaked ? ", soaked" : "";
        string count = setup.Count > 1 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $", {setup.Count} alike") : "";
        string near = setup is { Tool.Size: null, Fastener.AcrossFlats: { } flats } && PartWords.OtherMeasure(flats, style) is { } other ? $" ({other} goes on too)" : "";
        return $"Loosen {what}{near}{hand}, {Start(setup, style)}, {setup.Fastener.Condition.Short}{soaked}{count}";
    }

    private static string Nut(LooseningSetup setup, UnitStyle style) =>
        $"the {(setup.Fastener.AcrossFlats is { } flats ? PartWords.Flats(flats, style) + " " : "")}{(setup.Tool.Kind == Requests.ToolKind.Key ? "hexagon socket" : setup.Place is { IsPlug: true } ? "plug" : "nut")}";

    private static string Start(LooseningSetup setup, UnitStyle style) => setup.Start is var start && start.From == StartSource.Given
        ? $"tightened to {style.Torque(Torque.FromNewtonMillimeters(start.LikelyNmm))}{(setup.Fastener.Then is { } then ? $" and then {UnitStyle.Angle(then)}" : "")}"
        : $"about {style.Torque(Torque.FromNewtonMillimeters(start.LikelyNmm))} ({Number(start.LowNmm, style)} to {Number(start.HighNmm, style)}), not from a book";

    private static string Number(double torqueNmm, UnitStyle style) => style.TorqueNumber(Torque.FromNewtonMillimeters(torqueNmm));
}
