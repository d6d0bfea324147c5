using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A set of tools with the set-up it makes on the nut; hands and overlap are still to be chosen.</summary>
internal readonly record struct SetOnNut(ToolSet Set, LooseningSetup Setup);

/// <summary>Puts together every set of tools a chest can make for a nut.</summary>
internal static class ToolSets
{
    /// <summary>Every set that fits, in the order of the chest: bare bar before its tubes.</summary>
    internal static IEnumerable<SetOnNut> Of(PickRequest request, Length acrossFlats)
    {
        // The stance of the nearest grip, so that no lever counts as too short that fits one of them.
        LooseningRequest nut = request.InStance(request.Ways().MinBy(stance => stance.GripOffsetMm)!.Key);
        var chain = new AdapterChain(request.Chest.Adapters, request.Recess);
        foreach (NutTool tool in Fit.OnNut(request.Chest.NutTools, request.Nut.Tool, acrossFlats))
        {
            foreach (ToolSet bare in Bare(tool, request.Chest.Bars, chain))
            {
                if (OnNut(bare, nut) is { } set)
                {
                    yield return set;
                    foreach (SetOnNut tubed in WithTube(set, nut, request.Chest.Tubes))
                    {
                        yield return tubed;
                    }
                }
            }
        }
    }

    private static IEnumerable<SetOnNut> WithTube(SetOnNut bare, LooseningRequest nut, IReadOnlyList<ChestTube> tubes) => tubes
        .Where(tube => Fit.OverBar(tube, bare.Setup.Bar!))
        .Select(tube => OnNut(bare.Set with { Tube = tube }, nut))
        .OfType<SetOnNut>();

    private static IEnumerable<ToolSet> Bare(NutTool tool, IReadOnlyList<ChestBar> bars, AdapterChain chain)
    {
        if (tool.Drive is not { } drive)
        {
            yield return new ToolSet(tool, [], null, null);
            yield break;
        }

        foreach (ChestBar bar in bars)
        {
            if (chain.Between(bar.Drive, drive) is { } adapters)
            {
                yield return new ToolSet(tool, adapters, bar, null);
            }
        }
    }

    private static SetOnNut? OnNut(ToolSet set, LooseningRequest nut)
    {
        try
        {
            return new SetOnNut(set, LooseningDefaults.Complete(set.Into(nut)));
        }
        catch (InputException)
        {
            // The nut alone was complete, so it is the pieces: too short to hold, or far too loose on the bar.
            return null;
        }
    }
}
