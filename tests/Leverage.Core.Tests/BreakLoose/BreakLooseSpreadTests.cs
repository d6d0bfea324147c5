using Leverage.Probability;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Threads;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.BreakLoose;

/// <summary>The spread of the break-loose torque: its rules, its ends and its table, to their last digits.</summary>
public static class BreakLooseSpreadTests
{
    /// <summary>Moments of the standard normal: 0 for odd powers, (k − 1)!! for even ones; seven points hold them to the 13th.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(4, 3)]
    [InlineData(6, 15)]
    [InlineData(8, 105)]
    [InlineData(10, 945)]
    [InlineData(12, 10395)]
    [InlineData(13, 0)]
    public static void Friction_is_summed_over_points_that_hold_the_moments_of_the_normal(int power, double moment) =>
        Assert.Equal(moment, BreakLooseSpread.NormalRule.Sum(point => point.Weight * Math.Pow(point.Deviate, power)), 1e-9 * Math.Max(1, moment));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public static void Preload_lost_is_summed_over_points_that_hold_the_moments_of_an_even_spread(int power) =>
        Assert.Equal(1.0 / (power + 1), BreakLooseSpread.EvenRule.Sum(point => point.Weight * Math.Pow(point.Share, power)), 1e-14);

    [Fact]
    public static void It_ends_six_sigmas_about_its_medians()
    {
        var spread = new BreakLooseTorque([(100e3, 0.5), (200e3, 0.5)], new Growth(1.5, 0.2), 0);
        Assert.Equal(Math.Log(150e3) - 1.2, spread.LogLow, 1e-12);
        Assert.Equal(Math.Log(300e3) + 1.2, spread.LogHigh, 1e-12);
        Assert.Equal(0.2, spread.Narrowest);
    }

    [Fact]
    public static void A_fixed_part_shifts_the_ends_and_heat_leaves_a_hundredth()
    {
        var locked = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), 50e3);
        Assert.Equal(Math.Log(100e3 * Math.Exp(-1.2) + 50e3), locked.LogLow, 1e-12);
        Assert.Equal(0.2 * 100 / 150, locked.Narrowest, 1e-12);
        Assert.Equal(double.NegativeInfinity, locked.LogJump);
        var hot = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), -90e3);
        Assert.Equal(Math.Log(0.01 * 100e3 * Math.Exp(-1.2)), hot.LogLow, 1e-12);
        Assert.Equal(Math.Log(90e3 * 0.01 / 0.99), hot.LogJump, 1e-12);
    }

    [Fact]
    public static void Below_its_fixed_part_it_certainly_holds() =>
        Assert.Equal((1, 0), new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), 50e3).At(Math.Log(40e3)));

    [Fact]
    public static void A_growth_without_scatter_keeps_a_thousandth()
    {
        var sharp = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0), 0);
        Assert.Equal(1e-3 * 2 * LogNormalSpread.P90Deviate, Math.Log(sharp.Quantile(0.9) / sharp.Quantile(0.1)), 1e-9);
    }

    [Fact]
    public static void Quantiles_from_one_in_a_million_to_all_but_one_are_given()
    {
        var spread = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), 0);
        foreach (double share in new[] { 1e-6, 1 - 1e-6 })
        {
            Assert.Equal(100e3 * Math.Exp(0.2 * Normal.InvCDF(0, 1, share)), spread.Quantile(share), 30.0);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => spread.Quantile(0.995e-6));
        Assert.Throws<ArgumentOutOfRangeException>(() => spread.Quantile(1 - 0.995e-6));
    }

    [Fact]
    public static void A_table_is_made_unless_the_density_jumps_within_it()
    {
        var cold = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), 0);
        var hot = new BreakLooseTorque([(100e3, 1)], new Growth(1, 0.2), -90e3);
        Assert.NotSame(cold, cold.Tabulated());
        Assert.Same(hot, hot.Tabulated());
    }

    [Theory]
    [InlineData(1, 0.1, 321)]
    [InlineData(0.001, 1, 2)]
    [InlineData(1, 1e-9, 32769)]
    public static void The_table_has_32_cells_in_the_narrowest_spread(double width, double narrowest, int nodes)
    {
        int asked = 0;
        var curve = new SurvivalCurve(3, 3 + width, narrowest, at =>
        {
            asked++;
            return new SurvivalCurve.Node(at * at, -2 * at, -2);
        });
        Assert.Equal(nodes, asked);
        Assert.Null(curve.At(3 - 1e-9));
        Assert.Null(curve.At(3 + width));
        foreach (double share in new[] { 0, 0.3, 0.71, 0.999 })
        {
            double at = 3 + share * width;
            Assert.Equal(at * at, curve.At(at)!.Value.Survival, 1e-9);
            Assert.Equal(-2 * at, curve.At(at)!.Value.Density, 1e-9);
        }
    }

    [Theory]
    [InlineData("locked-medium")]
    [InlineData("locked-high")]
    public static void A_lockers_grip_grows_with_the_diameter_squared(string condition)
    {
        double locker = Condition.Named(condition).LockerNm;
        Assert.Equal(1000 * locker * (20 / 9.53) * (20 / 9.53), BreakLooseSpread.Extra(Nuts.Of(condition, 100, "M20")), 1e-6);
    }

    [Fact]
    public static void Without_a_locker_only_the_nut_itself_grips()
    {
        foreach (string? thread in new[] { null, "M20" })
        {
            Assert.Equal(7000, BreakLooseSpread.Extra(Nuts.Of("used", 100, thread) with { Prevailing = UnitsNet.Torque.FromNewtonMeters(7) }));
        }
    }

    [Fact]
    public static void Soak_leaves_half_of_the_growth_above_1_but_never_less_than_a_clean_joint()
    {
        var rusty = new Growth(2, 0.4);
        double z = LogNormalSpread.P90Deviate;
        double low = 1 + 0.5 * (2 * Math.Exp(-0.4 * z) - 1);
        double high = 1 + 0.5 * (2 * Math.Exp(0.4 * z) - 1);
        Growth soaked = rusty.Soaked(new Growth(0.8, 0.1));
        Assert.Equal(1.5, soaked.Median, 1e-12);
        Assert.Equal(Math.Log(high / low) / (2 * z), soaked.Sigma, 1e-12);
    }

    [Fact]
    public static void A_soak_on_the_book_torques_basis_brings_clean_to_that_basis()
    {
        Fastener soaked = Nuts.Of("rusted", 100, "M16") with { Soaked = true };
        Growth clean = Condition.Named("clean").Growth;
        double share = BreakLooseSpread.Share(ScrewThreadOf("M16"), 0.14) * 0.95;
        Growth expected = Condition.Named("rusted").Growth.Soaked(clean with { Median = clean.Median * share });
        Assert.Equal(100e3 * expected.Median, BreakLooseSpread.Torque(soaked).Quantile(0.5), 0.01);
        Assert.Equal(100e3 * expected.Quantile(0.1), BreakLooseSpread.Torque(soaked).Quantile(0.1), 0.01);
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(3.01, false)]
    public static void A_joint_is_at_most_twice_as_soft_as_its_bolt(double ratio, bool fits)
    {
        foreach (Action ask in new Action[] { () => HeatedJoint.ReleaseTemperature(100, ratio), () => HeatedJoint.PreloadRise(100, ratio) })
        {
            if (fits)
            {
                ask();
            }
            else
            {
                Assert.Throws<ArgumentOutOfRangeException>(ask);
            }
        }
    }

    private static ScrewThread ScrewThreadOf(string name) => ThreadCatalog.Named(name);
}
