using Leverage.Requests;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>Tools of one kind a job lacks.</summary>
/// <param name="Tool">What kind.</param>
/// <param name="Sizes">Widths across flats, each once, smallest first.</param>
public sealed record MissingSizes(ToolKind Tool, IReadOnlyList<Length> Sizes);

/// <summary>What a job lacks, and what in it may be a slip of the pen.</summary>
public sealed record JobGaps
{
    /// <summary>Sizes no tool of the chest fits.</summary>
    public required IReadOnlyList<MissingSizes> Sizes { get; init; }

    /// <summary>Fasteners a tool fits, and nothing that turns it or leaves room for hands.</summary>
    public required IReadOnlyList<string> NoLever { get; init; }

    /// <summary>The lowest and highest torque no torque wrench of the chest can be set to; null where all can.</summary>
    public required (Torque Low, Torque High)? Wrench { get; init; }

    /// <summary>Fasteners in no task.</summary>
    public required IReadOnlyList<string> InNoTask { get; init; }

    /// <summary>States that hold nothing and look as if they were to, and tasks that come too late, a sentence each.</summary>
    public required IReadOnlyList<string> Watch { get; init; }

    internal static JobGaps Of(Job job, JobProgress progress, IReadOnlyList<PlannedLoosening> loosening, IReadOnlyList<PlannedTightening> refit)
    {
        var named = job.Tasks.SelectMany(task => task.Loosens.Concat(task.TakesOff)).ToHashSet();
        PlannedLoosening[] without = [.. loosening.Where(planned => planned.Choice is null)];
        Torque[] unset = [.. refit.Where(planned => planned.Wrench is null && !planned.IsByHand).Select(planned => planned.Torque).OrderBy(torque => torque)];
        return new JobGaps
        {
            Sizes =
            [
                .. without.Where(planned => planned.Flats is { } flats && !job.HasTool(flats, planned.Fastener.Tool))
                    .GroupBy(planned => planned.Fastener.Tool ?? ToolKind.Socket).OrderBy(group => group.Key)
                    .Select(group => new MissingSizes(group.Key, [.. group.Select(planned => planned.Flats!.Value).DistinctBy(flats => Math.Round(flats.Millimeters, 1)).OrderBy(flats => flats)])),
            ],
            NoLever = [.. without.Where(planned => planned.Flats is not { } flats || job.HasTool(flats, planned.Fastener.Tool)).Select(planned => planned.Fastener.Name)],
            Wrench = unset.Length > 0 ? (unset[0], unset[^1]) : null,
            InNoTask = job.Tasks.Count == 0 ? [] : [.. job.Fasteners.Where((_, i) => !named.Contains(i)).Select(fastener => fastener.Name)],
            Watch = [.. HoldingWords.NearMisses(job), .. progress.TooLate()],
        };
    }
}
