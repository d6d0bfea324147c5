using FsCheck.Xunit;
using Leverage.Preload;

namespace Leverage.Tests.Preload;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class AssemblyPreloadLaws
{
    [Property]
    public void Share_of_yield_and_preload_undo_each_other(Sized share, Sized yield, Sized diameter, Sized lead, Sized friction, bool plastic)
    {
        double nu = share.Log(0.01, 1.5);
        double mpa = yield.Log(100, 2000);
        TensionAndTorsion section = Section(diameter, lead, friction, plastic);
        Near.Equal(nu, AssemblyPreload.YieldShare(AssemblyPreload.AtYieldShare(nu, mpa, section), mpa, section));
    }

    [Property]
    public void Tension_and_torsion_meet_the_yield_by_the_shear_strain_energy(Sized share, Sized diameter, Sized lead, Sized friction, bool plastic)
    {
        // σ² + 3τ² = (ν·Rp)², with τ of the thread's torque over the torsion modulus: π/12·d0³ plastic, π/16·d0³ elastic.
        double nu = share.Log(0.05, 1);
        TensionAndTorsion section = Section(diameter, lead, friction, plastic);
        double d0 = section.StressDiameterMm;
        double preload = AssemblyPreload.AtYieldShare(nu, 900, section);
        double torque = preload * section.PitchDiameterMm / 2 * Math.Tan(section.LeadAngleRad + section.FrictionAngleRad);
        double tension = preload / (Math.PI / 4 * d0 * d0);
        double shear = torque / (Math.PI * d0 * d0 * d0 / (plastic ? 12 : 16));
        Near.Equal(nu * 900, Math.Sqrt(tension * tension + 3 * shear * shear));
    }

    [Property]
    public void Friction_costs_preload_and_elastic_torsion_more_than_plastic(Sized diameter, Sized lead, Sized friction, Sized more)
    {
        TensionAndTorsion section = Section(diameter, lead, friction, true);
        double preload = AssemblyPreload.AtYieldShare(0.9, 900, section);
        TensionAndTorsion drier = section with { FrictionAngleRad = section.FrictionAngleRad * more.Log(1.001, 1.5) };
        Assert.True(AssemblyPreload.AtYieldShare(0.9, 900, drier) < preload);
        Assert.True(AssemblyPreload.AtYieldShare(0.9, 900, section with { TorsionFactor = TensionAndTorsion.Elastic }) < preload);
        Near.Equal(2 * preload, AssemblyPreload.AtYieldShare(0.9, 1800, section));
    }

    [Property]
    public void Without_torsion_the_whole_yield_goes_into_preload(Sized diameter, Sized share)
    {
        double d0 = diameter.Log(2, 60);
        double nu = share.Log(0.05, 1);
        var section = new TensionAndTorsion(d0, 1.05 * d0, 0, 0, TensionAndTorsion.Plastic);
        Near.Equal(nu * 640 * Math.PI / 4 * d0 * d0, AssemblyPreload.AtYieldShare(nu, 640, section));
    }

    private static TensionAndTorsion Section(Sized diameter, Sized lead, Sized friction, bool plastic)
    {
        double d0 = diameter.Log(2, 60);
        return new TensionAndTorsion(
            d0, 1.05 * d0, lead.Log(0.01, 0.1), Math.Atan(friction.Log(0.02, 0.6)),
            plastic ? TensionAndTorsion.Plastic : TensionAndTorsion.Elastic);
    }
}
