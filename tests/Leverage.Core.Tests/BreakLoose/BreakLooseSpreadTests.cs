using Leverage.BreakLoose;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.BreakLoose;

/// <summary>The spread of the break-loose torque: its rules, its ends, its grids, and what a nut has shown.</summary>
public static class BreakLooseSpreadTests
{
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
        BreakLooseTorque spread = Spread(new Growth(1.5, 0.2), 0, 100e3, 200e3);
        Assert.Equal(Math.Log(150e3) - 1.2, spread.LogLow, 1e-12);
        Assert.Equal(Math.Log(300e3) + 1.2, spread.LogHigh, 1e-12);
        Assert.Equal(0.2, spread.Narrowest, 1e-12);
    }

    [Fact]
    public static void A_fixed_part_shifts_the_ends_and_heat_leaves_a_hundredth()
    {
        BreakLooseTorque locked = Spread(new Growth(1, 0.2), 50e3, 100e3);
        Assert.Equal(Math.Log(100e3 * Math.Exp(-1.2) + 50e3), locked.LogLow, 1e-12);
        Assert.Equal(0.2 * Math.Exp(-1.2) / (Math.Exp(-1.2) + 0.5), locked.Narrowest, 1e-12);
        Assert.Empty(locked.Breaks);
        BreakLooseTorque hot = Spread(new Growth(1, 0.2), -90e3, 100e3);
        Assert.Equal(Math.Log(0.01 * 100e3 * Math.Exp(-1.2)), hot.LogLow, 1e-12);
        Assert.Equal(Math.Log(90e3 * 0.01 / 0.99), Assert.Single(hot.Breaks), 1e-12);
    }

    [Fact]
    public static void Below_its_fixed_part_it_certainly_holds() =>
        Assert.Equal((1, 0), Spread(new Growth(1, 0.2), 50e3, 100e3).At(Math.Log(40e3)));

    [Fact]
    public static void A_growth_without_scatter_keeps_a_thousandth()
    {
        BreakLooseTorque sharp = Spread(new Growth(1, 0), 0, 100e3);
        Assert.Equal(1e-3 * 2 * LogNormalSpread.P90Deviate, Math.Log(sharp.Quantile(0.9) / sharp.Quantile(0.1)), 1e-9);
    }

    [Fact]
    public static void Quantiles_from_one_in_a_million_to_all_but_one_are_given()
    {
        BreakLooseTorque spread = Spread(new Growth(1, 0.2), 0, 100e3);
        foreach (double share in new[] { 1e-6, 1 - 1e-6 })
        {
            Assert.Equal(100e3 * Math.Exp(0.2 * Normal.InvCDF(0, 1, share)), spread.Quantile(share), 30.0);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => spread.Quantile(0.995e-6));
        Assert.Throws<ArgumentOutOfRangeException>(() => spread.Quantile(1 - 0.995e-6));
    }

    /// <summary>Cut off below H: the quantile at p is that of 1 − (1 − p)·S(H); 540, 711 and 1065 by hand with a table of the normal.</summary>
    [Fact]
    public static void A_nut_of_630_that_has_held_500_takes_540_711_or_1065()
    {
        var growth = new Growth(630, LogNormalSpread.SigmaFromP10P90(396, 1003));
        BreakLooseTorque shown = Spread(growth, 0, 1000).HavingHeld(500e3);
        Near.Equal(540, shown.Quantile(0.1) / 1000, 1e-3);
        Near.Equal(711, shown.Quantile(0.5) / 1000, 1e-3);
        Near.Equal(1065, shown.Quantile(0.9) / 1000, 1e-3);
        Assert.Equal(1, shown.Survival(499e3), 1e-12);
        Near.Equal(shown.Quantile(0.3), shown.HavingHeld(300e3).Quantile(0.3), 1e-9);
        Near.Equal(Spread(growth, 0, 1000).HavingHeld(700e3).Quantile(0.3), shown.HavingHeld(700e3).Quantile(0.3), 1e-9);
    }

    /// <summary>Two cases, 100 and 200 N·m to start: having held makes the tighter one likelier, by Bayes.</summary>
    [Fact]
    public static void Having_held_makes_the_tighter_case_likelier()
    {
        BreakLooseTorque both = Spread(new Growth(1, 0.3), 0, 100e3, 200e3);
        double held = 150e3;
        double Holds(double scale, double torque) => Normal.CDF(0, 1, -Math.Log(torque / scale) / 0.3);
        double whole = (Holds(100e3, held) + Holds(200e3, held)) / 2;
        Assert.Equal((Holds(100e3, 220e3) + Holds(200e3, 220e3)) / 2 / whole, both.HavingHeld(held).Survival(220e3), 1e-8);
        Assert.Throws<ArgumentOutOfRangeException>(() => both.HavingHeld(1e9));
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
    public static void A_soak_takes_half_of_what_rust_put_on_the_book_torque()
    {
        // The table's row: 0.86, 1.37 and 2.18 of the book torque. What needs less than that is as it was.
        BreakLooseTorque soaked = BreakLooseSpread.Torque(Nuts.Of("rusted", 100, "M16") with { Soaked = true });
        Assert.Equal(100e3 * (1 + 0.5 * (1.37 - 1)), soaked.Quantile(0.5), 0.01);
        Assert.Equal(100e3 * 1.37 * Math.Sqrt(0.86 / 2.18), soaked.Quantile(0.1), 0.01);
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

    private static BreakLooseTorque Spread(Growth growth, double shiftNmm, params double[] scalesNmm) => new(
        [.. scalesNmm.Select(scale => new NutCase(1.0 / scalesNmm.Length, Math.Log(scale), shiftNmm, default))], new GrowthCurve(growth));
}
