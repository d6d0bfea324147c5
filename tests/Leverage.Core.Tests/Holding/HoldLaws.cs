using FsCheck.Xunit;
using Leverage.Holding;
using UnitsNet;

namespace Leverage.Tests.Holding;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class HoldLaws
{
    private static readonly Restraint[] All = Enum.GetValues<Restraint>();

    [Property]
    public void Another_restraint_never_holds_less_together(Draws draws, Sized another)
    {
        Hold hold = Any(draws);
        Hold more = hold with { By = [.. hold.By, another.Of(All)] };
        Assert.True(HoldCapacity.Of(more, 0).TotalNmm >= HoldCapacity.Of(hold, 0).TotalNmm - 1e-6);
    }

    [Property]
    public void Naming_a_restraint_twice_changes_nothing(Draws draws)
    {
        Hold hold = Any(draws);
        Assert.Equal(HoldCapacity.Of(hold, 0).TotalNmm, HoldCapacity.Of(hold with { By = [.. hold.By, .. hold.By] }, 0).TotalNmm);
    }

    [Property]
    public void More_load_and_better_ground_never_hold_less_and_a_lift_never_more(Draws draws, Sized more, Sized lift)
    {
        Hold hold = Any(draws);
        double total = HoldCapacity.Of(hold, 0).TotalNmm;
        double k = more.Log(1.01, 2);
        Assert.True(HoldCapacity.Of(hold with { WheelLoad = k * hold.WheelLoad }, 0).TotalNmm >= total);
        Assert.True(HoldCapacity.Of(hold with { GroundFriction = k * hold.GroundFriction }, 0).TotalNmm >= total);
        Assert.True(HoldCapacity.Of(hold, lift.Log(1, 1e5)).TotalNmm <= total);
    }

    [Property]
    public void Every_route_through_the_ground_is_bounded_by_the_grip(Draws draws)
    {
        Hold hold = Any(draws) with { By = [Restraint.Chock] };
        HoldCapacity chock = HoldCapacity.Of(hold, 0);
        Assert.True(chock.TotalNmm <= chock.GripNmm);
        Near.Equal(hold.GroundFriction * hold.WheelLoad.Newtons * hold.TyreRadius.Millimeters, chock.GripNmm);
        Hold both = hold with { By = [Restraint.Gear, Restraint.Chock], HalfShafts = HalfShafts.Both };
        Assert.True(HoldCapacity.Of(both, 0).TotalNmm <= 2 * chock.GripNmm * (1 + 1e-12));
        Near.Equal(Math.Min(2 * chock.GripNmm, 780_000), HoldCapacity.Of(both with { By = [Restraint.Gear] }, 0).TotalNmm);
        double foot = 2.44 * hold.VehicleMass.Kilograms * hold.TyreRadius.Millimeters * 0.2;
        Near.Equal(foot, HoldCapacity.Of(both with { By = [Restraint.Helper] }, 0).TotalNmm);
        Near.Equal(Math.Max(foot, chock.GripNmm), HoldCapacity.Of(both with { By = [Restraint.Helper], EngineRunning = true }, 0).TotalNmm);
    }

    [Property]
    public void With_a_half_shaft_out_gear_holds_nothing(Draws draws)
    {
        Hold hold = Any(draws) with { By = [Restraint.Gear], HalfShafts = HalfShafts.One };
        Assert.Equal(0, HoldCapacity.Of(hold, 0).TotalNmm);
    }

    [Property]
    public void Off_the_ground_only_brake_and_bar_hold(Draws draws)
    {
        Hold hold = Any(draws) with { By = [Restraint.Gear, Restraint.Chock], OnStands = true };
        Assert.Equal(0, HoldCapacity.Of(hold, 0).TotalNmm);
        Hold brake = hold with { By = All };
        double expected = HoldCapacity.Of(brake with { By = [Restraint.Brake], OnStands = false }, 0).TotalNmm
            + HoldCapacity.Of(brake with { By = [Restraint.Bar], OnStands = false }, 0).TotalNmm;
        Near.Equal(expected, HoldCapacity.Of(brake, 0).TotalNmm);
    }

    [Property]
    public void Brakes_hold_in_step_with_mass_and_radius(Sized mass, Sized radius, Sized scale)
    {
        var (kg, mm, k) = (mass.Log(200, 5000), radius.Log(150, 600), scale.Log(0.1, 10));
        Near.Equal(k * FootBrake.WheelTorque(kg, mm, 0.4), FootBrake.WheelTorque(k * kg, mm, 0.4));
        Near.Equal(k * FootBrake.WheelTorque(kg, mm, 0.4), FootBrake.WheelTorque(kg, k * mm, 0.4));
        Near.Equal(1.5 * FootBrake.WheelTorque(kg, mm, 0.4), FootBrake.WheelTorque(kg, mm, 0.6));
    }

    [Property]
    public void In_gear_the_engine_resists_in_step_with_the_ratio(Sized ratio, Sized scale)
    {
        var (i, k) = (ratio.Log(1, 50), scale.Log(0.1, 10));
        Near.Equal(k * StoppedEngine.Torque(i), StoppedEngine.Torque(k * i));
    }

    [Property]
    public void A_chock_slips_where_both_contacts_rub(Sized friction, Sized load, Sized radius, Sized height)
    {
        // Forces along and up on the wheel, the chock's at an angle, both contacts rubbing at their limit.
        var (mu, w, r) = (friction.Log(0.05, 1), load.Log(100, 20_000), radius.Log(150, 600));
        double h = height.Even(0.05, 1) * r;
        double angle = Math.Acos(1 - h / r);
        double chock = mu * w / ((1 + mu * mu) * Math.Sin(angle));
        double ground = chock * (Math.Sin(angle) - mu * Math.Cos(angle)) / mu;
        Near.Equal(w, ground + chock * (Math.Cos(angle) + mu * Math.Sin(angle)), 1e-9);
        Near.Equal(mu * r * (ground + chock), WheelChock.SlippingTorque(mu, w, r, h), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => WheelChock.SlippingTorque(mu, w, r, 1.001 * r));
    }

    [Property]
    public void A_chock_holds_until_the_wheel_turns_about_its_edge(Sized load, Sized radius, Sized height)
    {
        // The load acts √(r² - (r - h)²) from the edge.
        double w = load.Log(100, 20_000);
        double r = radius.Log(150, 600);
        double h = height.Even(0, 1) * r;
        Assert.Equal(w * Math.Sqrt(r * r - (r - h) * (r - h)), WheelChock.Torque(w, r, h), 1e-6 * w * r);
        Near.Equal(w * r, WheelChock.Torque(w, r, r));
        Assert.Equal(0, WheelChock.Torque(w, r, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => WheelChock.Torque(w, r, 1.001 * r));
    }

    /// <summary>0.196·1200 kg·9.80665·0.30 m over two wheels: 346 N·m; an old cable holds 0.7 of it.</summary>
    [Theory]
    [InlineData(Restraint.Brake, 346.0)]
    [InlineData(Restraint.OldBrake, 242.2)]
    public void A_parking_brake_alone_does_not_hold_a_rusty_axle_nut(Restraint restraint, double nm)
    {
        var hold = new Hold { By = [restraint], VehicleMass = Mass.FromKilograms(1200), TyreRadius = Length.FromMillimeters(300) };
        Near.Equal(nm, HoldCapacity.Of(hold, 0).TotalNmm / 1000, 5e-4);
    }

    [Theory]
    [InlineData(Side.Left, false, Roll.Forward)]
    [InlineData(Side.Right, false, Roll.Backward)]
    [InlineData(Side.Left, true, Roll.Backward)]
    [InlineData(Side.Right, true, Roll.Forward)]
    public void Undoing_rolls_the_vehicle_by_side_and_thread_hand(Side side, bool leftHand, Roll roll) =>
        Assert.Equal(roll, RollDirection.Undoing(side, leftHand));

    [Fact]
    public void A_side_that_was_not_said_has_no_direction() =>
        Assert.Throws<ArgumentException>(() => RollDirection.Undoing(Side.Unknown, false));

    [Property]
    public void A_stand_tips_and_load_shifts_by_plain_moments(Sized load, Sized wide, Sized tall, Sized torque)
    {
        var (w, b, h) = (load.Log(100, 20_000), wide.Log(50, 300), tall.Log(200, 800));
        Near.Equal(w * b, h * SupportStand.TippingForce(w, b, h));
        double nmm = torque.Log(1e4, 1e6);
        Near.Equal(nmm, 2500 * LoadShift.Force(nmm, 2500));
    }

    private static Hold Any(Draws draws)
    {
        Func<Sized> next = draws.Reader();
        double radius = next().Log(150, 600);
        return new Hold
        {
            By = [.. All.Where(_ => next().Upper(0.4))],
            VehicleMass = Mass.FromKilograms(next().Log(200, 5000)),
            WheelLoad = Force.FromNewtons(next().Log(100, 20_000)),
            TyreRadius = Length.FromMillimeters(radius),
            ChockHeight = Length.FromMillimeters(next().Even(0, 1) * radius),
            GroundFriction = next().Log(0.05, 0.9),
            HalfShafts = next().Upper(0.5) ? HalfShafts.One : HalfShafts.Both,
            StudBarDiameter = Length.FromMillimeters(next().Log(5, 50)),
        };
    }
}
