using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Workshop.Picking;

/// <summary>Words of a picking: what to take, and how it stands.</summary>
internal static class PickWords
{
    /// <summary>What to take, from the hands to the nut: "long bar + fence pipe 240 mm on + hub nut socket".</summary>
    internal static string Tools(PickedSetUp setUp, UnitStyle style)
    {
        string tube = setUp.Set.Tube is { } over ? $"{over.Name} {style.Length(setUp.Assessment.Setup.Overlap)} over " : "";
        string[] bar = setUp.Set.Bar is { } one ? [one.Name] : [];
        return tube + string.Join(" + ", [.. bar, .. setUp.Set.Adapters.Select(adapter => adapter.Name), Tool(setUp, style)]);
    }

    /// <summary>How it stands: chance, margin, effort, stance.</summary>
    internal static string Figures(PickedSetUp setUp)
    {
        Judgement judged = setUp.Assessment.Judgement;
        var parts = new List<string> { $"comes loose {UnitStyle.InHundred(judged.ComesLoose)}", $"breaks {UnitStyle.InHundred(judged.Breaks)}" };
        if (double.IsFinite(judged.Margin))
        {
            parts.Add($"margin {UnitStyle.Fixed(judged.Margin, 1)}");
        }

        parts.Add($"takes {UnitStyle.Percent(setUp.Effort)} of your pull");
        parts.Add(setUp.Stance.Short);
        return string.Join(" · ", parts);
    }

    /// <summary>The set-up whose assumptions an answer tells: the first one, else the nut alone.</summary>
    internal static LooseningSetup Setup(PickAssessment pick) =>
        pick.SetUps.Count > 0 ? pick.SetUps[0].Assessment.Setup : pick.Nut.Setup;

    /// <summary>The tool on the nut; of a set, which one; of another measure, on what.</summary>
    private static string Tool(PickedSetUp setUp, UnitStyle style)
    {
        LooseningSetup setup = setUp.Assessment.Setup;
        if (setup.Fastener.AcrossFlats is not { } flats)
        {
            return setUp.Set.Tool.Name;
        }

        string which = setUp.Set.Tool.Sizes.Count > 1 ? $" {PartWords.Flats(setup.Tool.Size ?? flats, style)}" : "";
        return $"{setUp.Set.Tool.Name}{which}{(setup.Tool.Size is null ? "" : $", on {PartWords.Flats(flats, style)}")}";
    }
}
