using Leverage.Assessments;
using Leverage.Charts.Frames;
using Leverage.Charts.Labels;
using Leverage.Charts.SideViews;
using Leverage.Levers;
using Leverage.Wording;
using SkiaSharp;
using UnitsNet;

namespace Leverage.Charts;

/// <summary>A side view to scale: nut, bar, tube and hands, every force as an arrow with its size.</summary>
public sealed class SideView
{
    private const float Rim = 10;
    private readonly UnitStyle _units;
    private readonly ChartPage _page;
    private readonly FrameWords _words;
    private readonly List<ChartText> _texts;
    private readonly LabelBox _area;
    private readonly SketchGeometry _place;
    private readonly List<ForceArrow> _arrows;
    private readonly List<Dimension> _dimensions;
    private readonly LeverDrawing _lever;
    private readonly LabelPlacer _placer;
    private readonly List<string> _crowded = [];

    private SideView(LeverSketch sketch, string title, UnitStyle units, ChartPage page)
    {
        ChartFonts.Use();
        (_units, _page) = (units, page);
        _words = new FrameWords(title, SideViewWords.Answer(sketch, units), string.Empty, string.Empty)
        {
            Warns = sketch.Gives is not null || sketch.Tube is { StaysOn: false } or { StaysOnAsItTurns: false },
            Notes = SideViewWords.Notes(new SketchGeometry(sketch, 1, default), units),
        };
        var layout = FrameLayout.Of(page, _words, []);
        _texts = [.. layout.Texts];
        _area = layout.Area;
        _place = Fitted(sketch);
        _arrows = SketchArrows.Of(_place, units);
        _dimensions = Dimensions(_place);
        _lever = new LeverDrawing(_place);
        _placer = new LabelPlacer(_area);
    }

    /// <summary>Draws a lever from the side.</summary>
    /// <param name="sketch">The lever.</param>
    /// <param name="title">The case, in words.</param>
    /// <param name="units">Metric or US.</param>
    /// <param name="page">Size of the drawing; landscape when left out.</param>
    /// <returns>The drawing.</returns>
    public static Chart Draw(LeverSketch sketch, string title, UnitStyle units, ChartPage? page = null)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        ArgumentNullException.ThrowIfNull(units);
        return new SideView(sketch, title, units, page ?? ChartPage.Landscape).Drawn();
    }

    private Chart Drawn()
    {
        foreach (SKPoint[] line in _lever.Outlines())
        {
            _placer.Avoid(line);
        }

        _placer.Block(new LabelBox(_place.Nut.X, _place.Nut.Y, 0, 0).Grown(_lever.TorqueRadius));
        foreach (SKPoint[] line in _arrows.SelectMany(arrow => arrow.Outlines()))
        {
            _placer.Avoid(line);
        }

        _dimensions.ForEach(Label);
        _dimensions.ForEach(dimension => _placer.Avoid([dimension.From, dimension.Start, dimension.Stop, dimension.To]));
        _arrows.ForEach(Label);
        LabelNut();
        LabelGives();
        LabelAngle();
        return new Chart(_page, _words.Title, _words.Answer, _texts, DrawAll) { Crowded = _crowded };
    }

    /// <summary>The largest scale at which arrows, dimensions and lever all lie in the area, in its middle.</summary>
    private SketchGeometry Fitted(LeverSketch sketch)
    {
        var (small, large) = (0.001f, 5f);
        for (int i = 0; i < 16; i++)
        {
            float middle = MathF.Sqrt(small * large);
            SKRect extent = Extent(new SketchGeometry(sketch, middle, default));
            bool fits = extent.Width <= _area.Width - 2 * Rim && extent.Height <= _area.Height - 2 * Rim;
            (small, large) = fits ? (middle, large) : (small, middle);
        }

        SKRect whole = Extent(new SketchGeometry(sketch, small, default));
        return new SketchGeometry(sketch, small, new SKPoint(_area.Middle.X - whole.MidX, _area.Middle.Y - whole.MidY));
    }

    private SKRect Extent(SketchGeometry place)
    {
        float round = new LeverDrawing(place).TorqueRadius + 30;
        var extent = new SKRect(place.Nut.X - round, place.Nut.Y - round, place.Nut.X + round, place.Nut.Y + round);
        IEnumerable<SKPoint> points = SketchArrows.Of(place, _units).SelectMany(arrow => new[] { arrow.From, arrow.To })
            .Concat(Dimensions(place).SelectMany(dimension => new[] { dimension.Start, dimension.Stop }))
            .Append(place.End)
            .Append(SketchGeometry.Moved(place.Hands, place.TubeAlong, -place.InnerGrip));
        foreach (SKPoint point in points)
        {
            float rim = Math.Max(24, place.HandsHalf + 8);
            extent.Union(new SKRect(point.X - rim, point.Y - rim, point.X + rim, point.Y + rim));
        }

        return extent;
    }

    private List<Dimension> Dimensions(SketchGeometry place)
    {
        SKPoint below = SketchGeometry.Moved(default, place.Above(place.Along), -1);
        float near = SketchArrows.MouthLength(place) + 26;
        SKPoint mouth = place.OnBar(place.Sketch.BarMm - (place.Sketch.Tube?.OverlapMm ?? 0), 0);
        SKPoint tip = place.OnBar(place.Sketch.BarMm, 0);
        SKPoint hands = place.Hands;
        var reach = new Dimension($"reach {Words(place.Sketch.ReachMm)}", place.Nut, hands, below, near + (place.Sketch.Tube is null ? 30 : 40));
        return place.Sketch.Tube is not { } tube
            ? [reach]
            : [
                new Dimension($"overlap {Words(tube.OverlapMm)}", mouth, tip, below, near),
                new Dimension($"hands to tip {Words(tube.HandToTipMm)}", tip, hands, below, near),
                reach];
    }

    private string Words(double mm) => SideViewWords.Millimetres(mm, _units);

    private void Label(ForceArrow arrow) => Place(new LabelWish(
        arrow.Words, new TextLook(_page.TextSize, true, arrow.Color, true), Between(arrow.From, arrow.To))
    {
        Along = 0.5,
        Target = new SKPoint((arrow.From.X + arrow.To.X) / 2, (arrow.From.Y + arrow.To.Y) / 2),
        Widest = 0.34f * _area.Width,
    });

    /// <summary>On its line where that is long enough, else beside it.</summary>
    private void Label(Dimension dimension)
    {
        var look = new TextLook(_page.SmallSize, false, Ink.Quiet, true);
        SKPoint run = dimension.Stop - dimension.Start;
        SKSize size = ChartText.Measure([dimension.Words], look);
        bool fits = Math.Abs(run.X) > size.Width + 16 || Math.Abs(run.Y) > size.Height + 40;
        Place(new LabelWish(dimension.Words, look, Between(dimension.Start, dimension.Stop)) { Along = 0.5, Inside = fits });
    }

    private void LabelNut()
    {
        string torque = _units.Torque(Torque.FromNewtonMillimeters(_place.Sketch.TorqueNmm)).Replace(' ', '\u00A0');
        SKPoint behind = SketchGeometry.Moved(_place.Nut, _place.Square, -_lever.TorqueRadius);
        SKPoint aside = SketchGeometry.Moved(SketchGeometry.Moved(behind, _place.Square, 20), _place.Push, -40);
        Place(new LabelWish($"nut: {torque}", new TextLook(_page.TextSize, true, Ink.Need, true), [behind, aside])
        {
            Widest = 0.25f * _area.Width,
        });
    }

    private void LabelGives()
    {
        if (_place.Sketch.Gives is { } part)
        {
            Place(new LabelWish($"{PartWords.Breaks(part.Kind)} here", new TextLook(_page.TextSize, true, Ink.Stop, true), [.. _lever.Ring(part.Kind)])
            {
                MindsInk = 12,
            });
        }
    }

    private void LabelAngle()
    {
        double angle = _place.Sketch.PastSquareRad;
        string words = angle >= 0.005 ? VerdictWords.Angle(angle, _place.Sketch.Push) : _place.Sketch.Push == Push.Across ? "square" : "level";
        Place(new LabelWish(words, new TextLook(_page.TextSize, false, Ink.Quiet, true), [_lever.OnArc(angle / 2)]));
    }

    private void Place(LabelWish wish)
    {
        ChartText? text = _placer.Place(wish);
        _texts.AddRange(text is null ? [] : [text]);
        _crowded.AddRange(text is null ? [wish.Text] : []);
    }

    private static SKPoint[] Between(SKPoint from, SKPoint to) =>
        [.. Enumerable.Range(0, 11).Select(i => new SKPoint(from.X + (to.X - from.X) * i / 10, from.Y + (to.Y - from.Y) * i / 10))];

    private void DrawAll(SKCanvas canvas)
    {
        _dimensions.ForEach(dimension => dimension.Draw(canvas));
        _lever.Draw(canvas);
        _arrows.ForEach(arrow => arrow.Draw(canvas));
        _texts.ForEach(text => text.Draw(canvas));
    }
}
