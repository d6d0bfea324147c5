using Leverage.Grades;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;
using Leverage.Threads;
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
    public void A_bar_gives_at_first_yield_and_is_confirmed_when_it_was_measured(bool assumed) =>
        Holds(LinkList.Bending(new Bar(Mm(600), Mm(20), Mpa(900), Mm(450)), assumed)!.Value, 706_858.347, 1, !assumed);

    [Fact]
    public void A_bar_of_unknown_shape_is_no_link() => Assert.Null(LinkList.Bending(new Bar(Mm(600), null, Mpa(900), Mm(450)), false));

    [Theory]
    [InlineData(true, LinkKind.Adapter, "1/2 in adapter")]
    [InlineData(false, LinkKind.Square, "1/2 in square")]
    public void A_square_stands_a_quarter_more_than_its_test_and_is_never_confirmed(bool adapter, LinkKind kind, string part)
    {
        LinkLimit link = LinkList.Square("1/2", adapter);
        Holds(link, 424_000, 1.25, false);
        Assert.Equal((kind, part), (link.Kind, link.Part));
    }

    [Fact]
    public void The_squares_say_whether_they_are_recalled_or_worked_out()
    {
        Assert.Equal("plastic at 39 HRC, unconfirmed", LinkList.Square("1/2", false).Source);
        Assert.Equal("recalled test torque, unconfirmed", LinkList.Square("3/4", false).Source);
    }

    [Fact]
    public void A_socket_stands_a_quarter_more_than_its_test_in_print() => Holds(LinkList.Hexagon("socket", 36)!.Value, 1_165_000, 1.25, true);

    [Fact]
    public void A_pin_gives_in_double_shear() => Holds(
        LinkList.Pin(new Bar(Mm(600), Mm(20), Mpa(900), Mm(450), Pin: new FlexPin(Mm(8), Mm(12))))!.Value, 313_234.380, 1, false);

    [Fact]
    public void A_stud_twists_off_at_its_root()
    {
        ScrewThread thread = ThreadCatalog.Named("M24x1.5");
        Holds(LinkList.Stud(thread, GradeCatalog.Bolt("8.8", thread)), 1_364_312.719, 1, true);
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
        Assert.Equal("fully plastic, EN 1993-1-1 class 1", links[0].Source);
    }

    [Fact]
    public void A_thin_tube_bends_at_first_yield_and_says_so()
    {
        TubeLimits thin = TubeLimits.Of(Tube.OfSection(Mm(100), Mm(1.5), Mm(1000), Mpa(235)));
        Assert.False(thin.FullyPlastic);
        Assert.Equal("first yield, not class 1", WithTube(thin, Lever)[0].Source);
    }

    [Fact]
    public void A_jack_handle_carries_what_its_standard_says_and_is_not_judged_for_dents()
    {
        TubeLimits handle = TubeLimits.Of(new Tube(Mm(30), null, Mm(1100), Mpa(235)));
        Assert.Equal(new TubeLimits(495_000, double.PositiveInfinity, double.PositiveInfinity, false), handle);
        LinkLimit only = Assert.Single(WithTube(handle, Lever));
        Assert.Equal("floor: 450 N at a jack handle's end, AS 2615", only.Source);
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
