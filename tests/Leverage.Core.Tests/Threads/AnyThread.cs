using Leverage.Preload;
using Leverage.Threads;

namespace Leverage.Tests.Threads;

/// <summary>The threads of the tables, and joints of any proportions near theirs.</summary>
internal static class AnyThread
{
    internal static IReadOnlyList<ScrewThread> Metric { get; } = [.. ThreadCatalog.Family(ThreadFamily.Metric)];

    internal static IReadOnlyList<ScrewThread> All { get; } = [.. Metric, .. ThreadCatalog.Family(ThreadFamily.Unified)];

    /// <summary>A joint of 1 to 100 mm, its lead 2 to 30 % of the pitch diameter, flanks from square to 60°.</summary>
    internal static Joint Joint(Sized diameter, Sized lead, Sized flank, Sized bearing)
    {
        double mm = diameter.Log(1, 100);
        return new Joint(mm, lead.Log(0.02, 0.3) * mm, flank.Even(0, Math.PI / 6), bearing.Even(1, 2.5) * mm);
    }
}
