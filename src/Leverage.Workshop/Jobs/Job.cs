using Leverage.Workshop.Chest;
using Leverage.Workshop.Ordering;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>A whole strip-down as a person wrote it, every name in it checked.</summary>
public sealed record Job
{
    /// <summary>What the job is.</summary>
    public required string Title { get; init; }

    /// <summary>Anything to say on top of the sheet.</summary>
    public string? Note { get; init; }

    /// <summary>The vehicle; null where the job names none.</summary>
    public Vehicle? Vehicle { get; init; }

    /// <summary>What there is to work with.</summary>
    public required ToolChest Chest { get; init; }

    /// <summary>Who pulls; empty for anybody.</summary>
    public IReadOnlyList<ChestPerson> People { get; init; } = [];

    /// <summary>A mass the person has weighed, to hang on a level bar where no torque wrench reaches.</summary>
    public Mass? HungMass { get; init; }

    /// <summary>States that hold before the first task.</summary>
    public IReadOnlyList<string> AtStart { get; init; } = [];

    /// <summary>The fasteners.</summary>
    public required IReadOnlyList<JobFastener> Fasteners { get; init; }

    /// <summary>The tasks as written.</summary>
    public required IReadOnlyList<JobTask> Tasks { get; init; }

    /// <summary>Whether the chest has a tool for a width across flats.</summary>
    internal bool HasTool(Length flats, Requests.ToolKind? kind) =>
        Picking.Fit.OnNut(Chest.NutTools, kind, flats).Any();

    /// <summary>What each task says of its place in the order.</summary>
    public IReadOnlyList<TaskRules> Rules => [.. Tasks.Select(task => task.Rules)];
}
