using System.CommandLine;
using Leverage.Assessments;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>How well a tube grips its bar, and how low the bar swings.</summary>
internal sealed class HandleOptions
{
    private readonly Asked<string?> _handle = NameOption.Row(
        "--handle", "dry, chrome, rusty, oily, greasy (dry)", "handle-friction", "a state of the handle");

    private readonly Asked<double?> _grip = QuantityOption.Number("--grip-friction", "of tube on bar, instead of --handle", 0.01, 1);
    private readonly Asked<Angle?> _below = QuantityOption.Angle("--below-level", "lowest angle of the swing (30deg)", 80);

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols => [_handle, _grip, _below];

    /// <summary>Puts them into a request.</summary>
    internal LooseningRequest Into(LooseningRequest request, Given given) => request with
    {
        Handle = given.Get(_handle),
        GripFriction = given.Get(_grip),
        BelowLevel = given.Get(_below),
    };
}
