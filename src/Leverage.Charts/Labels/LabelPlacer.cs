using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>
/// Finds a place for every label: beside its own curve where nothing else is drawn, else near by with a line to it.
/// No two labels ever share a pixel.
/// </summary>
internal sealed class LabelPlacer
{
    private const float Gap = 6;
    private const int StepsAlong = 40;
    private const double LeaderMindsInk = 1.5;
    private static readonly (float Across, float Down)[] Sides =
        [(0.5f, 1), (0.5f, 0), (0, 1), (1, 1), (0, 0), (1, 0), (0, 0.5f), (1, 0.5f)];

    private readonly LabelBox _area;
    private readonly InkMap _ink;
    private readonly List<LabelBox> _taken = [];

    /// <summary>A placer for an area with nothing in it yet.</summary>
    internal LabelPlacer(LabelBox area)
    {
        _area = area;
        _ink = new InkMap(area);
    }

    /// <summary>Keeps labels off a line where there is room elsewhere.</summary>
    internal void Avoid(IReadOnlyList<SKPoint> path) => _ink.Add(path);

    /// <summary>Keeps labels out of a box.</summary>
    internal void Block(LabelBox box) => _taken.Add(box);

    /// <summary>Places a label.</summary>
    /// <param name="wish">The label.</param>
    /// <returns>The text in its place; null where the area has no room left for it.</returns>
    internal ChartText? Place(LabelWish wish)
    {
        List<SKPoint> stops = Stops(wish.Path);
        if (stops.Count == 0)
        {
            return null;
        }

        List<string> lines = TextLines.Fit(wish.Text, Math.Min(_area.Width - 4 * Gap, wish.Widest), wish.Look.Size, wish.Look.Bold);
        SKSize size = ChartText.Measure(lines, wish.Look);
        ChartText? text = Beside(wish, size, stops) is { } box
            ? ChartText.At(lines, new SKPoint(box.Left, box.Top), wish.Look)
            : Away(size, wish.Target is { } target ? [target] : stops) is var (corner, joint) ? ChartText.At(lines, corner, wish.Look, joint) : null;
        if (text is not null)
        {
            _taken.Add(text.Box.Grown(2));
            _ink.Add(text.Leader is { } leader ? [leader.From, leader.To] : []);
        }

        return text;
    }

    private LabelBox? Beside(LabelWish wish, SKSize size, List<SKPoint> stops)
    {
        (double Cost, LabelBox Box) best = (wish.Inside ? 40 : 36, default);
        for (int i = 0; i < stops.Count; i++)
        {
            double along = stops.Count == 1 ? 0 : (double)i / (stops.Count - 1) - wish.Along;
            foreach (var (across, down) in wish.Inside ? [(0.5f, 0.5f)] : Sides)
            {
                LabelBox box = Offset(stops[i], size, across, down);
                double cost = Cost(box, wish, 20 * Math.Abs(along) + (across == 0.5f ? 0 : 3));
                best = cost < best.Cost ? (cost, box) : best;
            }
        }

        return best.Box.Width > 0 ? best.Box : null;
    }

    /// <summary>Cost of a box: ink of any curve in it counts most, ink near it a little; infinite if it is not free.</summary>
    private double Cost(LabelBox box, LabelWish wish, double preference)
    {
        if (!_area.Contains(box) || Taken(box))
        {
            return double.PositiveInfinity;
        }

        double own = wish.Inside ? 0 : 1;
        return preference + wish.MindsInk * _ink.Count(box) + own * 0.4 * Math.Max(0, _ink.Count(box.Grown(2 * Gap)) - box.Width / 4);
    }

    /// <summary>A free place anywhere, with a line to the curve; as near and as empty as can be.</summary>
    private (SKPoint Corner, Leader Leader)? Away(SKSize size, List<SKPoint> stops)
    {
        (double Cost, (SKPoint, Leader)? Place) best = (double.PositiveInfinity, null);
        for (float top = _area.Top + Gap; top + size.Height <= _area.Bottom - Gap; top += size.Height / 3)
        {
            for (float left = _area.Left + Gap; left + size.Width <= _area.Right - Gap; left += 24)
            {
                var box = new LabelBox(left, top, size.Width, size.Height);
                if (Taken(box))
                {
                    continue;
                }

                Leader leader = LeaderTo(box, stops);
                double cost = SKPoint.Distance(leader.From, leader.To) / 8 + 6 * _ink.Count(box)
                    + LeaderMindsInk * _ink.Along(leader.From, leader.To) + 500 * Cut(leader);
                if (cost < best.Cost)
                {
                    best = (cost, (new SKPoint(left, top), leader));
                }
            }
        }

        return best.Place;
    }

    /// <summary>Labels that a leader would run through.</summary>
    private int Cut(Leader leader)
    {
        int cut = 0;
        foreach (LabelBox box in _taken)
        {
            cut += box.Crosses(leader.From, leader.To) ? 1 : 0;
        }

        return cut;
    }

    private static Leader LeaderTo(LabelBox box, List<SKPoint> stops)
    {
        var shortest = new Leader(box.Middle, stops[0], true);
        float record = float.PositiveInfinity;
        foreach (SKPoint stop in stops)
        {
            var edge = new SKPoint(Math.Clamp(stop.X, box.Left, box.Right), Math.Clamp(stop.Y, box.Top, box.Bottom));
            float length = SKPoint.Distance(edge, stop);
            (record, shortest) = length < record ? (length, new Leader(edge, stop, true)) : (record, shortest);
        }

        return shortest;
    }

    private bool Taken(LabelBox box)
    {
        foreach (LabelBox taken in _taken)
        {
            if (taken.Intersects(box))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Points of the curve that lie in the area, at most so many.</summary>
    private List<SKPoint> Stops(IReadOnlyList<SKPoint> path)
    {
        List<SKPoint> inside = [.. path.Where(point => _area.Contains(new LabelBox(point.X, point.Y, 0, 0)))];
        if (inside.Count <= StepsAlong)
        {
            return inside;
        }

        return [.. Enumerable.Range(0, StepsAlong).Select(i => inside[i * (inside.Count - 1) / (StepsAlong - 1)])];
    }

    private static LabelBox Offset(SKPoint stop, SKSize size, float across, float down) => new(
        stop.X - across * size.Width + (across == 0 ? Gap : across == 1 ? -Gap : 0),
        stop.Y - down * size.Height + (down == 0 ? Gap : down == 1 ? -Gap : 0),
        size.Width,
        size.Height);
}
