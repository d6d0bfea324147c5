using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class BreakLooseTests
{
    private static readonly string[] Worn = ["rusted", "salted", "staked"];

    private static readonly string[] ByHardship = ["clean", "used", "rusted", "salted", "heat-rusted"];

    /// <summary>The example of the documentation: the growth of 'rusted' is 0.86, 1.37, 2.18 of the book torque.</summary>
    [Theory]
    [InlineData("M24x1.5")]
    [InlineData(null)]
    public void A_rusted_nut_of_460_Nm_takes_395_630_or_1003(string? thread)
    {
        var (low, likely, high) = Nuts.Quantiles(Nuts.Of("rusted", 460, thread));
        Near.Equal(395.6, low, 1e-3);
        Near.Equal(630.2, likely, 1e-4);
        Near.Equal(1002.8, high, 1e-3);
    }

    [Property]
    public void A_growth_on_the_book_torque_knows_neither_thread_nor_friction(Sized book, Sized thread, Sized friction)
    {
        Fastener plain = Nuts.Of("salted", book.Log(1, 2000), null);
        Fastener known = Nuts.Of("salted", plain.BookTorque.NewtonMeters, thread.Of(AnyThread.All).Designation, friction.Log(0.14, 0.4));
        Near.Equal(BreakLooseSpread.Torque(plain).Quantile(0.3), BreakLooseSpread.Torque(known).Quantile(0.3), 1e-7);
        Near.Equal(1.76 * plain.BookTorque.NewtonMillimeters, BreakLooseSpread.Torque(plain).Quantile(0.5), 1e-6);
    }

    [Property]
    public void A_growth_on_the_loosening_torque_takes_the_thread_s_own_share(Sized book, Sized thread)
    {
        // Median of T_L·G: share at 0.14 times growth 1.35, less the mean 5 % of preload lost.
        ScrewThread named = thread.Of(AnyThread.All);
        double nm = book.Log(1, 2000);
        var (_, likely, _) = Nuts.Quantiles(Nuts.Of("used", nm, named.Designation));
        Near.Equal(nm * Arms(named, 0.14).Loosening / Arms(named, 0.14).Tightening * 0.95 * 1.35, likely, 0.002);
    }

    /// <summary>A joint oiled when it was made, its oil gone: the preload of the oil, the friction of 0.14; a paste stays.</summary>
    [Property]
    public void Slippery_at_assembly_means_more_clamp_and_a_harder_nut(Sized book, Sized thread, Sized friction)
    {
        ScrewThread named = thread.Of(AnyThread.All);
        var (nm, mu) = (book.Log(1, 2000), friction.Log(0.05, 0.139));
        Fastener oiled = Nuts.Of("used", nm, named.Designation, mu);
        double preload = nm * 1000 / Arms(named, mu).Tightening;
        Near.Equal(preload, BreakLooseSpread.Joint(oiled).PreloadN, 1e-9);
        Near.Equal(preload * Arms(named, 0.14).Loosening, BreakLooseSpread.Joint(oiled).LooseningNmm, 1e-9);
        Near.Equal(preload * Arms(named, 0.14).Tightening, BreakLooseSpread.Joint(oiled).BookNmm, 1e-9);
        foreach (Fastener kept in new[] { oiled with { Paste = true }, oiled with { Condition = Condition.Named("clean") } })
        {
            Near.Equal(preload * Math.Max(0.01 * Arms(named, mu).Tightening, Arms(named, mu).Loosening), BreakLooseSpread.Joint(kept).LooseningNmm, 1e-9);
        }

        foreach (Fastener gone in Worn.Select(key => oiled with { Paste = true, Condition = Condition.Named(key) }))
        {
            Assert.Equal(0.14, BreakLooseSpread.Joint(gone).FrictionNow);
        }
    }

    [Property]
    public void Friction_above_that_of_a_worn_joint_leaves_the_book_torque_as_it_is(Sized book, Sized friction)
    {
        Fastener dry = Nuts.Of("rusted", book.Log(1, 2000), "M16", friction.Log(0.14, 0.4));
        Near.Equal(dry.BookTorque.NewtonMillimeters, BreakLooseSpread.Joint(dry).BookNmm, 1e-12);
    }

    [Property]
    public void Without_a_thread_four_fifths_of_the_torque_come_back(Sized book)
    {
        double nm = book.Log(1, 2000);
        var (_, likely, _) = Nuts.Quantiles(Nuts.Of("used", nm, null));
        Near.Equal(nm * 0.8 * 0.95 * 1.35, likely, 0.002);
    }

    [Property]
    public void Torques_scale_with_the_book_torque(Sized condition, Sized book, Sized scale, Sized share)
    {
        string key = condition.Of(Nuts.Unlocked);
        double nm = book.Log(1, 1000);
        double k = scale.Log(0.1, 10);
        double at = share.Even(0.01, 0.99);
        BreakLooseTorque one = BreakLooseSpread.Torque(Nuts.Of(key, nm, "M16"));
        BreakLooseTorque other = BreakLooseSpread.Torque(Nuts.Of(key, k * nm, "M16"));
        Near.Equal(k * one.Quantile(at), other.Quantile(at), 1e-7);
    }

    [Property]
    public void Quantile_and_survival_undo_each_other_and_rise_together(Sized condition, Sized book, Sized share, Sized more)
    {
        BreakLooseTorque spread = BreakLooseSpread.Torque(Nuts.Of(condition.Of(Nuts.Conditions), book.Log(1, 2000), "M20x1.5"));
        double at = share.Even(0.01, 0.98);
        Assert.Equal(1 - at, spread.Survival(spread.Quantile(at)), 1e-7);
        Assert.True(spread.Quantile(at + more.Even(0.001, 0.01)) > spread.Quantile(at));
    }

    [Property]
    public void A_locknut_s_own_torque_comes_on_top_of_every_case(Sized condition, Sized book, Sized prevailing, Sized share)
    {
        Fastener plain = Nuts.Of(condition.Of(Nuts.Conditions), book.Log(1, 500), "M12");
        double own = prevailing.Log(0.1, 100);
        double at = share.Even(0.02, 0.98);
        BreakLooseTorque locked = BreakLooseSpread.Torque(plain with { Prevailing = Torque.FromNewtonMeters(own) });
        Near.Equal(BreakLooseSpread.Torque(plain).Quantile(at) + 1000 * own, locked.Quantile(at), 1e-7);
    }

    /// <summary>12 and 25 N·m on 3/8-16, grown with the square of the diameter.</summary>
    [Theory]
    [InlineData("locked-medium", "3/8-16", 12)]
    [InlineData("locked-high", "3/8-16", 25)]
    [InlineData("locked-medium", "M12", 19.03)]
    [InlineData("locked-high", "M20", 110.1)]
    public void A_thread_locker_adds_its_own_torque_by_the_thread_s_size(string condition, string thread, double nm)
    {
        Fastener fastener = Nuts.Of(condition, 100, thread);
        Near.Equal(nm, BreakLooseSpread.Extra(fastener) / 1000, 2e-3);
        Near.Equal(
            Nuts.Quantiles(Nuts.Of("clean", 100, thread)).Likely + nm, Nuts.Quantiles(fastener).Likely, 2e-3);
    }

    [Theory]
    [InlineData("locked-medium")]
    [InlineData("locked-high")]
    public void A_thread_locker_needs_the_thread(string condition)
    {
        string line = Assert.Throws<InputException>(() => BreakLooseSpread.Torque(Nuts.Of(condition, 100, null))).Line;
        Assert.Equal($"condition: '{condition}' needs the thread: a locker's grip grows with the diameter. Write: thread M24x1.5", line);
        Assert.Throws<InputException>(() => new BreakLooseSampler(Nuts.Of(condition, 100, null)));
    }

    [Fact]
    public void Worse_conditions_take_more_torque()
    {
        double[] likely = [.. ByHardship.Select(key => Nuts.Quantiles(Nuts.Of(key, 100, "M14x1.5")).Likely)];
        Assert.Equal(likely.Order(), likely);
    }

    [Property]
    public void The_share_of_a_real_thread_rises_with_friction_and_never_reaches_one(Sized thread, Sized friction)
    {
        ScrewThread named = thread.Of(AnyThread.All);
        Joint joint = named.Joint(HexagonCatalog.Bearing(named).BearingMm);
        double mu = friction.Log(0.05, 0.4);
        Assert.InRange(JointTorque.LooseningShare(joint, JointFriction.Same(mu)), 0.2, 0.99);
        Assert.True(JointTorque.LooseningShare(joint, JointFriction.Same(1.01 * mu)) > JointTorque.LooseningShare(joint, JointFriction.Same(mu)));
        AssembledJoint slick = BreakLooseSpread.Joint(Nuts.Of("clean", 100, named.Designation, 0.001));
        Near.Equal(1000, slick.LooseningNmm, 1e-9);
    }

    /// <summary>A start torque judged by sight: its own scatter adds to that of G where nothing yields.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void A_start_torque_that_scatters_widens_the_spread(double sigma)
    {
        Fastener seen = Nuts.Of("rusted", 100, "M16") with { BookTorqueSigma = sigma };
        double whole = Math.Sqrt(sigma * sigma + Math.Pow(Condition.Named("rusted").Growth.Sigma, 2));
        var (low, likely, high) = Nuts.Quantiles(seen);
        Near.Equal(137, likely, 1e-4);
        Near.Equal(Math.Exp(2 * 1.2815516 * whole), high / low, 1e-3);
    }

    /// <summary>The arms from the flank angles themselves, mm.</summary>
    internal static (double Tightening, double Loosening) Arms(ScrewThread thread, double friction)
    {
        double phi = Math.Atan(thread.PitchMm / (Math.PI * thread.PitchDiameterMm));
        double rho = Math.Atan(friction / Math.Cos(Math.PI / 6));
        double face = friction * HexagonCatalog.Bearing(thread).BearingMm / 2;
        return (thread.PitchDiameterMm / 2 * Math.Tan(rho + phi) + face, thread.PitchDiameterMm / 2 * Math.Tan(rho - phi) + face);
    }
}
