using Leverage.Grades;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Threads;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Tests.LoadPath;

/// <summary>Each link's limit worked out by hand, with what it really stands over it and whether the figure is confirmed.</summary>
public sealed class LinkByHandTests
{
    private static readonly LeverGeometry Lever = LeverGeometry.WithTube(600, 1000, 250, 95);

    private static readonly Tube Tube = Tube.OfSection(Mm(33.7), Mm(3.2), Mm(1000), Mpa(235));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_bar_folds_at_its_plastic_moment_takes_a_set_before_and_is_confirmed_when_it_was_measured(bool assumed)
    {
        LinkLimit bar = LinkList.Bending(new Bar(Mm(600), Mm(20), Mpa(900), Mm(450)), assumed, null)!.Value;
        Holds(bar, 1_200_000, 1, !assumed);
        Near.Equal(706_858.347, bar.SetsNmm!.Value, 1e-8);
        Assert.Equal((LimitSource.Folds, 20), (bar.Source, bar.SizeMm));
    }

    /// <summary>900·15.5³/6 = 558.58 and 900·π/32·15.5³ = 329.04 N·m beside the square's 424; at 600 MPa 372.39 would be less.</summary>
    [Theory]
    [InlineData(900, 558_581.25, 329_031.516, 1, LimitSource.Folds)]
    [InlineData(600, 424_000, 249_756.616, 1.25, LimitSource.BarOfSquare)]
    public void A_bar_of_unknown_size_is_never_below_its_square(double yieldMpa, double nmm, double sets, double median, LimitSource source)
    {
        LinkLimit bar = LinkList.Bending(new Bar(Mm(600), Mm(15.5), Mpa(yieldMpa), Mm(450)), true, "1/2")!.Value;
        Holds(bar, nmm, median, false);
        Near.Equal(sets, bar.SetsNmm!.Value, 1e-8);
        Assert.Equal(source, bar.Source);
    }

    [Fact]
    public void A_bar_of_unknown_shape_is_no_link() => Assert.Null(LinkList.Bending(new Bar(Mm(600), null, Mpa(900), Mm(450)), false, null));

    [Theory]
    [InlineData(LinkKind.Adapter)]
    [InlineData(LinkKind.Extension)]
    [InlineData(LinkKind.Square)]
    public void A_square_stands_a_quarter_more_than_its_test_and_is_never_confirmed(LinkKind kind)
    {
        LinkLimit link = LinkList.Square("1/2", kind);
        Holds(link, 424_000, 1.25, false);
        Assert.Equal((kind, "1/2"), (link.Kind, link.Name));
    }

    [Fact]
    public void The_squares_say_whether_they_are_recalled_or_worked_out()
    {
        Assert.Equal(LimitSource.LeastSquare, LinkList.Square("1/2", LinkKind.Square).Source);
        Assert.Equal(LimitSource.RecalledTest, LinkList.Square("3/4", LinkKind.Square).Source);
    }

    [Fact]
    public void A_socket_stands_a_quarter_more_than_its_test_in_print() => Holds(LinkList.Hexagon(LinkKind.Socket, 36)!.Value, 1_165_000, 1.25, true);

    [Fact]
    public void A_pin_gives_in_double_shear() => Holds(
        LinkList.Pin(new Bar(Mm(600), Mm(20), Mpa(900), Mm(450), Pin: new FlexPin(Mm(8), Mm(12))))!.Value, 313_234.380, 1, false);

    [Fact]
    public void A_stud_twists_off_at_its_stress_area()
    {
        // ISO 898-1: d − 0.9382·P = 22.5927 mm; π/12·22.5927³·0.577·830.
        ScrewThread thread = ThreadCatalog.Named("M24x1.5");
        Holds(LinkList.Stud(thread, GradeCatalog.Bolt("8.8", thread)), 1_445_862.316, 1, true);
    }

    [Fact]
    public void A_tube_bends_at_the_tip_and_dents_at_tip_and_mouth()
    {
        LinkLimit[] links = WithTube(TubeLimits.Of(Tube), Lever);
        Assert.Equal([LinkKind.TubeBending, LinkKind.TubeDentTip, LinkKind.TubeDentMouth], links.Select(link => link.Kind));
        double a = 1000 - 250 - 95, reach = 600 + a;
        Holds(links[0], 702_114.827 / a * reach, 1, true);
        Holds(links[1], 3411.69713 / ((a + 250) / 250) * reach, 1, true);
        Holds(links[2], 2388.18799 / (a / 250) * reach, 1, true);
        Assert.Equal(LimitSource.PlasticTube, links[0].Source);
        LinkLimit[] unknown = WithTube(TubeLimits.Of(Tube with { UnknownSteel = true }), Lever);
        Assert.All(links, link => Assert.Equal(0.10, link.Scatter));
        Assert.All(unknown, link => Assert.Equal((1.25, 0.08), (link.MedianOverLimit, link.Scatter)));
    }

    [Fact]
    public void A_thin_tube_bends_at_first_yield_and_says_so()
    {
        TubeLimits thin = TubeLimits.Of(Tube.OfSection(Mm(100), Mm(1.5), Mm(1000), Mpa(235)));
        Assert.Equal(LimitSource.ElasticTube, WithTube(thin, Lever)[0].Source);
    }

    [Fact]
    public void A_jack_handle_carries_what_its_standard_says_and_is_not_judged_for_dents()
    {
        TubeLimits handle = TubeLimits.Of(new Tube(Mm(30), null, Mm(1100), Mpa(235)));
        Assert.Equal(new TubeLimits(495_000, double.PositiveInfinity, double.PositiveInfinity, LimitSource.JackHandle, true), handle);
        LinkLimit only = Assert.Single(WithTube(handle, Lever));
        Assert.Equal((LimitSource.JackHandle, 1.25), (only.Source, only.MedianOverLimit));
    }

    [Fact]
    public void With_the_hands_at_the_bar_s_tip_only_the_tip_presses()
    {
        LeverGeometry atTip = LeverGeometry.WithTube(600, 345, 250, 95);
        Assert.Equal(0, atTip.HandToTipMm);
        Assert.Equal([LinkKind.TubeDentTip], WithTube(TubeLimits.Of(Tube), atTip).Select(link => link.Kind));
    }

    [Fact]
    public void A_bare_lever_has_no_tube() =>
        Assert.Equal((505.0, 0.0, 0.0, false), Parts(LeverGeometry.Bare(600, 95)));

    [Fact]
    public void A_tube_is_as_wide_as_its_bore_and_two_walls()
    {
        Assert.Equal(27.3, Tube.Bore.Millimeters, 1e-9);
        Assert.Equal(33.7, Tube.Outside!.Value.Millimeters, 1e-9);
    }

    private static LinkLimit[] WithTube(TubeLimits tube, LeverGeometry lever)
    {
        var links = new List<LinkLimit>();
        LinkList.AddTube(tube, lever, links);
        return [.. links];
    }

    private static (double, double, double, bool) Parts(LeverGeometry lever) =>
        (lever.ReachMm, lever.HandToTipMm, lever.OverlapMm, lever.HasTube);

    private static void Holds(LinkLimit link, double limitNmm, double median, bool confirmed)
    {
        Near.Equal(limitNmm, link.LimitNmm, 1e-8);
        Assert.Equal((median, confirmed), (link.MedianOverLimit, link.Confirmed));
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Pressure Mpa(double value) => Pressure.FromMegapascals(value);
}
