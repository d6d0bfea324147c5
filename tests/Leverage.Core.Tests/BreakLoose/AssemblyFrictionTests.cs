using FsCheck.Xunit;
using Leverage.BreakLoose;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

/// <summary>Friction that a torque past yield makes believable.</summary>
[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class AssemblyFrictionTests
{
    /// <summary>M12×1.5 10.9 at 300 N·m: μ 0.4835, 42.6 kN and 273 N·m, solved in Python; at 120 N·m it is as given.</summary>
    [Fact]
    public void A_torque_past_yield_raises_the_friction_until_the_bolt_just_yields()
    {
        AssembledJoint tight = BreakLooseSpread.Joint(Nuts.Of("used", 300, "M12x1.5", 0.14, "10.9"));
        Assert.True(tight.FrictionRaised);
        Near.Equal(0.48349, tight.Friction, 1e-4);
        Near.Equal(0.48349, tight.FrictionNow, 1e-4);
        Near.Equal(42_611, tight.PreloadN, 1e-4);
        Near.Equal(273_298, tight.LooseningNmm, 1e-4);
        AssembledJoint usual = BreakLooseSpread.Joint(Nuts.Of("used", 120, "M12x1.5", 0.14, "10.9"));
        Assert.Equal((0.14, false), (usual.Friction, usual.FrictionRaised));
        Near.Equal(54_733, usual.PreloadN, 1e-4);
        Near.Equal(0.38058, usual.ThreadShare, 1e-4);
    }

    [Fact]
    public void A_torque_no_bolt_takes_is_refused()
    {
        foreach (Action ask in new Action[]
        {
            () => BreakLooseSpread.Torque(Nuts.Of("used", 900, "M12", 0.14, "8.8")),
            () => _ = new BreakLooseSampler(Nuts.Of("used", 900, "M12", 0.14, "8.8")),
        })
        {
            InputException refusal = Assert.Throws<InputException>(ask);
            Assert.StartsWith("torque: M12 of grade 8.8 takes at most ", refusal.Line, StringComparison.Ordinal);
            Assert.Equal("torque", Assert.Single(refusal.Cures).Field);
        }
    }

    [Property]
    public void Friction_believed_is_the_least_at_which_the_bolt_does_not_pass_yield(Sized thread, Sized share)
    {
        ScrewThread named = thread.Of(AnyThread.All);
        var joint = named.Joint(HexagonCatalog.Bearing(named).BearingMm);
        double At(double mu) => AssemblyPreload.AtYieldShare(1, 640, named.Section(mu, TensionAndTorsion.Plastic)) * BreakLooseTests.Arms(named, mu).Tightening;
        double wanted = share.Even(0.05, 0.99);
        double believed = AssemblyFriction.Believed(At(wanted), joint, named.StressDiameterMm, 640, 0.05);
        Near.Equal(At(wanted), At(believed), 1e-6);
        Assert.InRange(believed, 0.05, 1);
        Assert.Equal(0.3, AssemblyFriction.Believed(0.5 * At(0.3), joint, named.StressDiameterMm, 640, 0.3));
    }
}
