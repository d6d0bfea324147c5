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
        string what = setup.Fastener.Thread?.Printed
            ?? (setup.Fastener.AcrossFlats is { } flats ? $"a {PartWords.Flats(flats, style)} nut" : "a nut");
        string hand = setup.Fastener.LeftHand ? ", left-hand" : "";
        string soaked = setup.Fastener.Soaked ? ", soaked" : "";
        string count = setup.Count > 1 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $", {setup.Count} alike") : "";
        return $"Loosen {what}{hand}, {Start(setup, style)}, {State(setup.Fastener.Condition)}{soaked}{count}";
    }

    /// <summary>A condition without its second thoughts: "rust you can see".</summary>
    /// <param name="condition">The condition.</param>
    /// <returns>Its first words.</returns>
    public static string State(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return condition.Words.Split(',', ';', ':')[0];
    }

    private static string Start(LooseningSetup setup, UnitStyle style) => setup.Start is var start && start.From == StartSource.Given
        ? $"tightened to {style.Torque(Torque.FromNewtonMillimeters(start.LikelyNmm))}{(setup.Fastener.Then is { } then ? $" and then {UnitStyle.Angle(then)}" : "")}"
        : $"about {style.Torque(Torque.FromNewtonMillimeters(start.LikelyNmm))} ({Number(start.LowNmm, style)} to {Number(start.HighNmm, style)}), not from a book";

    private static string Number(double torqueNmm, UnitStyle style) => style.TorqueNumber(Torque.FromNewtonMillimeters(torqueNmm));
}
