using FsCheck.Xunit;
using Leverage.Levers;

namespace Leverage.Tests.Levers;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class LeverLaws
{
    [Property]
    public void Torque_grows_in_step_with_force_and_with_reach(Sized force, Sized reach, Sized angle, Sized scale)
    {
        var (n, mm, rad) = (force.Log(1, 2000), reach.Log(50, 3000), angle.Even(-1.5, 1.5));
        double k = scale.Log(0.1, 10);
        double torque = Lever.Torque(n, mm, rad);
        Near.Equal(k * torque, Lever.Torque(k * n, mm, rad));
        Near.Equal(k * torque, Lever.Torque(n, k * mm, rad));
        Near.Equal(n * mm, Lever.Torque(n, mm, 0));
        Assert.True(torque <= n * mm);
        Near.Equal(torque, Lever.Torque(n, mm, -rad));
    }

    [Property]
    public void The_reach_needed_gives_the_torque_wanted(Sized force, Sized torque, Sized angle)
    {
        var (n, nmm, rad) = (force.Log(1, 2000), torque.Log(1e3, 1e7), angle.Even(-1.5, 1.5));
        Near.Equal(nmm, Lever.Torque(n, Lever.NeededReach(nmm, n, rad), rad));
        Assert.True(Lever.NeededReach(nmm, n, rad) >= Lever.NeededReach(nmm, n, 0));
    }

    [Property]
    public void Reach_is_what_bar_and_tube_leave_beyond_overlap_and_grip(Sized bar, Sized tube, Sized overlap, Sized grip)
    {
        double b = bar.Log(200, 2000);
        double s = tube.Log(200, 3000);
        double c = overlap.Even(1, 100);
        double g = grip.Even(0, 66);
        LeverGeometry lever = LeverGeometry.WithTube(b, s, c, g);
        Near.Equal(b + s, lever.ReachMm + c + g);
        Near.Equal(lever.ReachMm, b + lever.HandToTipMm);
        Assert.True(lever.HasTube);
        LeverGeometry bare = LeverGeometry.Bare(b, g);
        Near.Equal(b, bare.ReachMm + g);
        Assert.False(bare.HasTube);
        Near.Equal(bare.ReachMm + s - c, lever.ReachMm);
    }

    [Property]
    public void The_hands_take_a_third_of_a_short_tool_and_the_table_s_offset_of_a_long_one(Sized tool, Sized grip)
    {
        var (length, offset) = (tool.Log(60, 2000), grip.Even(0, 120));
        double taken = Lever.GripOffset(offset, length);
        Near.Equal(3 * offset <= length ? offset : length / 3, taken);
        Near.Equal(length - taken, LeverGeometry.Bare(length, offset).ReachMm);
    }

    [Property]
    public void The_bar_needed_gives_the_reach_needed(Sized reach, Sized grip)
    {
        var (mm, offset) = (reach.Log(20, 3000), grip.Even(0, 120));
        double bar = Lever.NeededLength(mm, offset);
        Near.Equal(mm, bar - Lever.GripOffset(offset, bar));
    }

    [Fact]
    public void A_lever_shorter_than_the_grip_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Lever.Reach(90, 0, 0, 95));

    [Property]
    public void A_round_bar_keeps_the_ratios_of_its_moduli_and_grows_with_the_cube(Sized diameter, Sized scale)
    {
        var (d, k) = (diameter.Log(1, 100), scale.Log(0.1, 10));
        Near.Equal(16 / (3 * Math.PI), RoundBar.PlasticModulus(d) / RoundBar.ElasticModulus(d));
        Near.Equal(RoundBar.ElasticModulus(d) * d / 2, RoundBar.Inertia(d));
        Near.Equal(k * k * k * RoundBar.ElasticModulus(d), RoundBar.ElasticModulus(k * d));
        Near.Equal(k * k * k * RoundBar.PlasticTorque(d, 500), RoundBar.PlasticTorque(k * d, 500));
        Near.Equal(k * k * RoundBar.Mass(d, 700), RoundBar.Mass(k * d, 700));
    }

    [Property]
    public void Fully_plastic_torsion_is_the_shear_of_every_ring_times_its_radius(Sized diameter)
    {
        // Sum of τ·r·2πr·dr over thin rings.
        double d = diameter.Log(1, 100);
        const int Rings = 20_000;
        double step = d / 2 / Rings;
        double sum = Enumerable.Range(0, Rings).Sum(i => 2 * Math.PI * Math.Pow((i + 0.5) * step, 2) * step);
        Near.Equal(300 * sum, RoundBar.PlasticTorque(d, 300), 1e-6);
    }
}
