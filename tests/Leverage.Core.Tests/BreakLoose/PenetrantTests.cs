using FsCheck.Xunit;
using Leverage.BreakLoose;

namespace Leverage.Tests.BreakLoose;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class PenetrantTests
{
    public static TheoryData<string, string?> Joints
    {
        get
        {
            var joints = new TheoryData<string, string?>();
            foreach (string condition in Nuts.Unlocked)
            {
                joints.Add(condition, null);
                joints.Add(condition, "M24x1.5");
                joints.Add(condition, "M6");
            }

            return joints;
        }
    }

    [Theory]
    [MemberData(nameof(Joints))]
    public void A_soak_raises_no_case_and_leaves_none_below_a_clean_joint(string condition, string? thread)
    {
        Fastener dry = Nuts.Of(condition, 100, thread);
        var before = Nuts.Quantiles(dry);
        var after = Nuts.Quantiles(dry with { Soaked = true });
        var clean = Nuts.Quantiles(Nuts.Of("clean", 100, thread));
        AtMost(after.Low, before.Low);
        AtMost(after.Likely, before.Likely);
        AtMost(after.High, before.High);

        // A fit through three percentiles can miss the outer two by a little; the clean joint is a bound to 3 %.
        AtMost(Math.Min(clean.Low, before.Low), 1.03 * after.Low);
        AtMost(Math.Min(clean.Likely, before.Likely), 1.01 * after.Likely);
        AtMost(Math.Min(clean.High, before.High), 1.03 * after.High);
    }

    [Fact]
    public void A_soak_takes_half_of_what_rust_has_added()
    {
        var (_, before, _) = Nuts.Quantiles(Nuts.Of("rusted", 100, "M24x1.5"));
        var (_, after, _) = Nuts.Quantiles(Nuts.Of("rusted", 100, "M24x1.5") with { Soaked = true });
        Near.Equal(137, before, 1e-4);
        Near.Equal(118.5, after, 1e-4);
    }

    [Fact]
    public void A_soak_does_nothing_for_a_clean_joint()
    {
        var (_, before, _) = Nuts.Quantiles(Nuts.Of("clean", 100, "M24x1.5"));
        var (_, after, _) = Nuts.Quantiles(Nuts.Of("clean", 100, "M24x1.5") with { Soaked = true });
        Near.Equal(before, after, 1e-6);
    }

    [Property]
    public void No_growth_is_raised_by_a_soak_nor_brought_below_clean_at_its_median(Sized median, Sized sigma, Sized clean, Sized scatter)
    {
        var growth = new Growth(median.Log(0.5, 5), sigma.Log(0.01, 0.6));
        var floor = new Growth(clean.Log(0.4, 1.2), scatter.Log(0.01, 0.3));
        Growth soaked = growth.Soaked(floor);
        AtMost(soaked.Quantile(0.1), growth.Quantile(0.1));
        AtMost(soaked.Median, growth.Median);
        AtMost(soaked.Quantile(0.9), growth.Quantile(0.9));
        AtMost(Math.Min(growth.Median, floor.Median), soaked.Median);
    }

    [Fact]
    public void A_soak_does_not_widen_a_joint_that_scatters_less_than_a_clean_one()
    {
        Growth soaked = new Growth(1.2, 0.01).Soaked(new Growth(1.2, 0.3));
        Assert.InRange(soaked.Sigma, 0, 0.01);
        Near.Equal(1.2, soaked.Median, 1e-12);
    }

    [Fact]
    public void A_growth_passes_through_its_median_and_spreads_as_its_outer_percentiles_do()
    {
        var growth = Growth.Through(0.86, 1.37, 2.18);
        Near.Equal(1.37, growth.Quantile(0.5));
        Near.Equal(2.18 / 0.86, growth.Quantile(0.9) / growth.Quantile(0.1), 1e-9);
    }

    private static void AtMost(double value, double most) => Assert.InRange(value, 0, most * (1 + 1e-9));
}
