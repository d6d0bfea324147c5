using Leverage.LoadPath;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Finds the adapters between a bar's square and a socket's: fewest pieces first, then the stoutest squares.</summary>
internal sealed class AdapterChain
{
    /// <summary>Most pieces anybody stacks (judgement).</summary>
    private const int Most = 3;

    private readonly IReadOnlyList<ChestAdapter> _adapters;
    private readonly double _leastMm;
    private readonly List<string> _drives = [.. ToolStrength.Drives()];
    private readonly Dictionary<(string From, string To), ChestAdapter[]?> _known = [];

    internal AdapterChain(IReadOnlyList<ChestAdapter> adapters, Length least) =>
        (_adapters, _leastMm) = (adapters, least.Millimeters);

    /// <summary>The adapters from one square to another, at least as long as the recess; null where there are none.</summary>
    internal ChestAdapter[]? Between(string from, string to)
    {
        if (_known.TryGetValue((from, to), out ChestAdapter[]? known))
        {
            return known;
        }

        ChestAdapter[]? found = null;
        for (int pieces = 0; pieces <= Most && found is null; pieces++)
        {
            found = Chains(from, to, pieces, [])
                .Where(chain => chain.Sum(adapter => adapter.Length.Millimeters) >= _leastMm)
                .MaxBy(chain => chain.Select(adapter => _drives.IndexOf(adapter.To)).DefaultIfEmpty(0).Min());
        }

        return _known[(from, to)] = found;
    }

    private IEnumerable<ChestAdapter[]> Chains(string from, string to, int pieces, ChestAdapter[] used)
    {
        if (pieces == 0)
        {
            return from == to ? [used] : [];
        }

        return _adapters
            .Where(adapter => adapter.From == from && !used.Contains(adapter))
            .SelectMany(adapter => Chains(adapter.To, to, pieces - 1, [.. used, adapter]));
    }
}
