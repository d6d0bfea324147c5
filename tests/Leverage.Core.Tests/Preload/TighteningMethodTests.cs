using FsCheck.Xunit;
using Leverage.Preload;
using Leverage.Reading;

namespace Leverage.Tests.Preload;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class TighteningMethodTests
{
    [Property]
    public void The_factor_is_what_the_scatter_of_two_equal_joints_makes(Sized mean, Sized scatter)
    {
        var (f, s) = (mean.Log(1, 1e6), scatter.Even(0, 0.99));
        Near.Equal((f + s * f) / (f - s * f), ClampScatter.LargestOverSmallest(s));
    }

    [Theory]
    [InlineData("wrench", 0.23, 1.7778)]
    [InlineData("angle", 0.05, 1.2727)]
    [InlineData("feel", 0.35, 2.0769)]
    [InlineData("impact", 0.60, 4)]
    public void Each_way_has_its_scatter_and_its_factor(string name, double low, double factor)
    {
        TighteningMethod method = TighteningMethod.Named(name);
        Assert.Equal(low, method.Low, 12);
        Near.Equal(factor, method.AlphaA, 1e-4);
    }

    [Fact]
    public void A_second_click_and_what_settles_are_those_of_the_tables()
    {
        Assert.Equal((0.15, 0.04), (TighteningMethod.SecondClick, TighteningMethod.WrenchAlone));
        Assert.Equal((0.9, 0.975), SettledPreload.Left);
    }

    [Fact]
    public void A_way_nobody_knows_is_refused_with_the_nearest() => Assert.Contains(
        "Nearest: wrench", Assert.Throws<InputException>(() => TighteningMethod.Named("wrensh")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_scatter_that_is_none_is_refused(double scatter) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ClampScatter.LargestOverSmallest(scatter));
}
