using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>The case in one line: what is to be undone, how tight it was, how it looks.</summary>
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
            ?? (setup.Fastener.AcrossFlats is { } flats ? $"a {style.Length(flats)} nut" : "a nut");
        string hand = setup.Fastener.LeftHand ? ", left-hand" : "";
        string soaked = setup.Fastener.Soaked ? ", soaked" : "";
        return $"Undo {what}{hand}, {style.Torque(setup.Fastener.BookTorque)} in the book, {setup.Fastener.Condition.Words}{soaked}";
    }
}
