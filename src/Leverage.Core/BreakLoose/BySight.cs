using Leverage.Grades;
using Leverage.Preload;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>A start torque from what can be seen of a fastener: its hexagon or thread, and where it sits.</summary>
public static class BySight
{
    /// <summary>Share of the set torque that an unknown bolt may have got at least: its P10, the whole being P90 (judgement).</summary>
    public const double LeastShare = 0.5;

    /// <summary>The torque it was likely tightened to.</summary>
    /// <param name="place">Where it sits; null where nobody said.</param>
    /// <param name="flatsMm">Width across flats, mm; null where unknown.</param>
    /// <param name="thread">Its thread; null where unknown.</param>
    /// <param name="recessed">Whether that width is a hexagon socket's, for a key: it tells nothing of a plug's size.</param>
    /// <returns>The place's rows of that size as one spread, else by the thread; null where neither is to be had.</returns>
    public static StartTorque? Start(Place? place, double? flatsMm, ScrewThread? thread, bool recessed = false)
    {
        bool plug = recessed && thread is null && place is { IsPlug: true };
        double? outside = recessed ? null : flatsMm;
        LargeNut[] rows = [.. LargeNut.All.Where(row => row.On == place?.Key && (plug || Fits(row, outside, thread)))];
        return rows.Length > 0
            ? StartTorque.Pooled(rows)
            : (thread ?? (flatsMm is { } width ? ThreadOf(width, recessed) : null)) is { } known ? FromThread(known) : null;
    }

    /// <summary>The rows that come nearest, for a refusal: of the place if one is named, by hexagon if one is known.</summary>
    /// <param name="place">Where it sits; null for any place.</param>
    /// <param name="flatsMm">Width across flats, mm; null where unknown.</param>
    /// <param name="most">How many.</param>
    /// <returns>The rows, nearest first; the table's order where nothing tells them apart.</returns>
    public static IReadOnlyList<LargeNut> Nearest(Place? place, double? flatsMm, int most = 3) =>
    [
        .. LargeNut.All.Where(row => place is null || row.On == place.Key)
            .OrderBy(row => flatsMm is { } width ? row.Off(width) : most).Take(most),
    ];

    /// <summary>The coarse thread whose standard hexagon, or older one, this is; today's before older, metric before inch where both are as near.</summary>
    /// <param name="flatsMm">Width across flats, mm.</param>
    /// <param name="recessed">Whether it is the hexagon socket of a cap screw.</param>
    /// <returns>The thread, or null where no hexagon is within 0.3 mm.</returns>
    public static ScrewThread? ThreadOf(double flatsMm, bool recessed = false)
    {
        TableRow? best = TableCatalog.Tables["hexagons"].Rows
            .Where(row => row.Says("item", "key") == recessed && !row.Key.Contains('x', StringComparison.Ordinal) && Off(row) <= LargeNut.SameFlatsMm)
            .OrderBy(Off).ThenBy(row => row.Text("item").StartsWith("older", StringComparison.Ordinal))
            .FirstOrDefault();
        return best is null ? null : Coarse(best.Key);

        double Off(TableRow row) => Math.Abs(row.OptionalNumber("across_flats_mm") is { } own ? own - flatsMm : double.PositiveInfinity);
    }

    /// <summary>
    /// Half to the whole of what an 8.8 bolt of the thread is set to: all of its yield at friction 0.10, which on every thread is less than
    /// 90 % of it at 0.14.
    /// </summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The torque.</returns>
    public static StartTorque FromThread(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double set = SetTorque(thread, 0.10);
        return StartTorque.Between(LeastShare * set, set, thread);
    }

    /// <summary>The coarse thread of a size: M24, 1-1/8.</summary>
    internal static ScrewThread Coarse(string size) => size.StartsWith('M')
        ? ThreadCatalog.Named(size)
        : ThreadCatalog.Family(ThreadFamily.Unified).First(thread => thread.Size == size);

    private static bool Fits(LargeNut row, double? flatsMm, ScrewThread? thread) =>
        thread is not null && row.Threads.Length > 0 ? row.Fits(thread) : flatsMm is { } width && row.Fits(width);

    private static double SetTorque(ScrewThread thread, double friction)
    {
        double preload = AssemblyPreload.AtYieldShare(
            1, GradeCatalog.Bolt(GradeCatalog.UsualMetric, thread).YieldMpa, thread.Section(friction, TensionAndTorsion.Plastic));
        return JointTorque.Tightening(preload, thread.Joint(HexagonCatalog.Bearing(thread).BearingMm), JointFriction.Same(friction));
    }
}
