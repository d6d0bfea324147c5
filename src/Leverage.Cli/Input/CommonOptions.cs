using System.CommandLine;
using Leverage.Wording;

namespace Leverage.Cli.Input;

/// <summary>The options every command takes.</summary>
internal sealed class CommonOptions
{
    /// <summary>Options that stand for the program and for every command.</summary>
    internal CommonOptions() => Units.Recursive = true;

    /// <summary>The answer as JSON.</summary>
    internal Flag Json { get; } = new("--json", "the answer as JSON") { Recursive = true };

    /// <summary>Units of the words.</summary>
    internal Asked<UnitStyle?> Units { get; } = NameOption.Choice<UnitStyle?>(
        "--units", "units of the answer in words (metric)", ("metric", UnitStyle.Metric), ("us", UnitStyle.Us));

    /// <summary>A stop or a care changes the exit code.</summary>
    internal Flag Strict { get; } = new("--strict", "a stop exits 3, a care 4") { Recursive = true };

    /// <summary>Files may be replaced.</summary>
    internal Flag ForceWrite { get; } = new("--force-write", "files named here may be replaced") { Recursive = true };

    /// <summary>All of them.</summary>
    internal IEnumerable<Option> All => [Json, Units, Strict, ForceWrite];

    private static Asked<T> Everywhere<T>(Asked<T> option)
    {
        option.Recursive = true;
        return option;
    }
}
