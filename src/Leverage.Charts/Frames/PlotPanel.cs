using Leverage.Charts.Labels;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.Rendering.RenderActions;
using SkiaSharp;

namespace Leverage.Charts.Frames;

/// <summary>Looks of a curve.</summary>
/// <param name="Color">Its colour.</param>
/// <param name="Width">Its width.</param>
/// <param name="Pattern">Its dashes.</param>
internal readonly record struct CurveLook(SKColor Color, float Width, LinePattern Pattern);

/// <summary>One pair of axes: curves and areas go in by value, and labels find their place.</summary>
internal sealed class PlotPanel
{
    private readonly ChartPage _page;
    private readonly Plot _plot;
    private readonly List<LabelWish> _wishes = [];
    private readonly List<(LabelWish Wish, float Height)> _ends = [];
    private readonly List<Action<SKCanvas>> _marks = [];
    private readonly LabelPlacer _placer;

    /// <summary>Axes with nothing in them.</summary>
    internal PlotPanel(ChartPage page, LabelBox area, Scale across, Scale up)
    {
        (_page, Area, Across, Up) = (page, area, across, up);
        _placer = new LabelPlacer(area);
        _plot = Bare();
    }

    /// <summary>The area the curves are drawn in, pixels.</summary>
    internal LabelBox Area { get; }

    /// <summary>The x axis.</summary>
    internal Scale Across { get; }

    /// <summary>The y axis.</summary>
    internal Scale Up { get; }

    /// <summary>Pixel of a value, held close to the area so that no number grows too large to draw.</summary>
    internal SKPoint Pixel(double x, double y) => new(
        (float)(Area.Left + Math.Clamp(Across.Share(x), -2, 3) * Area.Width),
        (float)(Area.Bottom - Math.Clamp(Up.Share(y), -2, 3) * Area.Height));

    /// <summary>Fills between two curves.</summary>
    internal void Band(IReadOnlyList<double> x, IReadOnlyList<double> low, IReadOnlyList<double> high, SKColor fill)
    {
        if (x.Count < 2)
        {
            return;
        }

        FillY band = _plot.Add.FillY([.. x], Held(low), Held(high));
        band.FillColor = Ink.Plot(fill);
        band.LineWidth = 0;
        band.MarkerSize = 0;
    }

    /// <summary>Hatches between two curves.</summary>
    internal void Hatch(IReadOnlyList<double> x, IReadOnlyList<double> low, IReadOnlyList<double> high, SKColor color, float apart)
    {
        SKPoint[] outline = [.. x.Select((v, i) => Pixel(v, low[i])), .. x.Select((v, i) => Pixel(v, high[i])).Reverse()];
        _plot.Add.Plottable(new HatchLayer(outline, color, apart));
    }

    /// <summary>Draws a curve where its values are numbers and keeps labels off it.</summary>
    /// <returns>Its pixels.</returns>
    internal SKPoint[] Curve(IReadOnlyList<double> x, IReadOnlyList<double> y, CurveLook look)
    {
        int[] known = [.. Enumerable.Range(0, x.Count).Where(i => double.IsFinite(y[i]))];
        SKPoint[] pixels = [.. known.Select(i => Pixel(x[i], y[i]))];
        if (known.Length > 1)
        {
            Scatter line = _plot.Add.ScatterLine(
                known.Select(i => x[i]).ToArray(), Held([.. known.Select(i => y[i])]), Ink.Plot(look.Color));
            line.LineWidth = look.Width;
            line.LinePattern = look.Pattern;
        }

        _placer.Avoid(pixels);
        return pixels;
    }

    /// <summary>Draws something over the curves and keeps labels out of its box.</summary>
    internal void Mark(LabelBox box, Action<SKCanvas> draw)
    {
        _placer.Block(box);
        _marks.Add(draw);
    }

    /// <summary>Marks a point with a dot.</summary>
    internal void Dot(SKPoint at, float radius, SKColor color) =>
        Mark(new LabelBox(at.X, at.Y, 0, 0).Grown(radius + 2), canvas => Shapes.Dot(canvas, at, radius, color));

    /// <summary>Keeps labels off a line that is drawn otherwise.</summary>
    internal void Avoid(params SKPoint[] path) => _placer.Avoid(path);

    /// <summary>Asks for a label; those asked for first choose first.</summary>
    internal void Label(LabelWish wish) => _wishes.Add(wish);

    /// <summary>
    /// Asks for a label at a curve's end, beside the chart; beside the curve where it ends out of sight or there is no
    /// room for all; with an arrow where the whole curve lies above the chart.
    /// </summary>
    internal void End(string text, SKPoint[] path, SKColor color, bool bold)
    {
        var look = new TextLook(_page.SmallSize, bold, color, true);
        bool seen = path.Any(Inside);
        if (path.Length > 0 && (Inside(path[^1]) || !seen))
        {
            float height = Math.Clamp(path[^1].Y, Area.Top, Area.Bottom);
            _ends.Add((new LabelWish(seen ? text : $"{text} ↑", look with { Backed = false }, path), height));
        }
        else
        {
            _wishes.Add(new LabelWish(text, look, path));
        }
    }

    private bool Inside(SKPoint point) => point.Y >= Area.Top - 1 && point.Y <= Area.Bottom + 1;

    /// <summary>Places the labels.</summary>
    /// <param name="texts">Takes those that found a place.</param>
    /// <param name="crowded">Takes the words of those that found none.</param>
    internal void Place(List<ChartText> texts, List<string> crowded)
    {
        PlaceEnds(texts);
        foreach (LabelWish wish in _wishes)
        {
            if (_placer.Place(wish) is { } text)
            {
                texts.Add(text);
            }
            else
            {
                crowded.Add(wish.Text);
            }
        }
    }

    /// <summary>Draws axes, curves and marks; the words are drawn last of all.</summary>
    internal void Draw(SKCanvas canvas)
    {
        if (_plot.RenderManager.RenderCount == 0)
        {
            // ScottPlot draws its first rendering twice over: that one goes nowhere.
            using var nowhere = new SKNoDrawCanvas(_page.Width, _page.Height);
            _plot.Render(nowhere, _page.Width, _page.Height);
        }

        _plot.Render(canvas, _page.Width, _page.Height);
        _marks.ForEach(mark => mark(canvas));
    }

    private void PlaceEnds(List<ChartText> texts)
    {
        var column = new LabelBox(Area.Right, Area.Top - 8, _page.Width - ChartPage.Rim - Area.Right, Area.Height + 16);
        List<ChartText>? ends = EndStack.Place(
            _ends.Select(end => new EndLabel(end.Wish.Text, end.Height, end.Wish.Look)), column);
        if (ends is null)
        {
            _wishes.AddRange(_ends.Select(end => end.Wish));
        }

        texts.AddRange(ends ?? []);
    }

    private double[] Held(IReadOnlyList<double> values)
    {
        double reach = Up.To - Up.From;
        return [.. values.Select(value => Math.Clamp(value, Up.From - reach, Up.To + reach))];
    }

    private Plot Bare()
    {
        var plot = new Plot();
        plot.RenderManager.RenderActions.RemoveAll(action => action is ClearCanvas or RenderFigureBackground);
        plot.Layout.Fixed(new PixelPadding(Area.Left, _page.Width - Area.Right, _page.Height - Area.Bottom, Area.Top));
        plot.Axes.SetLimits(Across.From, Across.To, Up.From, Up.To);
        plot.Axes.Bottom.TickGenerator = FrameTicks.Silent(Across);
        plot.Axes.Left.TickGenerator = FrameTicks.Silent(Up);
        plot.Grid.MajorLineColor = Ink.Plot(Ink.Grid);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Bottom, plot.Axes.Left, plot.Axes.Right, plot.Axes.Top })
        {
            axis.FrameLineStyle.Color = Ink.Plot(Ink.Quiet);
            axis.MajorTickStyle.Color = Ink.Plot(Ink.Quiet);
        }

        return plot;
    }
}
