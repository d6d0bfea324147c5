using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using Leverage.Wording;
using ScottPlot;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts;

/// <summary>Preload against torque, and beside it against the turn that follows, with where the bolt yields and how far the clamp scatters.</summary>
public sealed class PreloadChart
{
    private static readonly CurveLook[] Looks =
    [
        new(Ink.Hand, ChartPage.CurveWidth, LinePattern.Dashed),
        new(Ink.Need, 5, LinePattern.Solid),
        new(Ink.Quiet, ChartPage.CurveWidth, LinePattern.Dotted),
    ];

    private readonly PreloadCurve _curve;
    private readonly JointAssessment _result;
    private readonly UnitStyle _units;
    private readonly ChartPage _page;
    private readonly PlotFrame _frame;
    private readonly PlotPanel _torque;
    private readonly PlotPanel? _turn;
    private readonly double _newton;
    private readonly double _newtonMillimetre;

    private PreloadChart(PreloadCurve curve, string title, UnitStyle units, ChartPage page)
    {
        (_curve, _result, _units, _page) = (curve, curve.Result, units, page);
        _newton = units.PreloadValue(Force.FromNewtons(1));
        _newtonMillimetre = units.TorqueValue(Torque.FromNewtonMillimeters(1));
        var up = Scale.Over(0, 1.18 * _newton * Math.Max(curve.YieldN[0], curve.Scatter.Most), 7);
        bool turns = curve.TurnRad.Count > 0;
        var words = new FrameWords(
            title, Answer(), turns ? $"torque, {units.TorqueUnit}, then turn, degrees" : $"torque, {units.TorqueUnit}", $"preload, {units.PreloadUnit}")
        {
            Warns = _result.Verdict == Verdict.Stop || _result.Verdict == Verdict.Care && !turns,
            Ends = [.. curve.Lines.Select(Name)],
            Notes = ["Hatched: the bolt yields. Upright bar: how far the clamp scatters by the way of tightening."],
        };
        _frame = new PlotFrame(page, words, up);
        LabelBox area = _frame.Area;
        double most = _newtonMillimetre * curve.TorqueNmm[^1];
        if (!turns)
        {
            _torque = _frame.Add(Scale.Across(0, most, page), up);
            return;
        }

        float apart = 2.2f * page.TextSize;
        float half = 0.5f * (area.Width - apart);
        _torque = _frame.Add(area with { Width = half }, Scale.Over(0, most, 3), up);
        _turn = _frame.Add(
            area with { Left = area.Left + half + apart, Width = half }, Scale.Over(0, 180 / Math.PI * curve.TurnRad[^1], 3), Scale.Silent(up.From, up.To));
    }

    /// <summary>Draws a curve of preload.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="units">Metric or US.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The chart.</returns>
    public static Chart Draw(PreloadCurve curve, string title, UnitStyle units, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(units);
        return new PreloadChart(curve, title, units, page ?? ChartPage.Landscape).Drawn();
    }

    private Chart Drawn()
    {
        Yield();
        double target = _newtonMillimetre * _result.Torque.NewtonMillimeters;
        SKPoint foot = _torque.Pixel(target, 0);
        SKPoint top = _torque.Pixel(target, _torque.Up.To);
        _torque.Avoid(foot, top);
        _torque.Mark(default, canvas => Shapes.Dashes(canvas, foot, top, Ink.Text));
        double[] torques = [.. _curve.TorqueNmm.Select(torque => torque * _newtonMillimetre)];
        double[] turns = [.. _curve.TurnRad.Select(turn => turn * 180 / Math.PI)];
        PlotPanel last = _turn ?? _torque;
        for (int i = 0; i < _curve.Lines.Count; i++)
        {
            PreloadLine line = _curve.Lines[i];
            CurveLook look = Look(i);
            SKPoint[] path = _torque.Curve(torques, Values(line.ByTorqueN), look);
            path = _turn?.Curve(turns, Values(line.ByTurnN), look) ?? path;
            last.End(Name(line), path, look.Color, IsLikely(i));
        }

        double x = _turn is null ? target : turns[^1] * 0.985;
        Scatter(last, x);
        SKPoint at = last.Pixel(x, _newton * _result.End.Likely.Newtons);
        last.Dot(at, 9, Ink.Text);
        last.Label(new LabelWish(
            $"likely: {Unbroken(_units.Preload(_result.End.Likely))}", new TextLook(_page.TextSize, true, Ink.Text, true), [at])
        { MindsInk = 30 });
        _torque.Label(new LabelWish(Unbroken(_units.Torque(_result.Torque)), new TextLook(_page.TextSize, false, Ink.Text, true), [foot, top]) { Along = 0.08 });
        return _frame.Finish(Answer());
    }

    /// <summary>The torque that yields the bolt, whatever the friction, and all above it.</summary>
    private void Yield()
    {
        (double X, double Y)[] points =
        [
            (0, _newton * _curve.YieldN[0]),
            .. _curve.YieldTorqueNmm.Zip(_curve.YieldN, (torque, force) => (torque * _newtonMillimetre, force * _newton))
                .TakeWhile(point => point.Item1 <= _torque.Across.To),
        ];
        points = [.. points, (_torque.Across.To, points[^1].Y)];
        double[] x = [.. points.Select(point => point.X)];
        double[] y = [.. points.Select(point => point.Y)];
        _torque.Hatch(x, y, [.. y.Select(_ => _torque.Up.To)], Ink.Hatch, 16);
        SKPoint[] path = _torque.Curve(x, y, new CurveLook(Ink.Limit, 2.4f, LinePattern.Solid));
        _torque.Label(new LabelWish("bolt yields", new TextLook(_page.TextSize, false, Ink.Limit, true), path) { Along = 0.3 });
        if (_turn is { } turn)
        {
            double most = _newton * _curve.Lines.Max(line => line.ByTurnN[^1]);
            most = _result.End.YieldShare.High > 1 ? most : y[0];
            turn.Hatch([0, turn.Across.To], [most, most], [turn.Up.To, turn.Up.To], Ink.Hatch, 16);
        }
    }

    private void Scatter(PlotPanel panel, double x)
    {
        SKPoint low = panel.Pixel(x, _newton * _curve.Scatter.Least);
        SKPoint high = panel.Pixel(x, _newton * _curve.Scatter.Most);
        panel.Avoid(low, high);
        panel.Mark(new LabelBox(low.X, high.Y, 0, low.Y - high.Y).Grown(5), canvas =>
        {
            using var paint = new SKPaint { Color = Ink.Works, StrokeWidth = 6, IsAntialias = true, Style = SKPaintStyle.Stroke };
            canvas.DrawLine(low, high, paint);
            canvas.DrawLine(low.X - 9, low.Y, low.X + 9, low.Y, paint);
            canvas.DrawLine(high.X - 9, high.Y, high.X + 9, high.Y, paint);
        });
        string either = Unbroken($"±{UnitStyle.Percent(_result.Method.High)}");
        panel.Label(new LabelWish($"{_result.Method.Name} {either}", new TextLook(_page.SmallSize, false, Ink.Works, true), [low]));
    }

    private string Answer()
    {
        string set = _units.Torque(_result.Torque);
        string makes = $"{_units.Preload(_result.End.Likely)} likely";
        if (_result.Angle is { } angle)
        {
            return $"{set} and then {UnitStyle.Angle(angle.Turn)} make {makes}; "
                + (angle.Yields ? $"the bolt yields after {UnitStyle.Angle(angle.Elastic)}." : "the bolt does not yield.");
        }

        ShareRange share = _result.End.YieldShare;
        return share.Likely > 1 ? $"{set} yields the bolt at friction {Friction(_result.Friction.Likely)}: too much."
            : _curve.Lines.Count == 1 ? $"{set} makes {_units.Preload(_result.End.Likely)} at friction {Friction(_result.Friction.Likely)}."
            : $"{set} makes {makes}, {UnitStyle.Figures(_units.PreloadValue(_result.End.Low))} to {_units.Preload(_result.End.High)} by friction"
                + (share.High > 1 ? $"; at {Friction(_result.Friction.Low)} it yields the bolt." : ".");
    }

    private CurveLook Look(int line) => Looks[_curve.Lines.Count == 1 ? 1 : line];

    private bool IsLikely(int line) => _curve.Lines.Count == 1 || line == 1;

    private double[] Values(IReadOnlyList<double> newtons) => [.. newtons.Select(newton => newton * _newton)];

    private static string Name(PreloadLine line) => $"friction {Friction(line.Friction)}";

    private static string Friction(double friction) => UnitStyle.Trim(friction, 3);

    private static string Unbroken(string text) => text.Replace(' ', '\u00A0');
}
