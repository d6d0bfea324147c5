using FsCheck.Xunit;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Probability;
using Leverage.Tables;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Tests.LoadPath;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class LinkListTests
{
    [Property]
    public void At_its_limit_each_part_of_the_tube_carries_just_what_it_stands(
        Sized outside, Sized wall, Sized yield, Sized bar, Sized whole, Sized overlap)
    {
        double d = outside.Log(15, 60);
        Tube tube = Tube.OfSection(
            Length.FromMillimeters(d), Length.FromMillimeters(d * wall.Log(0.03, 0.2)),
            Length.FromMillimeters(whole.Log(400, 2000)), Pressure.FromMegapascals(yield.Log(150, 800)));
        LeverGeometry lever = LeverGeometry.WithTube(bar.Log(300, 1000), tube.Length.Millimeters, overlap.Even(20, 250), 95);
        TubeLimits limits = TubeLimits.Of(tube);
        double Hand(double torqueNmm) => torqueNmm / lever.ReachMm;
        var (a, c) = (lever.HandToTipMm, lever.OverlapMm);
        Near.Equal(limits.TipN, TubeBearing.TipReaction(Hand(limits.TipTorque(lever)), a, c));
        Near.Equal(limits.MouthN, TubeBearing.MouthReaction(Hand(limits.MouthTorque(lever)), a, c));
        Near.Equal(limits.MomentNmm, TubeBearing.TubeMoment(Hand(limits.BendingTorque(lever)), a));
        Near.Equal(0.7, limits.MouthN / limits.TipN);
        bool compact = d / tube.Wall!.Value.Millimeters <= 50 * 235 / tube.Yield.Megapascals;
        double modulus = compact
            ? TubeSection.PlasticModulus(d, tube.Wall.Value.Millimeters)
            : TubeSection.ElasticModulus(d, tube.Wall.Value.Millimeters);
        Near.Equal(tube.Yield.Megapascals * modulus, limits.MomentNmm);
        Assert.Equal(compact ? LimitSource.PlasticTube : LimitSource.ElasticTube, limits.Source);
        Near.Equal(Math.Min(limits.TipTorque(lever), Math.Min(limits.MouthTorque(lever), limits.BendingTorque(lever))), limits.BreakingTorque(lever));
    }

    [Fact]
    public void A_jack_handle_carries_450_N_at_its_end_and_its_wall_is_not_judged()
    {
        var limits = TubeLimits.Of(new Tube(Length.FromMillimeters(30), null, Length.FromMillimeters(1100), Pressure.FromMegapascals(235)));
        Assert.Equal(450 * 1100, limits.MomentNmm, 1e-6);
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (limits.TipN, limits.MouthN));
    }

    /// <summary>DIN ISO 1711-1 as tabled; 0.2659·s^2.3405 by hand; 22 of the open series halfway in ln between 198 at 21 and 255 at 23.</summary>
    [Theory]
    [InlineData("ring", 17, 201, LimitSource.TestTorque)]
    [InlineData("ring", 8, 34.5, LimitSource.TestTorque)]
    [InlineData("socket", 22, 368.688, LimitSource.SeriesLaw)]
    [InlineData("socket", 30, 761.940, LimitSource.SeriesLaw)]
    [InlineData("ring", 46, 2072.06, LimitSource.SeriesLaw)]
    [InlineData("socket", 60, 3859.06, LimitSource.SeriesLaw)]
    [InlineData("open", 22, 225.347, LimitSource.BetweenSizes)]
    [InlineData("key", 7, 81.397, LimitSource.BetweenSizes)]
    public void A_tool_of_no_tabled_size_stands_what_its_series_says(string tool, double sizeMm, double nm, LimitSource source)
    {
        ToolLimit limit = ToolStrength.Test(tool, sizeMm)!.Value;
        Near.Equal(nm, limit.TorqueNm, 1e-5);
        Assert.Equal(source, limit.Source);
    }

    [Property]
    public void The_law_of_series_A_keeps_to_its_printed_sizes_and_grows_as_a_power(Sized size, Sized scale)
    {
        foreach (TableRow row in TableCatalog.Tables["tool-torques"].Rows.Where(row => row.Key == "ring"))
        {
            Near.Equal(1000 * row.Number("test_torque_nm"), SpannerTest.SeriesA(row.Number("size_mm")), 6e-3);
        }

        var (s, k) = (size.Log(5, 60), scale.Log(0.5, 2));
        Near.Equal(Math.Pow(k, 2.3405), SpannerTest.SeriesA(k * s) / SpannerTest.SeriesA(s));
    }

    [Theory]
    [InlineData("ring", LinkKind.Ring, 5.4)]
    [InlineData("socket", LinkKind.Socket, 60.1)]
    [InlineData("open", LinkKind.Open, 41.1)]
    [InlineData("key", LinkKind.Key, 1.4)]
    public void A_tool_past_the_sizes_of_its_series_is_not_judged(string tool, LinkKind kind, double sizeMm)
    {
        Assert.Null(ToolStrength.Test(tool, sizeMm));
        Assert.Null(LinkList.Hexagon(kind, sizeMm));
    }

    [Fact]
    public void A_larger_tool_stands_more_and_an_open_end_less_than_a_ring()
    {
        var rows = TableCatalog.Tables["tool-torques"].Rows;
        foreach (var series in rows.GroupBy(row => row.Key, StringComparer.Ordinal))
        {
            var bySize = series.OrderBy(row => row.Number("size_mm")).Select(row => row.Number("test_torque_nm")).ToArray();
            Assert.Equal(bySize.Order(), bySize);
        }

        foreach (double size in rows.Where(row => row.Key == "open").Select(row => row.Number("size_mm")))
        {
            Assert.True(ToolStrength.Test("open", size)!.Value.TorqueNm < ToolStrength.Test("ring", size)!.Value.TorqueNm);
        }
    }

    [Fact]
    public void A_bigger_square_stands_more_and_none_is_confirmed()
    {
        double[] torques = [.. ToolStrength.Drives().Select(drive => ToolStrength.Square(drive).TorqueNm)];
        Assert.Equal(torques.Order(), torques);
        Assert.All(ToolStrength.Drives(), drive => Assert.False(ToolStrength.Square(drive).Confirmed));
    }

    [Fact]
    public void A_least_value_has_its_median_a_quarter_above_and_a_likely_one_on_itself()
    {
        LinkLimit ring = LinkList.Hexagon(LinkKind.Ring, 17)!.Value;
        Near.Equal(1.25 * 201e3, ring.Strength.MedianNmm);
        Assert.Equal(0.08, ring.Strength.Sigma);
        var bar = new Bar(Length.FromMillimeters(600), Length.FromMillimeters(20), Pressure.FromMegapascals(900), Length.FromMillimeters(450));
        LinkLimit bending = LinkList.Bending(bar, false, null)!.Value;
        Near.Equal(900 * 8000 / 6.0, bending.Strength.MedianNmm);
        Assert.Equal(0.10, bending.Strength.Sigma);
    }
}
