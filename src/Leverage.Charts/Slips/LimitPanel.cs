using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts.Slips;

/// <summary>The lower half of the slip chart: force of the hands at which the tube breaks, against overlap.</summary>
internal sealed class LimitPanel
{
    private readonly SlipAssessment _slip;
    private readonly double[] _overlap;
    private readonly PlotPanel _panel;
    private readonly ChartPage _page;
    private readonly double _one;

    /// <summary>The panel; one newton is so much in the units drawn.</summary>
    internal LimitPanel(SlipAssessment slip, double[] overlap, PlotPanel panel, ChartPage page, double one) =>
        (_slip, _overlap, _panel, _page, _one) = (slip, overlap, panel, page, one);

    /// <summary>The y axis: the hands' force twice over, or up to what the tube stands at the best overlap.</summary>
    internal static Scale Up(SlipAssessment slip, double one, int ticks)
    {
        double most = slip.Rows.Select(row => row.GivesAtN).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        return Scale.Over(0, one * Math.Clamp(1.3 * most, Math.Max(1.6 * slip.HandN, 1.2 * slip.StrongN), 4 * slip.HandN), ticks);
    }

    /// <summary>Draws the limits, the hands' force and where the tube breaks before it.</summary>
    internal void Fill()
    {
        double[] gives = [.. _slip.Rows.Select(row => Held(row.GivesAtN))];
        _panel.Hatch(_overlap, gives, [.. gives.Select(_ => _panel.Up.To)], Ink.Hatch, 16);
        Limit("bends", row => row.BendsAtN);
        Limit("tip dents it", row => row.TipDentsAtN);
        Limit("mouth dents", row => row.MouthDentsAtN);
        double hand = _slip.HandN * _one;
        double[] ends = [_panel.Across.From, _panel.Across.To];
        SKPoint[] path = _panel.Curve(ends, [hand, hand], new CurveLook(Ink.Hand, ChartPage.CurveWidth, LinePattern.Dotted));
        _panel.End("likely force", path, Ink.Hand, true);
        double strong = Held(_slip.StrongN);
        _panel.End("strong pull", _panel.Curve(ends, [strong, strong], new CurveLook(Ink.Hand, 1.6f, LinePattern.Solid)), Ink.Hand, false);
        Name(gives);
    }

    /// <summary>Names the ground where the tube breaks.</summary>
    private void Name(double[] gives)
    {
        SKPoint[] middle = [.. _overlap.Select((overlap, i) => _panel.Pixel(overlap, (gives[i] + _panel.Up.To) / 2))];
        _panel.Label(new LabelWish("the tube breaks", new TextLook(_page.SmallSize, false, Ink.Text, true), middle)
        {
            Inside = true,
            MindsInk = 1,
            Along = 0.3,
        });
    }

    private void Limit(string name, Func<SlipRow, double> force)
    {
        double[] forces = [.. _slip.Rows.Select(row => force(row) * _one)];
        if (forces.Any(value => value < _panel.Up.To))
        {
            SKPoint[] path = _panel.Curve(_overlap, forces, new CurveLook(Ink.Limit, 2.4f, LinePattern.Solid));
            _panel.End(name, path, Ink.Limit, false);
        }
    }

    private double Held(double newtons) => Math.Min(newtons * _one, _panel.Up.To);
}
