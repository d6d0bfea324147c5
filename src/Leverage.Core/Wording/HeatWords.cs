using Leverage.Assessments;
using Leverage.BreakLoose;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Words of what heat does, what it does not, and what is near that heat harms.</summary>
internal static class HeatWords
{
    /// <summary>The words for an assessment whose joint is heated.</summary>
    internal static IReadOnlyList<string> Of(LooseningAssessment assessment, UnitStyle style) =>
        assessment.Heat is { } heat
            ? [Effect(assessment, heat, style), Limits(heat, style), "No flame near fuel, penetrant, brake hoses, a sealed strut, a mounted tyre or a bearing you keep."]
            : [];

    private static string Effect(LooseningAssessment assessment, HeatAssessment heat, UnitStyle style)
    {
        string by = style.TemperatureDifference(TemperatureDelta.FromKelvins(heat.Heating.ByK));
        return heat.Heating.Part switch
        {
            HeatedPart.Stud => $"The stud is {by} hotter than what it clamps: {UnitStyle.Percent(heat.PreloadShare)} of the clamp is left. "
                + $"At {style.TemperatureDifference(heat.ReleaseAt)} hotter the clamp is gone. {Stays(assessment.Setup.Fastener.Condition)}",
            HeatedPart.Housing => $"The clamped part is {by} hotter than the bolt: the clamp rises to {UnitStyle.Percent(heat.PreloadShare)}. "
                + $"With a steel bolt in aluminium, both warm, the thread opens {Opening(heat.AluminiumClearance, style)}.",
            _ => $"The nut is {by} hotter: its thread opens {Opening(heat.FlankOpening, style)}, the clamp barely changes. "
                + "Heat breaks the rust and draws oil in. That gain has no known figure and changes no chance here.",
        };
    }

    private static string Stays(Condition condition) => condition.IsRusty ? "The rust is still there."
        : condition.LockerNm > 0 ? "The locker still holds until it is hot itself." : "What sticks in the thread is still there.";

    private static string Limits(HeatAssessment heat, UnitStyle style) => "Heat harms: "
        + string.Join(", ", heat.Near.Select(one => $"{one.Short} ({style.Temperature(one.Limit)}{UnconfirmedWords.MarkOf(one.Status)})")) + ".";

    private static string Opening(Length length, UnitStyle style) =>
        style.IsUs ? style.Fine(length) : $"{UnitStyle.Fixed(length.Micrometers, 0)} µm";
}
