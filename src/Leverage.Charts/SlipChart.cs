using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using Leverage.Charts.Slips;
using Leverage.Wording;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts;

/// <summary>
/// Last safe angle of a slipped-over tube against overlap, and below it, over the same overlaps, the force of the
/// hands at which it breaks.
/// </summary>
public sealed class SlipChart
{
    private readonly SlipAssessment _slip;
    private readonly UnitStyle _units;
    private readonly ChartPage _page;
    private readonly PlotFrame _frame;
    private readonly PlotPanel _angles;
    private readonly PlotPanel _limits;
    private readonly double[] _overlap;

    private SlipChart(SlipAssessment slip, string title, UnitStyle units, ChartPage page)
    {
        (_slip, _units, _page) = (slip, units, page);
        _overlap = [.. slip.Rows.Select(row => Overlap(row.OverlapMm))];
        Scale up = AnglePanel.Up(slip);
        Scale limits = LimitPanel.Up(slip, units.ForceValue(Force.FromNewtons(1)), 4);
        string overlap = $"overlap, {(units.IsUs ? "in" : "mm")}";
        var words = new FrameWords(
            title, SlipChartWords.Answer(slip, units), overlap, $"last safe angle of the bar, degrees {AnglePanel.Past(slip.Setup.Hands.Stance.Push)}")
        {
            Warns = slip.Verdict != Verdict.Go || slip.Best.GivesAtN < slip.StrongN,
            Ends = ["tip dents it", "strong pull", "swing ends, 30°", .. slip.Curves.Select(curve => curve.State), slip.Setup.Surface.Words],
            Notes = [SlipChartWords.Note(slip)],
        };
        _frame = new PlotFrame(page, words, up, limits);
        var across = Scale.Across(_overlap[0], _overlap[^1], page);
        float name = 2.4f * page.TextSize;
        float high = 0.58f * (_frame.Area.Height - name);
        LabelBox area = _frame.Area;
        _angles = _frame.Add(area with { Height = high }, across, up, false);
        _limits = _frame.Add(area with { Top = area.Top + high + name, Height = area.Height - high - name }, across, limits);
        _frame.Say(ChartText.At(
            [$"force of the hands at which the tube breaks, {units.ForceUnit}"],
            new SKPoint(ChartPage.Rim, area.Top + high + 0.65f * page.TextSize),
            new TextLook(page.TextSize, false, Ink.Quiet)));
    }

    /// <summary>Draws a slip assessment.</summary>
    /// <param name="slip">The assessment.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="units">Metric or US.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The chart.</returns>
    public static Chart Draw(SlipAssessment slip, string title, UnitStyle units, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(slip);
        ArgumentNullException.ThrowIfNull(units);
        return new SlipChart(slip, title, units, page ?? ChartPage.Landscape).Drawn();
    }

    private Chart Drawn()
    {
        var angles = new AnglePanel(_slip, _overlap, _angles, _page);
        angles.Fill();
        new LimitPanel(_slip, _overlap, _limits, _page, _units.ForceValue(Force.FromNewtons(1))).Fill();
        bool same = Math.Abs(_slip.Here.OverlapMm - _slip.Best.OverlapMm) < 0.5;
        double here = Overlap(_slip.Here.OverlapMm);
        Upright(here, Ink.Text);
        angles.Point(here, _slip.Here, $"{(same ? "yours, the best" : "yours")}: {SlipChartWords.Overlap(_slip.Here, _units)}", Ink.Text);
        if (!same)
        {
            double best = Overlap(_slip.Best.OverlapMm);
            Upright(best, Ink.Works);
            angles.Point(best, _slip.Best, $"best: {SlipChartWords.Overlap(_slip.Best, _units)}", Ink.Works);
        }

        return _frame.Finish(SlipChartWords.Answer(_slip, _units));
    }

    private double Overlap(double mm) => _units.IsUs ? Length.FromMillimeters(mm).Inches : mm;

    /// <summary>A line through both halves at an overlap.</summary>
    private void Upright(double overlap, SKColor color)
    {
        foreach (PlotPanel panel in new[] { _angles, _limits })
        {
            SKPoint foot = panel.Pixel(overlap, panel.Up.From);
            var top = new SKPoint(foot.X, panel.Area.Top);
            panel.Avoid(foot, top);
            panel.Mark(default, canvas => Shapes.Dashes(canvas, foot, top, color));
        }
    }
}
