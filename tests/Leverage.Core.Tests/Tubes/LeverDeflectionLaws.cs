using FsCheck.Xunit;
using Leverage.Tubes;

namespace Leverage.Tests.Tubes;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class LeverDeflectionLaws
{
    [Property]
    public void Deflection_is_the_unit_load_integral_over_both_beams(
        Sized force, Sized hand, Sized overlap, Sized bare, Sized tube, Sized bar)
    {
        double n = force.Log(1, 2000);
        var beam = new LeverBeam(
            hand.Log(1, 2000) + overlap.Log(10, 600) + bare.Even(0, 1500),
            hand.Log(1, 2000), overlap.Log(10, 600), tube.Log(1e7, 1e11), bar.Log(1e7, 1e11));
        Near.Equal(UnitLoad(n, beam), LeverDeflection.AtHand(n, beam), 1e-8);
    }

    [Property]
    public void Without_a_tube_it_is_the_cantilever_of_the_tables(Sized force, Sized reach, Sized bar)
    {
        var (n, mm, stiffness) = (force.Log(1, 2000), reach.Log(50, 3000), bar.Log(1e7, 1e11));
        Near.Equal(n * mm * mm * mm / (3 * stiffness), LeverDeflection.AtHand(n, new LeverBeam(mm, 0, 0, 0, stiffness)));
    }

    /// <summary>
    /// Cantilever of two halves, the outer of I1 and the inner of I2, loaded at its end: by superposition 1/8·(1 + 7·I1/I2) of
    /// the deflection of a beam of I1 throughout (form of Gere, Mechanics of Materials, 7th ed., section 9.7).
    /// </summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0.5625)]
    [InlineData(3, 0.41666667)]
    [InlineData(4, 0.34375)]
    [InlineData(5, 0.3)]
    public void A_stepped_cantilever_keeps_the_ratios_found_by_superposition(double inertiaRatio, double ratio)
    {
        double stepped = LeverDeflection.AtHand(100, new LeverBeam(1000, 500, 0, 1e9, inertiaRatio * 1e9));
        double even = LeverDeflection.AtHand(100, new LeverBeam(1000, 0, 0, 0, 1e9));
        Assert.Equal(ratio, stepped / even, 1e-7);
    }

    [Property]
    public void Deflection_grows_in_step_with_force_and_with_the_cube_of_size_over_stiffness(
        Sized hand, Sized overlap, Sized bare, Sized tube, Sized bar, Sized scale)
    {
        double k = scale.Log(0.1, 10);
        var (a, c) = (hand.Log(1, 2000), overlap.Log(10, 600));
        var beam = new LeverBeam(a + c + bare.Even(0, 1500), a, c, tube.Log(1e7, 1e11), bar.Log(1e7, 1e11));
        double one = LeverDeflection.AtHand(1, beam);
        Near.Equal(k * one, LeverDeflection.AtHand(k, beam));
        Near.Equal(k * k * k * one, LeverDeflection.AtHand(1, beam with
        {
            ReachMm = k * beam.ReachMm,
            HandToTipMm = k * a,
            OverlapMm = k * c,
        }), 1e-9);
        Assert.True(LeverDeflection.AtHand(1, beam with { TubeStiffnessNmm2 = 1.1 * beam.TubeStiffnessNmm2 }) < one);
        Assert.True(LeverDeflection.AtHand(1, beam with { BarStiffnessNmm2 = 1.1 * beam.BarStiffnessNmm2 }) < one);
    }

    [Property]
    public void A_tube_over_the_whole_bar_is_taken_whatever_the_rounding(Sized hand, Sized overlap)
    {
        var (a, c) = (hand.Log(1, 2000), overlap.Log(10, 600));
        double sum = a + c;
        double whole = LeverDeflection.AtHand(1, new LeverBeam(sum, a, c, 1e9, 1e9));
        Near.Equal(whole, LeverDeflection.AtHand(1, new LeverBeam(Math.BitDecrement(sum), a, c, 1e9, 1e9)));
    }

    [Property]
    public void Energy_is_half_of_force_times_way(Sized force, Sized way)
    {
        var (n, mm) = (force.Log(1, 2000), way.Log(0.1, 500));
        double joule = Release.Energy(n, mm);
        Near.Equal(n * mm / 2000, joule);
    }

    [Property]
    public void What_is_set_free_is_what_is_stored_less_what_stays(Sized force, Sized way, Sized left)
    {
        var (n, mm, q) = (force.Log(1, 2000), way.Log(0.1, 500), left.Even(0, 1));
        double all = Release.Energy(n, mm);
        Near.Equal(all, Release.Freed(all, q) + Release.Energy(q * n, q * mm), 1e-9);
        Assert.Equal(all, Release.Freed(all, 0));
    }

    [Property]
    public void The_arms_carry_all_that_is_set_free(Sized energy, Sized mass)
    {
        var (joule, kg) = (energy.Log(0.1, 500), mass.Log(30, 150));
        double v = Release.ArmsSpeed(joule, kg);
        Near.Equal(joule, 0.10 * kg * v * v / 2);
    }

    [Property]
    public void The_hands_gain_speed_by_the_part_of_the_force_that_is_gone(Sized force, Sized left, Sized mass)
    {
        var (n, q, kg) = (force.Log(1, 2000), left.Even(0, 1), mass.Log(30, 150));
        Assert.Equal((1 - q) * Release.PushSpeed(n, 0, kg), Release.PushSpeed(n, q, kg), 1e-9);
        Near.Equal(n * 0.25, kg * Release.PushSpeed(n, 0, kg));
        Assert.Equal(0, Release.PushSpeed(n, 1, kg));
    }

    /// <summary>Sum of M·m/EI over the two beams by Simpson's rule, m of a unit force at the hand.</summary>
    private static double UnitLoad(double forceN, LeverBeam beam)
    {
        var (a, c) = (beam.HandToTipMm, beam.OverlapMm);
        double tip = forceN * (a + c) / c;
        double mouth = forceN * a / c;

        // The tube from the hand inwards; the bar from its tip inwards.
        double OnTube(double s) => s < a ? forceN * s : forceN * s - tip * (s - a);
        double OnBar(double s) => s < c ? tip * s : tip * s - mouth * (s - c);
        double tube = Simpson(OnTube, 0, a, forceN) + Simpson(OnTube, a, a + c, forceN);
        double bar = Simpson(OnBar, 0, c, forceN) + Simpson(OnBar, c, beam.ReachMm - a, forceN);
        return tube / beam.TubeStiffnessNmm2 + bar / beam.BarStiffnessNmm2;
    }

    private static double Simpson(Func<double, double> moment, double from, double to, double forceN)
    {
        const int Halves = 100;
        double step = (to - from) / (2 * Halves);
        double sum = 0;
        for (int i = 0; i <= 2 * Halves; i++)
        {
            double m = moment(from + i * step);
            sum += (i is 0 or 2 * Halves ? 1 : i % 2 == 1 ? 4 : 2) * m * m / forceN;
        }

        return sum * step / 3;
    }
}
