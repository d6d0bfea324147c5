using System.CommandLine;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Input;

/// <summary>The options every command takes.</summary>
internal sealed class CommonOptions
{
    /// <summary>The unit styles and their words.</summary>
    internal static readonly FieldKind<UnitStyle> UnitStyles = Kinds.Choice(("metric", UnitStyle.Metric), ("us", UnitStyle.Us));

    /// <summary>The answer as JSON.</summary>
    internal Flag Json { get; } = new("--json", "the answer as JSON") { Recursive = true };

    /// <summary>Units of the words.</summary>
    internal TextOption Units { get; } = new("--units", UnitStyles, "units of the answer in words (metric)") { Recursive = true };

    /// <summary>A stop, a care or a short changes the exit code.</summary>
    internal Flag Strict { get; } = new("--strict", "stop exits 3, care 4, short 5, not judged 6") { Recursive = true };

    /// <summary>Files may be replaced.</summary>
    internal Flag ForceWrite { get; } = new("--force-write", "files named here may be replaced") { Recursive = true };

    /// <summary>All of them.</summary>
    internal IEnumerable<Option> All => [Json, Units, Strict, ForceWrite];
}
