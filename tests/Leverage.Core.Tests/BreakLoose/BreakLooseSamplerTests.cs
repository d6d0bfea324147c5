using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Threads;

namespace Leverage.Tests.BreakLoose;

/// <summary>Single draws of the break-loose torque, each against what its own bits stand for.</summary>
public static class BreakLooseSamplerTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(30e3)]
    [InlineData(-60e3)]
    public static void A_draw_is_the_torque_of_its_friction_lost_preload_and_growth(double extraNmm)
    {
        double Scale(double deviate) => 100e3 * Math.Exp(0.15 * deviate + 0.01 * deviate * deviate);
        var sampler = new BreakLooseSampler(Scale, 0, new Growth(1.4, 0.3), extraNmm);
        for (ulong i = 1; i <= 2000; i++)
        {
            ulong bits = SplitMix.Bits(i);
            uint more = (uint)SplitMix.Bits(i + 5000);
            double lost = 0.1 * more / 4294967296.0;
            double scaled = Scale(NormalTable.Deviate.At((uint)(bits >> 32))) * (1 - lost) * 1.4 * Math.Exp(0.3 * NormalTable.Deviate.At((uint)bits));
            Assert.Equal(Math.Log(Math.Max(0.01 * scaled, scaled + extraNmm)), sampler.Draw(bits, more), extraNmm < 0 ? 1e-3 : 3e-5);
        }
    }

    [Fact]
    public static void A_draw_without_scatter_of_its_own_keeps_to_its_scale()
    {
        var fixedScale = new BreakLooseSampler(null, 80e3, new Growth(1.5, 0), 0);
        Assert.Equal(Math.Log(120e3) + 1e-3 * NormalTable.Deviate.At(0xF0000000), fixedScale.Draw(0xF0000000, 77), 1e-12);
        var lost = new BreakLooseSampler(_ => 100e3, 0, new Growth(1, 0), 0);
        Assert.Equal(Math.Log(90e3), lost.Draw(1UL << 63 | 1UL << 31, uint.MaxValue), 3e-9);
    }

    [Theory]
    [InlineData(0u, -7.03448)]
    [InlineData(uint.MaxValue, 6.23)]
    public static void The_rarest_friction_is_that_of_its_own_deviate(uint bits, double deviate)
    {
        var sampler = new BreakLooseSampler(at => 100e3 * Math.Exp(0.15 * at), 0, new Growth(1, 0), 0);
        Assert.Equal(Math.Log(100e3) + 0.15 * deviate, sampler.Draw((ulong)bits << 32 | 1UL << 31, 0), 1e-3);
    }

    [Fact]
    public static void Friction_is_drawn_up_to_two()
    {
        BreakLooseSampler sampler = BreakLooseSpread.Sampler(Nuts.Of("used", 100, "M16", 1.6));
        ulong Bits(uint friction) => (ulong)friction << 32 | 1UL << 31;
        double share = BreakLooseSpread.Share(ScrewThreadOf("M16"), 2);
        Assert.Equal(Math.Log(100e3 * share * Condition.Named("used").Growth.Median), sampler.Draw(Bits(0xF8000000), 0), 1e-6);
        Fastener dry = Nuts.Of("clean", 100, "M16", 1.6);
        double most = BreakLooseSpread.NormalRule.Max(point => BreakLooseSpread.Share(
            ScrewThreadOf("M16"), Math.Min(2, 1.6 * Math.Exp(dry.Friction.Sigma * point.Deviate))));
        Growth clean = dry.Condition.Growth;
        double highest = Math.Log(100e3 * most * (1 - 0.1 * BreakLooseSpread.EvenRule[0].Share) * clean.Median);
        Assert.Equal(highest + 6 * clean.Sigma, BreakLooseSpread.Torque(dry).LogHigh, 1e-9);
    }

    private static ScrewThread ScrewThreadOf(string name) => ThreadCatalog.Named(name);
}
