namespace Leverage.Charts.Windows;

/// <summary>A stretch of lengths over which a roof stands above a floor.</summary>
/// <param name="X">Lengths.</param>
/// <param name="Low">Floor.</param>
/// <param name="High">Roof.</param>
internal sealed record WindowRegion(List<double> X, List<double> Low, List<double> High)
{
    /// <summary>Every such stretch, its ends where roof and floor meet.</summary>
    internal static List<WindowRegion> Between(IReadOnlyList<double> x, IReadOnlyList<double> floor, IReadOnlyList<double> roof)
    {
        var regions = new List<WindowRegion>();
        WindowRegion? open = null;
        for (int i = 0; i < x.Count; i++)
        {
            bool above = roof[i] >= floor[i];
            bool before = i > 0 && roof[i - 1] >= floor[i - 1];
            open = above && open is null ? Opened(regions) : open;
            if (i > 0 && above != before)
            {
                open!.AddMeeting(x, floor, roof, i);
            }

            if (above)
            {
                open!.Add(x[i], floor[i], roof[i]);
            }

            open = above ? open : null;
        }

        return regions;
    }

    private static WindowRegion Opened(List<WindowRegion> regions)
    {
        var open = new WindowRegion([], [], []);
        regions.Add(open);
        return open;
    }

    private void AddMeeting(IReadOnlyList<double> x, IReadOnlyList<double> floor, IReadOnlyList<double> roof, int i)
    {
        double before = roof[i - 1] - floor[i - 1];
        double share = Math.Clamp(before / (before - (roof[i] - floor[i])), 0, 1);
        double meeting = floor[i - 1] + share * (floor[i] - floor[i - 1]);
        Add(x[i - 1] + share * (x[i] - x[i - 1]), meeting, meeting);
    }

    private void Add(double x, double low, double high)
    {
        X.Add(x);
        Low.Add(low);
        High.Add(high);
    }
}
