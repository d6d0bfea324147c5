using Leverage.Wording;

namespace Leverage.Charts.Frames;

/// <summary>An axis: its range, its ticks and their words, always with a decimal point.</summary>
/// <param name="From">First value.</param>
/// <param name="To">Last value.</param>
/// <param name="Step">Distance of ticks.</param>
internal sealed record Scale(double From, double To, double Step)
{
    /// <summary>Range of the ticks, where it is narrower than the axis.</summary>
    internal (double From, double To) Marked { get; init; } = (From, To);

    /// <summary>A scale over a range, about so many ticks on it.</summary>
    internal static Scale Over(double from, double to, int about)
    {
        double rough = (to - from) / about;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double ratio = rough / power;
        double step = power * (ratio < 1.5 ? 1 : ratio < 3.5 ? 2 : ratio < 7.5 ? 5 : 10);
        return new Scale(from, to, step);
    }

    /// <summary>A scale for the x axis of a page: as many ticks as leave their words apart.</summary>
    internal static Scale Across(double from, double to, ChartPage page)
    {
        Scale scale = Over(from, to, 10);
        for (int about = 9; about > 1 && scale.Crowds(page); about--)
        {
            scale = Over(from, to, about);
        }

        return scale;
    }

    /// <summary>A scale without ticks.</summary>
    internal static Scale Silent(double from, double to) => new(from, to, double.PositiveInfinity);

    /// <summary>The ticks.</summary>
    internal double[] Ticks()
    {
        if (double.IsPositiveInfinity(Step))
        {
            return [];
        }

        double first = Math.Ceiling(Marked.From / Step - 1e-6);
        double last = Math.Floor(Marked.To / Step + 1e-6);
        return [.. Enumerable.Range(0, Math.Max(0, (int)(last - first) + 1)).Select(i => (first + i) * Step)];
    }

    /// <summary>The words of a tick.</summary>
    internal string Words(double tick) =>
        UnitStyle.Fixed(tick == 0 ? 0 : tick, Math.Clamp((int)-Math.Floor(Math.Log10(Step) + 1e-9), 0, 6));

    /// <summary>Where a value lies, 0 at the first and 1 at the last.</summary>
    internal double Share(double value) => (value - From) / (To - From);

    private bool Crowds(ChartPage page)
    {
        double[] ticks = Ticks();
        float widest = ticks.Length == 0 ? 0 : ticks.Max(tick => ChartFonts.Width(Words(tick), page.TextSize, false));
        return ticks.Length * (widest + page.TextSize) > 0.62f * page.Width;
    }
}
