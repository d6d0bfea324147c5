using Leverage.Charts.Frames;

namespace Leverage.Charts.Windows;

/// <summary>How high a window is drawn, and what then lies above it.</summary>
internal sealed class WindowScale
{
    /// <summary>What of a window lies below and above a height.</summary>
    internal WindowScale(WindowUnits window, double top)
    {
        Top = top;
        HandsAbove = window.Hand.Low > top;
        for (int i = 0; i < window.Limits.Length; i++)
        {
            (Lowest(window.Limits[i]) < 0.97 * top ? Shown : Above).Add(i);
        }
    }

    /// <summary>Highest force drawn.</summary>
    internal double Top { get; }

    /// <summary>Whether the hands' force lies above the chart: a small bolt in strong hands.</summary>
    internal bool HandsAbove { get; }

    /// <summary>Limits that are on the chart.</summary>
    internal List<int> Shown { get; } = [];

    /// <summary>Limits that lie wholly above it.</summary>
    internal List<int> Above { get; } = [];

    /// <summary>Twice the hands' high force, or more where this set-up needs more; less where all that matters is small.</summary>
    internal static double HeightOf(WindowUnits window)
    {
        double matters = Math.Max(window.NeedHigh[0], window.Limits.Select(limit => limit[0]).Where(double.IsFinite).DefaultIfEmpty(0).Min());
        if (matters < 0.6 * window.Hand.Low)
        {
            return 1.3 * matters;
        }

        double hands = 2 * window.Hand.High;
        double yours = window.Yours is { } reach ? 1.2 * window.NeedAt(reach).High : 0;
        return Math.Clamp(yours, 0.8 * hands, 1.8 * hands);
    }

    /// <summary>The y axis.</summary>
    internal Scale Up(int ticks) => Scale.Over(0, Top, ticks);

    private static double Lowest(double[] forces) => forces.Where(double.IsFinite).DefaultIfEmpty(double.PositiveInfinity).Min();
}
