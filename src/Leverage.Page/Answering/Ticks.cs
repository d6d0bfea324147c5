using System.Globalization;
using Leverage.Wording;

namespace Leverage.Page.Answering;

/// <summary>A mark on an axis of a chart.</summary>
/// <param name="At">Where it stands, in the axis's own unit of mm or N.</param>
/// <param name="Words">Its number.</param>
internal sealed record TickLine(double At, string Words);

/// <summary>Marks on round numbers of the unit shown.</summary>
internal static class Ticks
{
    private const int About = 6;

    /// <summary>Marks from 0 or above up to an end.</summary>
    /// <param name="from">Start of the axis.</param>
    /// <param name="to">End of the axis.</param>
    /// <param name="one">What one of the unit shown is on the axis.</param>
    internal static TickLine[] Of(double from, double to, double one)
    {
        double rough = (to - from) / one / About;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double step = power * (rough / power) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 };
        var ticks = new List<TickLine>();
        for (double at = Math.Ceiling(from / one / step) * step; at * one <= to; at += step)
        {
            ticks.Add(new(at * one, UnitStyle.Trim(at, Math.Max(0, (int)-Math.Floor(Math.Log10(step))))));
        }

        return [.. ticks];
    }

    /// <summary>A round number for the top of an axis.</summary>
    internal static double Top(double least) =>
        double.Parse(least.ToString("E1", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
