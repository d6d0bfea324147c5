using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.BreakLoose;

namespace Leverage.Tests.BreakLoose;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class HeatTests
{
    [Property]
    public void The_rise_at_the_release_difference_is_the_whole_preload(Sized stress, Sized compliance)
    {
        double mpa = stress.Log(1, 1000);
        double k = compliance.Even(1, 3);
        Near.Equal(mpa, HeatedJoint.PreloadRise(HeatedJoint.ReleaseTemperature(mpa, k), k));
        Near.Equal(mpa * k / 2.4219, HeatedJoint.ReleaseTemperature(mpa, k));
    }

    [Property]
    public void A_hotter_stud_loses_preload_in_step_until_it_has_none(Sized stress, Sized share, Sized compliance)
    {
        var (mpa, k) = (stress.Log(1, 1000), compliance.Even(1, 3));
        double release = HeatedJoint.ReleaseTemperature(mpa, k);
        double part = share.Even(0.01, 0.99);
        Near.Equal(1 - part, new Heating(HeatedPart.Stud, part * release).PreloadShare(mpa, k), 1e-9);
        Assert.Equal(0, new Heating(HeatedPart.Stud, release * 1.0000001).PreloadShare(mpa, k));
        Assert.Equal(0, new Heating(HeatedPart.Stud, 5 * release).PreloadShare(mpa, k));
    }

    [Property]
    public void A_hotter_housing_gains_what_a_hotter_stud_loses_and_a_hotter_nut_neither(Sized stress, Sized share, Sized compliance)
    {
        var (mpa, k) = (stress.Log(1, 1000), compliance.Even(1, 3));
        double by = share.Even(0.01, 0.99) * HeatedJoint.ReleaseTemperature(mpa, k);
        double lost = 1 - new Heating(HeatedPart.Stud, by).PreloadShare(mpa, k);
        Near.Equal(1 + lost, new Heating(HeatedPart.Housing, by).PreloadShare(mpa, k), 1e-9);
        Assert.Equal(1, new Heating(HeatedPart.Nut, by).PreloadShare(mpa, k));
    }

    [Property]
    public void Flanks_open_in_step_with_size_and_warmth_and_aluminium_twice_as_far_as_steel(Sized diameter, Sized warmth)
    {
        var (d, k) = (diameter.Log(1, 100), warmth.Log(1, 1000));
        Near.Equal(11.7e-6 * d * k, HeatedJoint.DiametralGrowth(d, k));
        Near.Equal(HeatedJoint.DiametralGrowth(d, k), HeatedJoint.AluminiumClearance(d, k));
        Assert.Equal(0, HeatedJoint.DiametralGrowth(d, 0));
    }

    /// <summary>The M24 nut of the documentation opens 54 µm over 200 K; d2 of M24x1.5 is 23.026 mm: 11.7e-6·23.026·200.</summary>
    [Fact]
    public void A_nut_of_24_mm_opens_54_micrometres_over_200_K()
    {
        HeatAssessment heat = HeatAssessment.Of(Nuts.Of("used", 460, "M24x1.5") with { Heating = new(HeatedPart.Nut, 200) })!;
        Near.Equal(53.88, heat.FlankOpening.Micrometers, 1e-3);
        Near.Equal(53.88, heat.AluminiumClearance.Micrometers, 1e-3);
        Assert.Equal(1, heat.PreloadShare);
    }

    [Fact]
    public void A_stud_heated_to_its_release_difference_leaves_rust_and_takes_the_clamp()
    {
        Fastener cold = Nuts.Of("rusted", 460, "M24x1.5");
        double release = HeatAssessment.Of(cold with { Heating = new(HeatedPart.Stud, 1) })!.ReleaseAt.Kelvins;
        double clamp = BreakLooseSpread.Joint(cold).LooseningNmm / 1000;
        var (_, likely, high) = Nuts.Quantiles(cold);
        var hot = Nuts.Quantiles(cold with { Heating = new(HeatedPart.Stud, release) });
        Near.Equal(likely - clamp, hot.Likely, 1e-6);
        Near.Equal(high - clamp, hot.High, 1e-6);
        Assert.Equal(hot, Nuts.Quantiles(cold with { Heating = new(HeatedPart.Stud, 2 * release) }));
    }

    /// <summary>M16 of mechanics by hand: k_b 156.67·207/16 and so on; 156.67 mm² of 200 MPa: ΔT = σ·k/2.4219.</summary>
    [Theory]
    [InlineData(16.0, "steel", 1.4146)]
    [InlineData(96.0, "steel", 1.1167)]
    [InlineData(null, "steel", 1.2102)]
    [InlineData(null, "iron", 1.4416)]
    [InlineData(null, "aluminium", 1.6035)]
    public void A_longer_grip_and_stiffer_parts_let_go_at_less_heat(double? gripMm, string clamped, double ratio)
    {
        Fastener bolt = Nuts.Of("used", 200, "M16") with
        {
            Grip = gripMm is { } mm ? UnitsNet.Length.FromMillimeters(mm) : null,
            Clamped = Leverage.Stiffness.ClampedMaterial.Named(clamped),
            Heating = new(HeatedPart.Stud, 10),
        };
        HeatAssessment heat = HeatAssessment.Of(bolt)!;
        double stress = BreakLooseSpread.Joint(bolt).StressMpa;
        Near.Equal(stress * ratio / 2.4219, heat.ReleaseAt.Kelvins, 5e-5);
        Near.Equal(1 - 10 / heat.ReleaseAt.Kelvins, heat.PreloadShare);
    }

    [Property]
    public void More_heat_in_the_stud_never_makes_it_harder_and_in_the_housing_never_easier(Sized condition, Sized by, Sized more)
    {
        Fastener cold = Nuts.Of(condition.Of(Nuts.Conditions), 200, "M16");
        double kelvin = by.Log(1, 500);
        double hotter = kelvin * more.Log(1.01, 2);
        foreach (var (part, sign) in new[] { (HeatedPart.Stud, -1), (HeatedPart.Housing, 1), (HeatedPart.Nut, 0) })
        {
            double once = Nuts.Quantiles(cold with { Heating = new(part, kelvin) }).Likely;
            double twice = Nuts.Quantiles(cold with { Heating = new(part, hotter) }).Likely;
            Assert.True(sign * (twice - once) >= -1e-6, part.ToString());
            Assert.True(sign != 0 || Math.Abs(twice - Nuts.Quantiles(cold).Likely) < 1e-6, part.ToString());
            Assert.InRange(twice, 0.01, 1e5);
        }
    }
}
