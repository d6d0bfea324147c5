using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

/// <summary>The curves the integral is made of, each against the exact normal.</summary>
public static class CurveTests
{
    /// <summary>The nut's own shank, worked by hand: up to its clean torque the thread's share twists it, above it the rust's.</summary>
    [Theory]
    [InlineData("used", 100, "M16", 0.2, 0.3)]
    [InlineData("rusted", 70, "M10", 0.4, 0.3)]
    [InlineData("heat-rusted", 40, "M10", 0.16, 0)]
    [InlineData("clean", 20, "M8", 0.18, 0)]
    [InlineData("used", 300, "M20", 0.33, 0.3)]
    public static void A_stud_s_panels_part_where_its_density_jumps_by_what_could_be_seen(
        string condition, double bookNm, string thread, double worn, double sigma)
    {
        Fastener fastener = Nuts.Of(condition, bookNm, thread, 0.14, "8.8") with { BookTorqueSigma = sigma };
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        Strength sound = BreakLooseSpread.Stud(fastener)!.Value;
        Strength plastic = sound with { MedianNmm = worn * sound.MedianNmm };
        var curve = new StudCurve(nut, plastic);
        var expected = new List<double>();
        foreach (NutCase one in nut.Cases)
        {
            var (clean, thin, grown) = (one.Shank.LooseningNmm, one.Shank.ThreadShare, one.Shank.GrownShare);
            double density = Normal.PDF(Math.Log(plastic.MedianNmm), plastic.Sigma, Math.Log(thin * clean / one.Shank.StandsShare));

            // The slope of the log load over the log torque is 1 below the bend, and w·T/(s·T) above it.
            if (one.Weight * density * Math.Abs(grown / thin - 1) > 1e-4)
            {
                expected.Add(Math.Log(clean));
            }
        }

        Assert.NotEmpty(expected);
        Assert.Equal(expected.Order(), curve.Breaks, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(nut.Cases.ToArray().Min(one => plastic.Sigma * Math.Min(1, one.Shank.ThreadShare / one.Shank.GrownShare)), curve.Sigma, 1e-12);
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(0.35)]
    [InlineData(2)]
    public static void Where_an_input_leaves_nothing_to_stand_on_that_share_has_given_at_once(double stands)
    {
        var curve = new RiskCurve(new Risk(RiskKind.CornersRound, new Strength(100e3, 0.2), share => 100e3 * (1 - share / stands)));
        // It gives at 1 N·mm, which of 100 N·m is not quite nothing.
        Assert.Equal(Math.Min(1, stands * (1 - 1e-5)), curve.At(Math.Log(20)).Survival, 1e-6);
    }

    /// <summary>Survival over an even share, by ten thousand steps of the exact normal.</summary>
    [Fact]
    public static void A_strength_that_hangs_on_an_even_share_is_the_mean_over_it()
    {
        static double Median(double share) => 100e3 * (1 - 0.5 * share);
        var curve = new RiskCurve(new Risk(RiskKind.CornersRound, new Strength(100e3, 0.2), Median));
        foreach (double torque in (double[])[50e3, 80e3, 110e3])
        {
            double mean = Enumerable.Range(0, 10_000).Average(i => Normal.CDF(0, 1, Math.Log(Median((i + 0.5) / 10_000) / torque) / 0.2));
            Assert.Equal(mean, curve.At(Math.Log(torque)).Survival, 1e-7);
        }
    }

    [Fact]
    public static void A_tube_s_bends_are_where_it_needs_its_frictions()
    {
        var friction = new SplitLogNormal(0.2, 0.1, 0.3);
        var tube = new Sliding(friction, 0.05, torque => 30e3 / torque);
        double[] bends = [.. tube.Bends(Math.Log(1e3), Math.Log(1e6)).Order()];
        Assert.Equal([.. new double[] { 5, 1.5, -1.5, -5 }.Select(deviate => Math.Log(30e3 / friction.At(deviate)))], bends, (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal(2, tube.Bends(Math.Log(30e3 / 0.2), Math.Log(1e6)).Count());
        Assert.Empty(new Sliding(friction, 0.05).Bends(0, 20));
    }

    [Fact]
    public static void A_stud_of_unknown_thread_cannot_be_judged_whatever_its_place()
    {
        BreakLooseTorque nut = BreakLooseSpread.Torque(Nuts.Of("used", 100, null));
        Risk[] risks = [new Risk(RiskKind.StudTwistsOff, new Strength(1e6, 0.1)), new Risk(RiskKind.ToolGives, new Strength(1e6, 0.1))];
        Assert.Throws<ArgumentException>(() => CompetingRisks.Split(nut, new Strength(1e6, 0.1), risks, null, new double[2]));
        Assert.Throws<ArgumentException>(() => CompetingRisks.Split(nut, new Strength(1e6, 0.1), [risks[1], risks[0]], null, new double[2]));
    }
}
