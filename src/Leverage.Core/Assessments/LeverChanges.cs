using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Changes of bar, square and reach worth trying.</summary>
internal static class LeverChanges
{
    /// <summary>Longest reach worth advising, mm: past it nobody can stand at the end (judgement).</summary>
    private const double LongestMm = 2000;

    /// <summary>Reach advised over reach needed, so that the likely case is not the limit (judgement).</summary>
    private const double Spare = 1.15;

    internal static IEnumerable<Change> Of(LooseningAssessment now)
    {
        if (NextSquare(now.Setup) is { } square)
        {
            yield return square;
            if (Longer(now, square.Setup) is { } set)
            {
                yield return new Change(AdviceKind.BiggerSet, set.Bar!.Length, square.Name, set);
            }
        }

        foreach (var change in Reaches(now))
        {
            yield return change;
        }
    }

    private static Change? NextSquare(LooseningSetup setup)
    {
        if (setup.Tool.Drive is not { } drive)
        {
            return null;
        }

        var drives = ToolStrength.Drives();
        int next = drives.ToList().IndexOf(drive) + 1;
        if (next <= 0 || next >= drives.Count)
        {
            return null;
        }

        LooseningSetup bigger = setup with { Tool = setup.Tool with { Drive = drives[next], Adapters = [] } };
        return new Change(AdviceKind.NextSquare, null, drives[next], WithUsualBar(bigger, drives[next]));
    }

    /// <summary>The usual bar of a bigger square, never thinner than the present one, and no tube that would not fit it.</summary>
    private static LooseningSetup WithUsualBar(LooseningSetup setup, string drive)
    {
        if (setup.Bar is not { Diameter: { } diameter } bar)
        {
            return setup;
        }

        Length usual = Length.FromMillimeters(RowLookup.Named("handles", drive, "a drive").Number("diameter_mm"));
        bool fits = setup.Tube is null || usual <= setup.Tube.Bore;
        return usual > diameter && fits ? setup with { Bar = bar with { Diameter = usual }, BarAssumed = true } : setup;
    }

    /// <summary>The bigger square on a bare bar that reaches the likely case with some to spare.</summary>
    private static LooseningSetup? Longer(LooseningAssessment now, LooseningSetup bigger)
    {
        double wanted = Lever.NeededLength(
            Math.Min(LongestMm, now.NeededLikely.Millimeters * Spare), bigger.Hands.Stance.GripOffsetMm);
        return bigger.Bar is { } bar && wanted > bar.Length.Millimeters
            ? bigger with { Bar = bar with { Length = Length.FromMillimeters(wanted) }, Tube = null, Overlap = Length.Zero }
            : null;
    }

    private static IEnumerable<Change> Reaches(LooseningAssessment now)
    {
        if (now is not { Lever: { } lever, Setup: { Bar: { } bar } setup })
        {
            yield break;
        }

        double wanted = Math.Min(LongestMm, now.NeededLikely.Millimeters * Spare);
        if (wanted > lever.ReachMm + 50)
        {
            yield return new Change(AdviceKind.LongerLever, By(wanted - lever.ReachMm), null, Reached(setup, bar, lever.ReachMm, wanted));
        }

        double strong = 0.95 * now.Judgement.LowestLimitNmm / now.Hand.Quantile(0.9);
        if (strong < lever.ReachMm - 50 && strong > 150)
        {
            yield return new Change(AdviceKind.ShorterReach, By(lever.ReachMm - strong), null, Reached(setup, bar, lever.ReachMm, strong));
        }
    }

    private static Length By(double lengthMm) => Length.FromMillimeters(lengthMm);

    /// <summary>The set-up at another reach: a longer or shorter tube, or the bar alone where the hands are on the bar.</summary>
    private static LooseningSetup Reached(LooseningSetup setup, Bar bar, double nowMm, double reachMm) =>
        setup.Tube is { } tube && reachMm > bar.Length.Millimeters
            ? setup with { Tube = tube with { Length = tube.Length + By(reachMm - nowMm) } }
            : setup with
            {
                Tube = null,
                Overlap = Length.Zero,
                Bar = bar with { Length = By(Lever.NeededLength(reachMm, setup.Hands.Stance.GripOffsetMm)) },
            };
}
