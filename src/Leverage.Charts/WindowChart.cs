using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using Leverage.Charts.Windows;
using Leverage.Wording;
using ScottPlot;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts;

/// <summary>Force against length: what the nut needs, what the hands give, what each part stands, and where it works.</summary>
public sealed class WindowChart
{
    private const string Easy = "nut: easy";
    private const string Likely = "nut: likely";
    private const string Hard = "nut: hard";
    private const string YourForce = "likely force";
    private const string Sets = "stays bent";
    private const string Held = "nut held this";

    private readonly ForceWindow _window;
    private readonly UnitStyle _units;
    private readonly WindowUnits _drawn;
    private readonly WindowScale _scale;
    private readonly PlotFrame _frame;
    private readonly PlotPanel _panel;
    private readonly ChartPage _page;

    private WindowChart(ForceWindow window, string title, UnitStyle units, ChartPage page)
    {
        (_window, _units, _page) = (window, units, page);
        var whole = new WindowUnits(window, units, window.ReachMm.Count);
        double top = WindowScale.HeightOf(whole);
        _drawn = new WindowUnits(window, units, whole.Worth(top));
        _scale = new WindowScale(_drawn, top);
        var words = new FrameWords(
            title,
            WindowWords.Answer(window, units),
            $"reach: nut to middle of the hands, {units.ReachUnit}",
            $"force of the hands, {units.ForceUnit}")
        {
            Warns = WindowWords.Warns(window),
            Ends = [.. _scale.Shown.Select(i => PartWords.Name(window.Limits[i].Link, units)), Hard, Likely, Easy, YourForce, Held],
            Notes = WindowWords.Notes(window, _scale, units),
        };
        Scale up = _scale.Up(7);
        _frame = new PlotFrame(page, words, up);
        _panel = _frame.Add(Scale.Across(_drawn.Reach[0], _drawn.Reach[^1], page), up);
    }

    /// <summary>Draws a window.</summary>
    /// <param name="window">The window.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="units">Metric or US.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The chart.</returns>
    public static Chart Draw(ForceWindow window, string title, UnitStyle units, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(window);
        ArgumentNullException.ThrowIfNull(units);
        return new WindowChart(window, title, units, page ?? ChartPage.Landscape).Drawn();
    }

    private Chart Drawn()
    {
        HandBand();
        List<WindowRegion> works = Works();
        _panel.Band(_drawn.Reach, _drawn.NeedLow, _drawn.NeedHigh, Ink.NeedBand);
        HandLines();
        Limits();
        Marks();
        Need();
        Yours();
        works.ForEach(LabelRegion);
        return _frame.Finish(WindowWords.Answer(_window, _units));
    }

    private void HandBand()
    {
        double[] ends = [_drawn.Reach[0], _drawn.Reach[^1]];
        _panel.Band(ends, [_drawn.Hand.Low, _drawn.Hand.Low], [_drawn.Hand.High, _drawn.Hand.High], Ink.HandBand);
    }

    private void HandLines()
    {
        double[] ends = [_drawn.Reach[0], _drawn.Reach[^1]];
        foreach (double edge in new[] { _drawn.Hand.Low, _drawn.Hand.High })
        {
            _panel.Curve(ends, [edge, edge], new CurveLook(Ink.Hand, 1, LinePattern.Solid));
        }

        double[] level = [.. _drawn.Reach.Select(_ => _drawn.Hand.Likely)];
        SKPoint[] path = _panel.Curve(_drawn.Reach, level, new CurveLook(Ink.Hand, ChartPage.CurveWidth, LinePattern.Dotted));
        if (!_scale.HandsAbove)
        {
            _panel.End(YourForce, path, Ink.Hand, true);
        }
    }

    private List<WindowRegion> Works()
    {
        List<WindowRegion> likely = WindowRegion.Between(_drawn.Reach, _drawn.NeedLikely, _drawn.Roof);
        foreach (WindowRegion region in likely)
        {
            _panel.Band(region.X, region.Low, region.High, Ink.WorksBand);
            _panel.Hatch(region.X, region.Low, region.High, Ink.Works, 14);
        }

        return likely;
    }

    private void Limits()
    {
        foreach (int i in _scale.Shown)
        {
            LinePattern pattern = _window.Limits[i].Link.Confirmed ? LinePattern.Solid : LinePattern.Dashed;
            SKPoint[] path = _panel.Curve(_drawn.Reach, _drawn.Limits[i], new CurveLook(Ink.Limit, 2.4f, pattern));
            _panel.End(PartWords.Name(_window.Limits[i].Link, _units), path, Ink.Limit, false);
        }
    }

    /// <summary>Where a bar takes a set, thin and dashed; what the nut has held, dotted.</summary>
    private void Marks()
    {
        foreach (double[] set in _drawn.Sets.Where(set => set[^1] < 0.97 * _scale.Top))
        {
            _panel.End(Sets, _panel.Curve(_drawn.Reach, set, new CurveLook(Ink.Limit, 1.2f, LinePattern.Dashed)), Ink.Limit, false);
        }

        if (_drawn.Held is { } held)
        {
            _panel.End(Held, _panel.Curve(_drawn.Reach, held, new CurveLook(Ink.Need, ChartPage.CurveWidth, LinePattern.Dotted)), Ink.Need, true);
        }
    }

    private void Need()
    {
        var edge = new CurveLook(Ink.Need, 1, LinePattern.Solid);
        _panel.End(Easy, _panel.Curve(_drawn.Reach, _drawn.NeedLow, edge), Ink.Need, false);
        _panel.End(Hard, _panel.Curve(_drawn.Reach, _drawn.NeedHigh, edge), Ink.Need, false);
        _panel.End(Likely, _panel.Curve(_drawn.Reach, _drawn.NeedLikely, edge with { Width = 5 }), Ink.Need, true);
    }

    private void Yours()
    {
        if (_drawn.Yours is not { } reach || _window.YourReachMm is not { } reachMm)
        {
            return;
        }

        var (low, likely, high) = _drawn.NeedAt(reach);
        var mark = new SetupMark(_panel.Pixel(reach, low), _panel.Pixel(reach, likely), _panel.Pixel(reach, high), _panel.Area);
        _panel.Avoid(new SKPoint(mark.X, _panel.Area.Bottom), new SKPoint(mark.X, _panel.Area.Top));
        _panel.Mark(mark.Box.Grown(4), mark.Draw);
        string need = _units.Force(Force.FromNewtons(_window.NeedLikelyN[0] * _window.ReachMm[0] / reachMm));
        string text = $"{Unbroken($"yours, {_units.Any(Length.FromMillimeters(reachMm))}:")} {Unbroken($"likely needs {need}")}";
        _panel.Label(new LabelWish(text, new TextLook(_page.TextSize, true, Ink.Text, true), mark.Upright)
        {
            Along = 1,
            Target = mark.Dot,
            Widest = 0.5f * _panel.Area.Width,
        });
        Strong(reach);
    }

    /// <summary>The strong pull on the upright of this set-up.</summary>
    private void Strong(double reach)
    {
        if (_drawn.Strong is not { } strong || strong > _scale.Top)
        {
            return;
        }

        SKPoint at = _panel.Pixel(reach, strong);
        _panel.Mark(new LabelBox(at.X - 9, at.Y - 9, 18, 18), canvas => Shapes.Diamond(canvas, at, 9, Ink.Hand));
        string text = $"strong pull {_units.Force(Force.FromNewtons(_window.StrongPullN!.Value))}";
        _panel.Label(new LabelWish(Unbroken(text), new TextLook(_page.TextSize, true, Ink.Hand, true), [at])
        {
            Widest = 0.5f * _panel.Area.Width,
        });
    }

    private static string Unbroken(string text) => text.Replace(' ', '\u00A0');

    private void LabelRegion(WindowRegion region)
    {
        SKPoint[] middle = [.. region.X.Select((x, i) => _panel.Pixel(x, (region.Low[i] + region.High[i]) / 2))];
        _panel.Label(new LabelWish("likely works", new TextLook(_page.TextSize, true, Ink.Works, true), middle)
        {
            Inside = true,
            MindsInk = 1,
            Along = 0.6,
        });
    }
}
