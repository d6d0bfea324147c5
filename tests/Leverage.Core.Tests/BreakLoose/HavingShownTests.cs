using Leverage.BreakLoose;

namespace Leverage.Tests.BreakLoose;

/// <summary>What a nut takes after what it and its like have shown.</summary>
public sealed class HavingShownTests
{
    private const double Sigma = 0.3628413;
    private static readonly double[] Rusted = [630e3];

    /// <summary>By hand: x = 630·exp(σ·z), z the normal deviate of 1 − (1 − p)·0.7379, where 0.7379 is the chance above (ln 500/630)/σ = −0.637.</summary>
    [Theory]
    [InlineData(0.1, 540)]
    [InlineData(0.5, 711)]
    [InlineData(0.9, 1065)]
    public void A_nut_that_held_500_of_a_likely_630_takes_more(double share, double expectedNm) =>
        Assert.Equal(expectedNm, Nut(Rusted, held: 500e3).Quantile(share) / 1000, 0.5);

    /// <summary>By hand: half of ln 1.59 goes over to the next, and the variance falls from σ² to ¾σ²: σ 0.314.</summary>
    [Fact]
    public void One_that_came_at_1_59_times_the_median_moves_the_next_to_1_26_times_it()
    {
        var next = Nut(Rusted, came: [1.59 * 630e3], sigma: 0.363);
        Assert.Equal(1.261, next.Quantile(0.5) / 630e3, 0.001);
        Assert.Equal(0.3144, Math.Log(next.Quantile(0.9) / next.Quantile(0.5)) / 1.2815516, 0.0002);
    }

    [Fact]
    public void Nothing_shown_changes_nothing()
    {
        var same = Nut(Rusted, 25e3);
        Assert.Equal(655e3, same.Quantile(0.5), 1);
        Assert.Equal(0.5, same.Survival(655e3), 1e-9);
    }

    [Fact]
    public void What_it_held_is_certain_and_the_curve_starts_there()
    {
        var held = Nut(Rusted, held: 500e3);
        Assert.Equal(1, held.Survival(499e3));
        Assert.Equal(Math.Log(500e3), held.LogLow, 1e-9);
        Assert.Equal((1, 0), held.At(Math.Log(499e3)));
        Assert.True(held.At(Math.Log(500.1e3)).Density > 0.5);
    }

    /// <summary>The density read from the curve integrates to one, and to the survival between.</summary>
    [Theory]
    [InlineData(0, 0, 0, 0)]
    [InlineData(600e3, 0, 0, 20e3)]
    [InlineData(0, 700e3, 800e3, 0)]
    [InlineData(2500e3, 500e3, 0, 0)]
    public void The_density_is_the_slope_of_the_survival(double held, double came, double alike, double extra)
    {
        var shown = Nut(Rusted, extra, held, came > 0 ? [came] : [], alike > 0 ? [alike] : []);
        const int Steps = 20_000;
        double step = (shown.LogHigh - shown.LogLow) / Steps;
        double sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double middle = shown.LogLow + (i + 0.5) * step;
            sum += step * shown.At(middle).Density;
            Assert.Equal(1 - sum, shown.At(middle + step / 2).Survival, 1e-5);
        }

        Assert.Equal(1, sum, 1e-5);
    }

    [Fact]
    public void Like_nuts_that_held_more_only_ever_make_it_harder()
    {
        double before = 0;
        foreach (double stood in new[] { 0, 200e3, 400e3, 800e3, 1600e3, 6000e3 })
        {
            double now = Nut(Rusted, alike: [stood]).Quantile(0.5);
            Assert.True(now >= before - 1, FormattableString.Invariant($"{stood}: {now} after {before}"));
            before = now;
        }
    }

    [Fact]
    public void With_nothing_common_like_nuts_tell_nothing() =>
        Assert.Equal(630e3, Nut(Rusted, came: [900e3], alike: [800e3], within: 1).Quantile(0.5), 1);

    [Fact]
    public void The_parts_of_a_mixture_are_weighed_by_what_came()
    {
        double[] two = [300e3, 900e3];
        Assert.InRange(Nut(two, came: [880e3], sigma: 0.1).Quantile(0.01), 600e3, 900e3);
        Assert.InRange(Nut(two, held: 600e3, sigma: 0.1).Quantile(0.01), 600e3, 800e3);
    }

    [Fact]
    public void What_holds_besides_the_joint_is_taken_off_what_like_nuts_showed()
    {
        var alone = Nut(Rusted, came: [700e3, 520e3], alike: [600e3]);
        var with = Nut(Rusted, extra: 40e3, came: [740e3, 560e3], alike: [640e3]);
        Assert.All((double[])[0.1, 0.5, 0.9], share => Assert.Equal(alone.Quantile(share) + 40e3, with.Quantile(share), 1));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(500e3, 0)]
    [InlineData(500e3, 700e3)]
    public void The_parts_of_a_mixture_are_one_together_whatever_was_shown(double came, double alike)
    {
        var shown = Nut([300e3, 500e3, 900e3], came: came > 0 ? [came] : [], alike: alike > 0 ? [alike] : []);
        Assert.Equal(1, shown.Survival(1), 1e-12);
        Assert.Equal(0.5, shown.Survival(shown.Quantile(0.5)), 1e-9);
    }

    /// <summary>Where heat takes off nearly all, a hundredth is left: T = 0.01·s, and below the bend a torque holds what a hundredfold would.</summary>
    [Theory]
    [InlineData(5e3, 500e3)]
    [InlineData(3e3, 300e3)]
    [InlineData(40e3, 660e3)]
    public void The_least_share_that_heat_leaves_is_the_nut_s_own_growth_a_hundredfold_down(double torque, double scaled)
    {
        BreakLooseTorque heated = Nut(Rusted, extra: -620e3);
        Assert.Equal(Nut(Rusted).Survival(scaled), heated.Survival(torque), 1e-9);
        double u = Math.Log(torque);
        Near.Equal((heated.At(u - 1e-4).Survival - heated.At(u + 1e-4).Survival) / 2e-4, heated.At(u).Density, 1e-4);
    }

    [Theory]
    [InlineData(-1, 0, 0, 0.5)]
    [InlineData(double.NaN, 0, 0, 0.5)]
    [InlineData(0, 50e3, 60e3, 0.5)]
    [InlineData(0, 0, 0, 0)]
    [InlineData(0, 0, 0, 1.01)]
    public void What_cannot_be_is_refused(double held, double came, double extra, double within) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Nut(Rusted, extra, held, came > 0 ? [came] : [], within: within));

    [Fact]
    public void A_scale_of_half_with_twice_the_growth_is_the_same_nut()
    {
        BreakLooseTorque plain = Nut([300e3, 900e3], came: [500e3, 620e3], alike: [560e3]);
        BreakLooseTorque scaled = Nut([150e3, 450e3], came: [500e3, 620e3], alike: [560e3], growth: 2);
        Assert.All((double[])[0.1, 0.5, 0.9], share => Near.Equal(plain.Quantile(share), scaled.Quantile(share), 1e-9));
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(1)]
    public void Nut_to_nut_is_a_hundredth_of_the_variance_at_least_and_all_of_it_at_most(double within) =>
        Assert.InRange(Nut(Rusted, came: [600e3], within: within).Quantile(0.5), 500e3, 700e3);

    [Fact]
    public void Just_under_a_hundredth_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Nut(Rusted, came: [600e3], within: 0.00999));

    /// <summary>What is left out above the end of the range is between a milliardth and twenty of what had not come by then.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 900e3)]
    [InlineData(300e3, 0)]
    [InlineData(300e3, 1200e3)]
    [InlineData(-200e3, 600e3)]
    public void Six_deviates_are_kept_whatever_was_held(double extra, double held)
    {
        BreakLooseTorque nut = Nut([400e3], extra, held, growth: 1.5);
        Assert.InRange(nut.Survival(Math.Exp(nut.LogHigh)), 1e-10, 2e-8);
    }

    private static BreakLooseTorque Nut(
        double[] medians, double extra = 0, double held = 0, double[]? came = null, double[]? alike = null, double within = 0.5, double sigma = Sigma, double growth = 1)
    {
        BreakLooseTorque seen = new BreakLooseTorque(
            [.. medians.Select(median => new NutCase(1.0 / medians.Length, Math.Log(median), extra, default))], new GrowthCurve(new Growth(growth, sigma)))
            .HavingSeen(came ?? [], alike ?? [], within);
        return held == 0 ? seen : seen.HavingHeld(held);
    }
}
