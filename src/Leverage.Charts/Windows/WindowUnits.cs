using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Windows;

/// <summary>A window in the units it is drawn in, as far out as it is drawn.</summary>
internal sealed class WindowUnits(ForceWindow window, UnitStyle units, int points)
{
    /// <summary>Lengths.</summary>
    internal double[] Reach { get; } = [.. window.ReachMm.Take(points).Select(mm => mm * units.ReachValue(Length.FromMillimeters(1)))];

    /// <summary>Forces needed at P10, P50 and P90.</summary>
    internal double[] NeedLow { get; } = Forces(window.NeedLowN, units, points);

    /// <summary>Forces needed at P50.</summary>
    internal double[] NeedLikely { get; } = Forces(window.NeedLikelyN, units, points);

    /// <summary>Forces needed at P90.</summary>
    internal double[] NeedHigh { get; } = Forces(window.NeedHighN, units, points);

    /// <summary>The roof.</summary>
    internal double[] Roof { get; } = Forces(window.RoofN, units, points);

    /// <summary>Force of the hands at P10, P50 and P90.</summary>
    internal (double Low, double Likely, double High) Hand { get; } =
        (Force(window.HandLowN, units), Force(window.HandLikelyN, units), Force(window.HandHighN, units));

    /// <summary>The limits' forces, in the window's order.</summary>
    internal double[][] Limits { get; } = [.. window.Limits.Select(limit => Forces(limit.ForceN, units, points))];

    /// <summary>Forces at which a bar takes a set, in the window's order.</summary>
    internal double[][] Sets { get; } = [.. window.Sets.Select(limit => Forces(limit.ForceN, units, points))];

    /// <summary>Forces the nut has held; null where it has not been tried.</summary>
    internal double[]? Held { get; } = window.HeldN is { } held ? Forces(held, units, points) : null;

    /// <summary>The strong pull at this set-up's length; null with no bar.</summary>
    internal double? Strong { get; } = window.StrongPullN is { } strong ? Force(strong, units) : null;

    /// <summary>This set-up's length; null with no bar.</summary>
    internal double? Yours { get; } =
        window.YourReachMm is { } mm ? units.ReachValue(Length.FromMillimeters(mm)) : null;

    /// <summary>How many lengths are worth drawing: past this set-up, until the hard need is next to nothing on the scale.</summary>
    internal int Worth(double top)
    {
        double yours = 1.4 * (Yours ?? 0);
        int count = 1 + Reach.TakeWhile((reach, i) => reach < yours || NeedHigh[i] > 0.05 * top).Count();
        return Math.Clamp(count, 2, Reach.Length);
    }

    /// <summary>Need at this set-up's length, likely and hard, in the drawn units.</summary>
    internal (double Low, double Likely, double High) NeedAt(double reach) =>
        (NeedLow[0] * Reach[0] / reach, NeedLikely[0] * Reach[0] / reach, NeedHigh[0] * Reach[0] / reach);

    private static double[] Forces(IReadOnlyList<double> newtons, UnitStyle units, int points)
    {
        double one = Force(1, units);
        return [.. newtons.Take(points).Select(force => force * one)];
    }

    private static double Force(double newtons, UnitStyle units) => newtons * units.ForceValue(UnitsNet.Force.FromNewtons(1));
}
