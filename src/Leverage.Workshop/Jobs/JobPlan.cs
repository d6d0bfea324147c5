using Leverage.Assessments;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>A task in its place.</summary>
/// <param name="Number">Its number in the order of work, from 1.</param>
/// <param name="Task">The task.</param>
/// <param name="States">The states that hold as it begins.</param>
/// <param name="Before">Tasks that end a state it needs: it must be done before them.</param>
/// <param name="Moved">The rule that moved it ahead of where it was written; null where none did.</param>
public sealed record PlannedTask(
    int Number, JobTask Task, IReadOnlySet<string> States, IReadOnlyList<string> Before, OrderRule? Moved);

/// <summary>How one kind of fastener is broken loose.</summary>
public sealed record PlannedLoosening
{
    /// <summary>The fastener.</summary>
    public required JobFastener Fastener { get; init; }

    /// <summary>The task that breaks it loose; null where none does.</summary>
    public PlannedTask? Task { get; init; }

    /// <summary>The best set-up of the chest; null where it has none.</summary>
    public SetUpChoice? Choice { get; init; }

    /// <summary>What it takes and what holds it, judged with no tool, where the chest has none.</summary>
    public required LooseningAssessment Assessment { get; init; }

    /// <summary>What holds the wheel it turns; null where it turns none.</summary>
    public WheelHold? Hold { get; init; }

    /// <summary>What is known from what happened to it, and to those like it.</summary>
    public required NutHistory History { get; init; }

    /// <summary>Its width across flats, given or taken from its thread.</summary>
    public UnitsNet.Length? Flats => Assessment.Setup.Fastener.AcrossFlats;

    /// <summary>Whether the vehicle is off the ground then.</summary>
    public bool Lifted { get; init; }

    /// <summary>The verdict; a chest without a tool for it is a stop.</summary>
    public Verdict Verdict => Choice is null ? Verdict.Stop : Assessment.Verdict;
}

/// <summary>New parts of one kind.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Count">How many.</param>
/// <param name="For">The fasteners they are for.</param>
public sealed record PartToBuy(string Part, int Count, IReadOnlyList<string> For);

/// <summary>A whole job planned: the order, how each fastener comes loose, how each goes back, what to buy.</summary>
public sealed record JobPlan
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>The job of what is left: its tasks, and the states that hold now.</summary>
    public required Job Left { get; init; }

    /// <summary>The tasks left, in order.</summary>
    public required IReadOnlyList<PlannedTask> Tasks { get; init; }

    /// <summary>How each fastener that is not loose yet is loosened, the hard ones first.</summary>
    public required IReadOnlyList<PlannedLoosening> Loosening { get; init; }

    /// <summary>How each goes back, by its index in the job.</summary>
    public required IReadOnlyList<PlannedTightening> Refit { get; init; }

    /// <summary>In which order they go back.</summary>
    public required IReadOnlyList<RefitStep> RefitSteps { get; init; }

    /// <summary>What the job lacks, and what may be a slip.</summary>
    public required JobGaps Gaps { get; init; }

    /// <summary>How many of the fasteners are loose already.</summary>
    public int LooseAlready => Job.Fasteners.Count - Loosening.Count;

    /// <summary>What to buy.</summary>
    public required IReadOnlyList<PartToBuy> Parts { get; init; }

    /// <summary>The hard ones worth a drawing: those that take most, of those the chest has a set-up for.</summary>
    /// <param name="most">How many at most.</param>
    /// <returns>The hardest first.</returns>
    public IReadOnlyList<PlannedLoosening> Hardest(int most) =>
    [
        .. Loosening.Where(planned => planned.Choice is not null)
            .OrderByDescending(planned => planned.Assessment.Nut.LikelyNmm).Take(most),
    ];

    /// <summary>The one whose verdict asks for a drawing: a tube is slipped over, and it must not be pulled as it is; null where none does.</summary>
    public PlannedLoosening? AsksForDrawing =>
        Loosening.FirstOrDefault(planned => planned is { Choice.SetUp.Set.Tube: not null, Verdict: Verdict.Stop });

    /// <summary>The worst verdict of all.</summary>
    public Verdict Verdict => Loosening.Count == 0 ? Verdict.Go : Loosening.Max(planned => planned.Verdict);
}
