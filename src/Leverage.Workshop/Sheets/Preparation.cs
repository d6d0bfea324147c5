using Leverage.BreakLoose;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>What to see to before the work begins, in words: what to soak, get, lay out and photograph.</summary>
internal static class Preparation
{
    /// <summary>The lines, those with nothing to say left out.</summary>
    internal static IReadOnlyList<SheetLine> Lines(JobPlan plan, UnitStyle units)
    {
        string done = plan.LooseAlready > 0 || plan.Tasks.Count < plan.Job.Tasks.Count
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"{plan.Job.Tasks.Count - plan.Tasks.Count} of {plan.Job.Tasks.Count} tasks done, {plan.LooseAlready} of {plan.Job.Fasteners.Count} fasteners loose")
            : "";
        SheetLine[] lines =
        [
            new("So far", done),
            new("At the start", string.Join(", ", plan.Left.AtStart)),
            new("Evening before", Soak(plan)),
            new("Borrow or buy", string.Join("; ", [.. Missing(plan.Gaps, units), .. plan.Parts.Select(RefitPhrases.Part)])),
            new("Lay out", string.Join(", ", LaidOut(plan))),
            new("Supplies", string.Join(", ", plan.Job.Tasks.SelectMany(task => task.Supplies)
                .Concat(plan.Job.Fasteners.Select(fastener => Supply(fastener.Lubricant ?? "")).OfType<string>()).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase))),
            new("Photograph", string.Join("; ", plan.Tasks.Where(task => task.Task.Photograph is not null)
                .Select(task => $"{FastenerPhrases.Whole(task.Number)} {task.Task.Photograph}"))),
            new("Watch", string.Join(" ", Watch(plan))),
        ];
        return [.. lines.Where(line => line.Words.Length > 0)];
    }

    /// <summary>What the chest lacks, a phrase each: "sockets missing: 13, 16, 18 mm".</summary>
    internal static IEnumerable<string> Missing(JobGaps gaps, UnitStyle units)
    {
        foreach (MissingSizes missing in gaps.Sizes)
        {
            yield return $"{Word(missing.Tool)} missing: {SizePhrases.Several(missing.Sizes)}";
        }

        if (gaps.NoLever.Count > 0)
        {
            yield return $"no bar, adapter or extension that goes with the tool and leaves room: {string.Join(", ", gaps.NoLever)}";
        }

        if (gaps.Wrench is var (low, high))
        {
            yield return low.Equals(high, UnitsNet.Torque.FromNewtonMeters(0.05)) ? $"torque wrench for {units.Torque(high)}" : $"torque wrench for {units.TorqueNumber(low)} to {units.Torque(high)}";
        }
    }

    private static IEnumerable<string> Watch(JobPlan plan) => plan.Gaps.InNoTask.Count > 0
        ? plan.Gaps.Watch.Append($"In no task: {string.Join(", ", plan.Gaps.InNoTask)}.")
        : plan.Gaps.Watch;

    /// <summary>What soaking helps: what has rusted, and where it is among what to change.</summary>
    private static string Soak(JobPlan plan)
    {
        string[] soaked = [.. plan.Loosening.Where(IsSoaked).Select(planned => planned.Fastener.Name).Order(StringComparer.Ordinal)];
        return soaked.Length > 0 ? $"clean the threads, penetrating oil on {string.Join(", ", FastenerPhrases.Pairs(soaked))}; keep it off brake linings and discs" : "";
    }

    private static bool IsSoaked(PlannedLoosening planned) => !planned.Fastener.Soaked
        && (planned.Assessment.Setup.Fastener.Condition.Basis == GrowthBasis.Book || planned.Assessment.Moves.Any(step => step.Key == "soak"));

    /// <summary>What to have of a lubricant; null where it comes with the part, or is none.</summary>
    private static string? Supply(string lubricant) => lubricant switch
    {
        "grease" or "anti-seize" => lubricant,
        _ when lubricant.EndsWith("oiled", StringComparison.Ordinal) => "oil for threads",
        _ when lubricant.EndsWith("moly", StringComparison.Ordinal) => "moly paste",
        _ when lubricant.EndsWith("wax", StringComparison.Ordinal) => "thread wax",
        _ when lubricant.EndsWith("paste", StringComparison.Ordinal) => "paste for stainless threads",
        _ => null,
    };

    private static IEnumerable<string> LaidOut(JobPlan plan) => plan.Loosening.Select(planned => planned.Choice).OfType<SetUpChoice>()
        .SelectMany(choice => JobAnswers.Pieces(choice.SetUp.Set))
        .Concat(plan.Refit.Select(planned => planned.Wrench?.Wrench.Name).OfType<string>())
        .GroupBy(name => name, StringComparer.Ordinal).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Select(group => group.Key);

    private static string Word(ToolKind tool) => tool switch
    {
        ToolKind.Ring => "ring spanners",
        ToolKind.Open => "open spanners",
        ToolKind.Key => "hexagon keys",
        _ => "sockets",
    };
}
