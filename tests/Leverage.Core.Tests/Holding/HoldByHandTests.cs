using Leverage.Holding;
using UnitsNet;

namespace Leverage.Tests.Holding;

/// <summary>Restraints by hand: a wheel of 3200 N and 310 mm.</summary>
public sealed class HoldByHandTests
{
    [Fact]
    public void A_low_chock_holds_eight_tenths_of_what_it_takes_to_climb_it() =>
        Near.Equal(280_433.949, Capacity(Restraint.Chock, 0.75, 20), 1e-8);

    [Fact]
    public void No_chock_holds_more_than_the_tyre_grips() => Near.Equal(198_400, Capacity(Restraint.Chock, 0.2, 200), 1e-9);

    [Fact]
    public void A_bar_across_the_studs_bends_at_its_yield() => Near.Equal(622_918.918, Capacity(Restraint.Bar, 0.75, 20), 1e-8);

    [Fact]
    public void On_stands_nothing_grips_and_lifting_takes_grip_away()
    {
        Hold hold = Held(Restraint.Helper, 0.75, 20);
        Assert.Equal(0, HoldCapacity.Of(hold with { OnStands = true }, 0).GripNmm);
        Assert.Equal(0, HoldCapacity.Of(hold, 5000).GripNmm);
        Near.Equal(0.75 * 2200 * 310, HoldCapacity.Of(hold, 1000).GripNmm, 1e-12);
    }

    [Theory]
    [InlineData(0.99)]
    [InlineData(8.01)]
    public void A_parking_brake_acts_on_one_to_eight_wheels(double wheels) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ParkingBrake.WheelTorque(1200, 300, wheels));

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void One_wheel_and_eight_are_taken(double wheels) => Assert.True(ParkingBrake.WheelTorque(1200, 300, wheels) > 0);

    private static double Capacity(Restraint by, double ground, double chockMm) => HoldCapacity.Of(Held(by, ground, chockMm), 0).Parts[0].CapacityNmm;

    private static Hold Held(Restraint by, double ground, double chockMm) => new()
    {
        By = [by],
        WheelLoad = Force.FromNewtons(3200),
        TyreRadius = Length.FromMillimeters(310),
        ChockHeight = Length.FromMillimeters(chockMm),
        StudBarDiameter = Length.FromMillimeters(30),
        GroundFriction = ground,
    };
}
