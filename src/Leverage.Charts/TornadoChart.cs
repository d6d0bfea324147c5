using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts;

/// <summary>Bars about a centre, widest first: which input to go and measure.</summary>
public sealed class TornadoChart
{
    private const double Half = 0.17;
    private readonly Tornado _tornado;
    private readonly ChartPage _page;
    private readonly TornadoBar[] _bars;
    private readonly PlotFrame _frame;
    private readonly PlotPanel _panel;

    private TornadoChart(Tornado tornado, string title, ChartPage page)
    {
        (_tornado, _page) = (tornado, page);
        _bars = [.. tornado.Bars.OrderByDescending(bar => bar.Width)];
        var words = new FrameWords(title, Answer(), tornado.Axis, string.Empty)
        {
            Notes = ["Light and hatched: the input at its low end, one case in ten below. Dark: at its high end."],
        };
        var rows = Scale.Silent(0, Math.Max(1, _bars.Length));
        _frame = new PlotFrame(page, words, rows);
        _panel = _frame.Add(Across(), rows);
    }

    /// <summary>Draws a tornado.</summary>
    /// <param name="tornado">The answer and its inputs.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The chart.</returns>
    public static Chart Draw(Tornado tornado, string title, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(tornado);
        return new TornadoChart(tornado, title, page ?? ChartPage.Landscape).Drawn();
    }

    private Chart Drawn()
    {
        for (int i = 0; i < _bars.Length; i++)
        {
            Row(_bars[i], _bars.Length - i - 1);
        }

        return _frame.Finish(Answer());
    }

    private string Answer() => _bars.Length == 0
        ? $"Now {_tornado.Words(_tornado.Centre)} in 100. No input is known to move it."
        : $"Now {_tornado.Words(_tornado.Centre)} in 100. Most depends on: {_bars[0].Input}.";

    /// <summary>Name above, bar below, a value at either end.</summary>
    private void Row(TornadoBar bar, int row)
    {
        double middle = row + 0.34;
        Part(bar.AtHigh, middle, Ink.Need, false);
        Part(bar.AtLow, middle, Ink.NeedBand, true);
        double centre = _tornado.Centre;
        _panel.Curve([centre, centre], [middle - 1.5 * Half, middle + 1.5 * Half], new CurveLook(Ink.Text, 2, LinePattern.Solid));
        Words(bar, row, middle);
    }

    private void Words(TornadoBar bar, int row, double middle)
    {
        var look = new TextLook(RowType, false, Ink.Text);
        SKPoint top = _panel.Pixel(_panel.Across.From, row + 0.92);
        float room = _panel.Area.Width - 16;
        List<string> lines = TextLines.Fit(bar.Input, room, RowType, true, cut: true);
        _frame.Say(ChartText.At(lines[..1], new SKPoint(top.X + 8, top.Y), look with { Bold = true }));
        double left = Math.Min(Math.Min(bar.AtLow, bar.AtHigh), _tornado.Centre);
        double right = Math.Max(Math.Max(bar.AtLow, bar.AtHigh), _tornado.Centre);
        if (left < _tornado.Centre)
        {
            _frame.Say(ChartText.Held(_tornado.Words(left), _panel.Pixel(left, middle) - new SKPoint(8, 0), 1, 0.5f, look));
        }

        if (right > _tornado.Centre)
        {
            _frame.Say(ChartText.Held(_tornado.Words(right), _panel.Pixel(right, middle) + new SKPoint(8, 0), 0, 0.5f, look));
        }
    }

    private void Part(double end, double middle, SKColor fill, bool hatched)
    {
        double[] x = [Math.Min(end, _tornado.Centre), Math.Max(end, _tornado.Centre)];
        if (x[1] > x[0])
        {
            _panel.Band(x, [middle - Half, middle - Half], [middle + Half, middle + Half], fill);
            if (hatched)
            {
                _panel.Hatch(x, [middle - Half, middle - Half], [middle + Half, middle + Half], Ink.Need, 10);
            }
        }
    }

    /// <summary>Type that fits name and bar into a row.</summary>
    private float RowType => Math.Min(_page.SmallSize, 0.36f * _panel.Area.Height / Math.Max(1, _bars.Length));

    /// <summary>The answer's range with room for a value at either end.</summary>
    private Scale Across()
    {
        double least = _bars.Select(bar => Math.Min(bar.AtLow, bar.AtHigh)).Append(_tornado.Centre).Min();
        double most = _bars.Select(bar => Math.Max(bar.AtLow, bar.AtHigh)).Append(_tornado.Centre).Max();
        double span = most > least ? most - least : Math.Max(1, Math.Abs(most));
        return Scale.Across(least - 0.2 * span, most + 0.2 * span, _page) with { Marked = (least, most) };
    }
}
