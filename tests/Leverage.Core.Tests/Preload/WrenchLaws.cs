using FsCheck.Xunit;
using Leverage.Levers;
using Leverage.Preload;
using Leverage.Threads;

namespace Leverage.Tests.Preload;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class WrenchLaws
{
    [Property]
    public void The_hand_that_clicks_the_wrench_puts_the_wanted_torque_on_the_nut(Sized torque, Sized wrench, Sized adapter, Sized angle)
    {
        double wanted = torque.Log(1e3, 1e6);
        double length = wrench.Log(100, 1500);
        double beyond = adapter.Log(1, 90);
        double rad = angle.Even(-Math.PI, Math.PI);
        double hand = WrenchAdapter.Setting(wanted, length, beyond, rad) / length;
        Near.Equal(wanted, hand * (length + beyond * Math.Cos(rad)));
    }

    [Property]
    public void An_adapter_square_to_the_wrench_changes_nothing(Sized torque, Sized wrench, Sized adapter, bool left)
    {
        double wanted = torque.Log(1e3, 1e6);
        double rad = left ? Math.PI / 2 : -Math.PI / 2;
        Near.Equal(wanted, WrenchAdapter.Setting(wanted, wrench.Log(100, 1500), adapter.Log(1, 90), rad), 1e-12);
        Near.Equal(wanted, WrenchAdapter.Setting(wanted, wrench.Log(100, 1500), 0, left ? 0 : 1), 1e-12);
    }

    [Property]
    public void An_adapter_straight_out_lowers_the_setting_and_folded_back_raises_it(Sized torque, Sized wrench, Sized adapter)
    {
        double wanted = torque.Log(1e3, 1e6);
        var (length, beyond) = (wrench.Log(100, 1500), adapter.Log(1, 90));
        Near.Equal(wanted * length / (length + beyond), WrenchAdapter.Setting(wanted, length, beyond, 0));
        Near.Equal(wanted * length / (length - beyond), WrenchAdapter.Setting(wanted, length, beyond, Math.PI));
    }

    [Fact]
    public void An_adapter_folded_back_past_the_hand_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WrenchAdapter.Setting(1e5, 100, 100, Math.PI));

    [Property]
    public void A_mass_hung_where_it_is_told_to_gives_the_torque(Sized torque, Sized mass)
    {
        double wanted = torque.Log(1e3, 1e6);
        double kg = mass.Log(1, 200);
        Near.Equal(wanted, kg * 9.80665 * HangingWeight.Distance(wanted, kg));
        Near.Equal(wanted, Lever.WeightTorque(kg, HangingWeight.Distance(wanted, kg)));
    }

    [Property]
    public void The_nut_factor_is_what_makes_torque_of_preload_and_diameter(Sized factor, Sized preload, Sized diameter)
    {
        double k = factor.Log(0.05, 0.6);
        var (force, d) = (preload.Log(10, 1e6), diameter.Log(1, 100));
        double torque = NutFactor.Torque(k, force, d);
        Near.Equal(k * force * d, torque);
        Near.Equal(k, NutFactor.FromTorque(torque, force, d));
    }

    [Property]
    public void The_bearing_diameter_is_midway_between_hole_and_face(Sized hole, Sized ring)
    {
        double inner = hole.Log(2, 80);
        double outer = inner * ring.Log(1.01, 2);
        double mean = BearingFace.MeanDiameter(outer, inner);
        Near.Equal(mean - inner, outer - mean, 1e-9);
    }
}
