using System.CommandLine;
using Leverage.Answers;

namespace Leverage.Cli.Input;

/// <summary>The options every command takes.</summary>
internal sealed class CommonOptions
{
    /// <summary>The answer as JSON.</summary>
    internal Option<bool> Json { get; } = Flag("--json", "the answer as JSON");

    /// <summary>Units of the words.</summary>
    internal Option<UnitStyle?> Units { get; } = Everywhere(NameOption.Choice<UnitStyle?>(
        "--units", "units of the answer in words (metric)", ("metric", UnitStyle.Metric), ("us", UnitStyle.Us)));

    /// <summary>A stop or a care changes the exit code.</summary>
    internal Option<bool> Strict { get; } = Flag("--strict", "a stop exits 3, a care 4");

    /// <summary>Files may be replaced.</summary>
    internal Option<bool> ForceWrite { get; } = Flag("--force-write", "files named here may be replaced");

    /// <summary>All of them.</summary>
    internal IEnumerable<Option> All => [Json, Units, Strict, ForceWrite];

    private static Option<bool> Flag(string name, string description) =>
        Everywhere(new Option<bool>(name) { Description = description, Arity = ArgumentArity.Zero });

    private static Option<T> Everywhere<T>(Option<T> option)
    {
        option.Recursive = true;
        return option;
    }
}
