using Leverage.Probability;
using FsCheck.Xunit;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;
using Leverage.Tables;
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
        Assert.Equal(compact, limits.FullyPlastic);
    }

    [Fact]
    public void A_jack_handle_carries_450_N_at_its_end_and_its_wall_is_not_judged()
    {
        var limits = TubeLimits.Of(new Tube(Length.FromMillimeters(30), null, Length.FromMillimeters(1100), Pressure.FromMegapascals(235)));
        Assert.Equal(450 * 1100, limits.MomentNmm, 1e-6);
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (limits.TipN, limits.MouthN));
    }

    /// <summary>DIN ISO 1711-1 series A at 17 mm as tabled, and what stands in for sizes between.</summary>
    [Theory]
    [InlineData("ring", 17, 201, "ISO 1711-1 test torque")]
    [InlineData("ring", 17.4, 201, "ISO 1711-1 test torque of the next smaller size, 17 mm")]
    [InlineData("ring", 8, 34.5, "ISO 1711-1 test torque")]
    public void A_tool_of_no_tabled_size_stands_what_the_next_smaller_does(string tool, double sizeMm, double nm, string source)
    {
        ToolLimit limit = ToolStrength.Test(tool, sizeMm)!.Value;
        Assert.Equal(nm, limit.TorqueNm, 1e-9);
        Assert.Equal(source, limit.Source);
    }

    [Theory]
    [InlineData("ring", 2)]
    [InlineData("socket", 200)]
    public void A_tool_far_from_every_tabled_size_is_not_judged(string tool, double sizeMm)
    {
        Assert.Null(ToolStrength.Test(tool, sizeMm));
        Assert.Null(LinkList.Hexagon(tool, sizeMm));
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
    public void A_test_torque_has_its_median_a_quarter_above_and_a_computed_limit_on_itself()
    {
        Near.Equal(1.25 * 201e3, LinkList.Hexagon("ring", 17)!.Value.Strength.MedianNmm);
        var bar = new Bar(Length.FromMillimeters(600), Length.FromMillimeters(20), Pressure.FromMegapascals(900), Length.FromMillimeters(450));
        LinkLimit bending = LinkList.Bending(bar, false)!.Value;
        Near.Equal(900 * Math.PI / 32 * 8000, bending.LimitNmm);
        Near.Equal(bending.LimitNmm, bending.Strength.MedianNmm);
        Assert.Equal(0.08, bending.Strength.Sigma);
    }
}
