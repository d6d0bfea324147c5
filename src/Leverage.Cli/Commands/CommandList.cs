namespace Leverage.Cli.Commands;

/// <summary>The commands there are, in the order the help lists them.</summary>
internal static class CommandList
{
    /// <summary>All of them; none is built until it is asked for.</summary>
    internal static IReadOnlyList<CommandEntry> All { get; } =
    [
        new("loosen", "will it come, is it safe, and what do I do next?", () => new LoosenCommand()),
        new("tighten", "what do I set, and what preload does that make?", () => new TightenCommand()),
        new("check", "is this quoted torque, or torque and angle, believable?", () => new CheckCommand()),
        new("slip", "when does a slipped-over tube come off, and why?", () => new SlipCommand()),
        new("pick", "out of my own tools, what first, and what if it stays tight?", () => new PickCommand()),
        new("job", "the whole strip-down and refit, on paper", () => new JobCommand()),
        new("table", "what the published tables say, with source and status", () => new TableCommand()),
        new("prove", "do the published checks hold on this machine?", () => new ProveCommand()),
    ];
}

/// <summary>A command's name, what it is for, and how to build it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Purpose">The question it answers, for the help.</param>
/// <param name="Build">Builds it with its options.</param>
internal sealed record CommandEntry(string Name, string Purpose, Func<LeverageCommand> Build);
