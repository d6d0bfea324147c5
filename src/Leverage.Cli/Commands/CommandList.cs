namespace Leverage.Cli.Commands;

/// <summary>The commands there are, in the order the help lists them.</summary>
internal static class CommandList
{
    /// <summary>All of them; none is built until it is asked for.</summary>
    internal static IReadOnlyList<CommandEntry> All { get; } =
    [
        new("loosen", "what it takes to undo this one: torque, lever, what gives first", () => new LoosenCommand()),
        new("tighten", "torque for this thread and grade, and the preload it buys", () => new TightenCommand()),
        new("check", "is this quoted torque believable for this thread and grade?", () => new CheckCommand()),
        new("slip", "when a slipped-over extension comes off, and why", () => new SlipCommand()),
        new("pick", "out of your own tools, which set-up is best for this nut", () => new PickCommand()),
        new("job", "the whole strip-down: order of work, loosening plan, refit, sheet", () => new JobCommand()),
        new("table", "what the published tables say, with source and status", () => new TableCommand()),
        new("prove", "do the published checks hold on this machine?", () => new ProveCommand()),
    ];
}

/// <summary>A command's name, what it is for, and how to build it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Purpose">The question it answers, for the help.</param>
/// <param name="Build">Builds it with its options.</param>
internal sealed record CommandEntry(string Name, string Purpose, Func<LeverageCommand> Build);
