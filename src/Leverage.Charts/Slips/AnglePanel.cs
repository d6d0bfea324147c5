using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using Leverage.Levers;
using Leverage.Wording;
using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts.Slips;

/// <summary>The upper half of the slip chart: last safe angle against overlap, for each state of the surface.</summary>
internal sealed class AnglePanel
{
    private const double StepDeg = 15;
    private readonly SlipAssessment _slip;
    private readonly double[] _overlap;
    private readonly PlotPanel _panel;
    private readonly ChartPage _page;

    internal AnglePanel(SlipAssessment slip, double[] overlap, PlotPanel panel, ChartPage page) =>
        (_slip, _overlap, _panel, _page) = (slip, overlap, panel, page);

    /// <summary>The y axis: all angles, and some room before square.</summary>
    internal static Scale Up(SlipAssessment slip)
    {
        double[] all =
        [
            .. slip.Curves.SelectMany(curve => curve.HeldRad),
            .. slip.Rows.Select(row => row.Checked.HeldRad),
            .. slip.Rows.Select(row => row.Checked.EndRad),
            slip.Setup.PastSquare.Radians,
        ];
        double least = double.RadiansToDegrees(all.Min());
        double most = double.RadiansToDegrees(all.Max());
        double from = Math.Clamp(StepDeg * Math.Floor(least / StepDeg), -2 * StepDeg, -StepDeg);
        double to = StepDeg * Math.Ceiling((most + 4) / StepDeg);
        return new Scale(from, to, to - from > 100 ? 2 * StepDeg : StepDeg);
    }

    /// <summary>Draws curves and lines and asks for their labels.</summary>
    internal void Fill()
    {
        double[] ends = [_panel.Across.From, _panel.Across.To];
        _panel.Hatch(ends, [_panel.Up.From, _panel.Up.From], [0, 0], Ink.Hatch, 16);
        _panel.Curve(ends, [0, 0], new CurveLook(Ink.Text, 2, LinePattern.Solid));
        Swing(ends);
        foreach (SlipCurve curve in _slip.Curves)
        {
            bool yours = curve.State == _slip.Setup.Surface.Words;
            Curve(curve.State, curve.HeldRad, yours);
        }

        if (_slip.Curves.All(curve => curve.State != _slip.Setup.Surface.Words))
        {
            Curve(_slip.Setup.Surface.Words, [.. _slip.Rows.Select(row => row.Checked.HeldRad)], true);
        }

        _panel.End("as it turns", _panel.Curve(_overlap, [.. _slip.Rows.Select(row => Degrees(row.Checked.EndRad))], new CurveLook(Ink.Stop, 2.4f, LinePattern.Dashed)), Ink.Stop, true);
        SlidesOff(ends);
    }

    /// <summary>Which way past square is, for the name of the axis.</summary>
    internal static string Past(Push push) => push switch
    {
        Push.Down => "below level",
        Push.Up => "above level",
        _ => "past square",
    };

    /// <summary>Marks an overlap with its angle.</summary>
    internal void Point(double overlap, SlipRow row, string text, SKColor color)
    {
        SKPoint at = _panel.Pixel(overlap, Math.Max(Degrees(row.Checked.HeldRad), _panel.Up.From));
        _panel.Dot(at, 8, color);
        _panel.Label(new LabelWish(text, new TextLook(_page.TextSize, true, color, true), [at])
        {
            Widest = 0.5f * _panel.Area.Width,
        });
    }

    private void Curve(string state, IReadOnlyList<double> rad, bool yours)
    {
        double[] degrees = [.. rad.Select(Degrees)];
        SKPoint[] path = _panel.Curve(_overlap, degrees, new CurveLook(Ink.Need, yours ? 5 : 2.2f, LinePattern.Solid));
        _panel.End(state, path, Ink.Need, yours);
    }

    private void Swing(double[] ends)
    {
        double end = _slip.Setup.PastSquare.Degrees;
        SKPoint[] path = _panel.Curve(ends, [end, end], new CurveLook(Ink.Hand, ChartPage.CurveWidth, LinePattern.Dotted));
        _panel.End($"swing ends, {UnitStyle.Angle(_slip.Setup.PastSquare)}", path, Ink.Hand, true);
    }

    /// <summary>Names the ground below the line of a square pull.</summary>
    private void SlidesOff(double[] ends)
    {
        double middle = _panel.Up.From / 2;
        SKPoint[] path = [.. Enumerable.Range(0, 21).Select(i => _panel.Pixel(ends[0] + i * (ends[1] - ends[0]) / 20, middle))];
        _panel.Label(new LabelWish("below 0°: slides off at a square pull", new TextLook(_page.SmallSize, false, Ink.Text, true), path)
        {
            Inside = true,
            MindsInk = 1,
            Along = 0.5,
        });
    }

    private static double Degrees(double rad) => double.RadiansToDegrees(rad);
}
