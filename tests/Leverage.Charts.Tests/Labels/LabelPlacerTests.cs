using System.Globalization;
using Leverage.Charts.Labels;
using SkiaSharp;

namespace Leverage.Charts.Tests.Labels;

public sealed class LabelPlacerTests
{
    private static readonly LabelBox Area = new(80, 60, 800, 500);
    private static readonly TextLook Look = new(22, false, SKColors.Black);

    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(30)]
    public void Labels_of_many_curves_never_overlap_and_never_leave_the_area(int count)
    {
        List<ChartText> placed = Place(count);
        Assert.Equal(count, placed.Count);
        for (int i = 0; i < count; i++)
        {
            Assert.True(Area.Contains(placed[i].Box));
            Assert.All(placed.Take(i), other => Assert.False(other.Box.Intersects(placed[i].Box)));
        }
    }

    [Fact]
    public void A_label_alone_stands_beside_its_curve_without_touching_it()
    {
        SKPoint[] curve = Curve(5);
        var placer = new LabelPlacer(Area);
        placer.Avoid(curve);
        LabelBox box = placer.Place(new LabelWish("alone", Look, curve))!.Box;
        Assert.DoesNotContain(curve, point => box.Contains(new LabelBox(point.X, point.Y, 0, 0)));
        Assert.Contains(curve, point => box.Grown(20).Contains(new LabelBox(point.X, point.Y, 0, 0)));
    }

    [Fact]
    public void A_label_keeps_out_of_a_blocked_box()
    {
        var placer = new LabelPlacer(Area);
        var block = new LabelBox(80, 60, 800, 300);
        placer.Block(block);
        Assert.False(placer.Place(new LabelWish("low", Look, [new SKPoint(400, 200)]))!.Box.Intersects(block));
    }

    [Fact]
    public void A_full_area_takes_no_label_rather_than_an_overlapping_one()
    {
        var placer = new LabelPlacer(Area);
        placer.Block(Area);
        Assert.Null(placer.Place(new LabelWish("no room", Look, Curve(3))));
    }

    [Fact]
    public void End_labels_keep_the_order_of_their_curves_and_do_not_overlap()
    {
        EndLabel[] labels = [.. Enumerable.Range(0, 12).Select(i => new EndLabel(Name(i), 200 + 3 * i, Look))];
        List<ChartText> texts = EndStack.Place(labels, new LabelBox(880, 60, 200, 500))!;
        Assert.Equal(labels.Select(label => label.Text), texts.Select(text => text.Text), StringComparer.Ordinal);
        for (int i = 1; i < texts.Count; i++)
        {
            Assert.True(texts[i].Box.Top >= texts[i - 1].Box.Bottom);
        }
    }

    [Fact]
    public void End_labels_with_room_stand_level_with_their_curves()
    {
        List<ChartText> texts = EndStack.Place([new EndLabel("a", 100, Look), new EndLabel("b", 400, Look)], new LabelBox(880, 60, 200, 500))!;
        Assert.InRange(texts[0].Box.Middle.Y, 96, 104);
        Assert.InRange(texts[1].Box.Middle.Y, 396, 404);
    }

    [Fact]
    public void End_labels_too_many_for_their_column_are_left_to_another_place()
    {
        EndLabel[] labels = [.. Enumerable.Range(0, 40).Select(i => new EndLabel(Name(i), 200, Look))];
        Assert.Null(EndStack.Place(labels, new LabelBox(880, 60, 200, 500)));
    }

    private static List<ChartText> Place(int count)
    {
        var placer = new LabelPlacer(Area);
        SKPoint[][] curves = [.. Enumerable.Range(1, count).Select(Curve)];
        Array.ForEach(curves, placer.Avoid);
        return [.. curves.Select((curve, i) => placer.Place(new LabelWish(Name(i), Look, curve))!)];
    }

    /// <summary>Hyperbolas, as a torque limit draws them.</summary>
    private static SKPoint[] Curve(int torque) =>
        [.. Enumerable.Range(0, 181).Select(i => new SKPoint(80 + i * 800f / 180, 560 - 2000f * (3 + torque) / (40 + i)))];

    private static string Name(int i) => string.Create(CultureInfo.InvariantCulture, $"{i} mm socket");
}
