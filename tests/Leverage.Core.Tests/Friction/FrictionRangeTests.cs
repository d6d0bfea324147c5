using FsCheck.Xunit;
using Leverage.Friction;
using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Tests.Friction;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class FrictionRangeTests
{
    [Fact]
    public void The_friction_taken_when_none_is_given_runs_from_a_tenth_to_a_fifth()
    {
        var range = FrictionRange.About(FrictionRange.Default);
        Assert.Equal(0.10, range.Low, 1e-12);
        Assert.Equal(0.14, range.Likely, 1e-12);
        Assert.Equal(0.196, range.High, 1e-12);
    }

    [Property]
    public void A_single_figure_lies_midway_on_the_scale_of_ratios(Sized friction)
    {
        var range = FrictionRange.About(friction.Log(0.01, 1));
        Near.Equal(range.Likely * range.Likely, range.Low * range.High);
        Near.Equal(Math.Log(1.4) / 1.2815515655446004, range.Sigma);
    }

    [Fact]
    public void Every_lubrication_and_every_handle_rises_from_low_over_likely_to_high()
    {
        foreach (var range in Keys("friction").Select(FrictionRange.Lubricated).Concat(Keys("handle-friction").Select(name => HandleSurface.Named(name).Friction)))
        {
            Assert.InRange(range.Low, 0.02, range.Likely);
            Assert.InRange(range.High, range.Likely, 0.6);
        }
    }

    [Fact]
    public void Oil_slips_more_than_a_dry_handle_and_grease_more_than_oil()
    {
        double[] low = [HandleSurface.Named("greasy").Friction.Low, HandleSurface.Named("oily").Friction.Low, HandleSurface.Named("dry").Friction.Low];
        Assert.Equal([0.10, 0.12, 0.20], low);
    }

    [Fact]
    public void An_unknown_state_gets_the_nearest_names() => Assert.Contains(
        "Nearest: oily", Assert.Throws<InputException>(() => HandleSurface.Named("oiled")).Line, StringComparison.Ordinal);

    private static IEnumerable<string> Keys(string table) => TableCatalog.Tables[table].Rows.Select(row => row.Key);
}
