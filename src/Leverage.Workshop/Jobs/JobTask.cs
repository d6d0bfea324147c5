using Leverage.Workshop.Files;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>A piece of work.</summary>
public sealed record JobTask
{
    /// <summary>Its name and its place in the order.</summary>
    public required TaskRules Rules { get; init; }

    /// <summary>Fasteners it breaks loose and leaves on a few threads, as indices into the job's.</summary>
    public IReadOnlyList<int> Loosens { get; init; } = [];

    /// <summary>Fasteners it takes off, as indices into the job's.</summary>
    public IReadOnlyList<int> TakesOff { get; init; } = [];

    /// <summary>What to photograph first, if anything.</summary>
    public string? Photograph { get; init; }

    /// <summary>Anything to remember.</summary>
    public string? Note { get; init; }

    /// <summary>What is to be done when it is put back, beyond the fasteners: refill, bleed, adjust, try on the road.</summary>
    public IReadOnlyList<string> Refit { get; init; } = [];

    /// <summary>What it uses up: oil, fluid, rags.</summary>
    public IReadOnlyList<string> Supplies { get; init; } = [];

    /// <summary>Whether it has been done.</summary>
    public bool Done { get; init; }

    /// <summary>Where it stands in the file.</summary>
    public FilePlace Place { get; init; }

    /// <summary>Its name.</summary>
    public string Name => Rules.Name;
}
