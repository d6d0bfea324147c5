using Leverage.Probability;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using ScottPlot;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts;

/// <summary>Torque against friction for one preload, with the torque at which the bolt yields.</summary>
public sealed class FrictionChart
{
    private const string SamePreload = "same preload";
    private const string Yields = "bolt yields";
    private const string Chosen = "chosen torque";

    private readonly FrictionCurve _curve;
    private readonly UnitStyle _units;
    private readonly PlotFrame _frame;
    private readonly PlotPanel _panel;
    private readonly ChartPage _page;
    private readonly double[] _torque;
    private readonly double[] _yield;

    private FrictionChart(FrictionCurve curve, string title, UnitStyle units, ChartPage page)
    {
        (_curve, _units, _page) = (curve, units, page);
        double one = units.TorqueValue(Torque.FromNewtonMillimeters(1));
        _torque = [.. curve.TorqueNmm.Select(torque => torque * one)];
        _yield = [.. curve.YieldNmm.Select(torque => torque * one)];
        double top = 1.15 * Math.Max(Value(curve.Chosen), Math.Max(Value(curve.Spread.High), _yield[^1]));
        var words = new FrameWords(title, Answer(), "friction of thread and face", $"torque, {units.TorqueUnit}")
        {
            Warns = curve.YieldsBelow > curve.Range.Low,
            Ends = [SamePreload, Yields, Chosen],
            Notes = Spreads ? ["Shaded upright: where the friction may lie, one joint in ten below, one in ten above."] : [],
        };
        var up = Scale.Over(0, top, 7);
        _frame = new PlotFrame(page, words, up);
        _panel = _frame.Add(Scale.Across(curve.Friction[0], curve.Friction[^1], page), up);
    }

    /// <summary>Draws a curve of torque against friction.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="units">Metric or US.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The chart.</returns>
    public static Chart Draw(FrictionCurve curve, string title, UnitStyle units, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(units);
        return new FrictionChart(curve, title, units, page ?? ChartPage.Landscape).Drawn();
    }

    private bool Spreads => _curve.Range.High > _curve.Range.Low;

    private Chart Drawn()
    {
        double top = _panel.Up.To;
        _panel.Band([_curve.Range.Low, _curve.Range.High], [0, 0], [top, top], Ink.HandBand);
        double[] above = [.. _yield.Select(_ => top)];
        _panel.Hatch(_curve.Friction, _yield, above, Ink.Hatch, 16);
        SKPoint[] yield = _panel.Curve(_curve.Friction, _yield, new CurveLook(Ink.Limit, 2.4f, LinePattern.Solid));
        SKPoint[] same = _panel.Curve(_curve.Friction, _torque, new CurveLook(Ink.Need, 5, LinePattern.Solid));
        double[] level = [.. _yield.Select(_ => Value(_curve.Chosen))];
        SKPoint[] chosen = _panel.Curve(_curve.Friction, level, new CurveLook(Ink.Hand, ChartPage.CurveWidth, LinePattern.Dotted));
        _panel.End(Yields, yield, Ink.Limit, false);
        _panel.End(SamePreload, same, Ink.Need, true);
        _panel.End(Chosen, chosen, Ink.Hand, false);
        Point(_curve.Range.Likely, _curve.Chosen, "likely", true);
        if (Spreads)
        {
            Point(_curve.Range.Low, _curve.Spread.Low, "low", false);
            Point(_curve.Range.High, _curve.Spread.High, "high", false);
        }

        if (_curve.YieldsBelow is { } edge && edge < _curve.Friction[^1])
        {
            Edge(edge);
        }

        return _frame.Finish(Answer());
    }

    private string Answer()
    {
        if (_curve.YieldsBelow > _curve.Range.Likely)
        {
            return $"{_units.Torque(_curve.Chosen)} yields the bolt at friction {Friction(_curve.Range.Likely)}: too much.";
        }

        string makes = $"{_units.Torque(_curve.Chosen)} makes {_units.Preload(_curve.Preload)} at friction {Friction(_curve.Range.Likely)}";
        return _curve.YieldsBelow is { } edge
            ? $"{makes}. Where friction is below {Friction(edge)} it yields the bolt."
            : $"{makes} and yields the bolt at none of these frictions.";
    }

    private void Point(double friction, Torque torque, string name, bool bold)
    {
        SKPoint at = _panel.Pixel(friction, Value(torque));
        float radius = bold ? 9 : 6;
        _panel.Dot(at, radius, Ink.Text);
        _panel.Label(new LabelWish($"{name}: {Unbroken(_units.Torque(torque))}", new TextLook(_page.TextSize, bold, Ink.Text, true), [at]));
    }

    private void Edge(double friction)
    {
        SKPoint at = _panel.Pixel(friction, Value(_curve.Chosen));
        _panel.Dot(at, 7, Ink.Stop);
        var look = new TextLook(_page.TextSize, true, Ink.Stop, true);
        _panel.Label(new LabelWish($"yields {Unbroken($"below {Friction(friction)}")}", look, [at]));
    }

    private double Value(Torque torque) => _units.TorqueValue(torque);

    private static string Friction(double friction) => UnitStyle.Fixed(friction, 2);

    private static string Unbroken(string text) => text.Replace(' ', '\u00A0');
}
