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

    /// <summary>A final drive of 4 and a wheel on each side: two wheels' worth over four; the engine's 60 N·m times 13 over 4.</summary>
    [Fact]
    public void A_flange_is_held_by_both_wheels_over_the_final_drive_or_by_the_engine()
    {
        double At(Hold hold) => HoldCapacity.Of(hold with { OnFlange = true }, 0).TotalNmm;
        Hold chocked = Held(Restraint.Chock, 0.75, 20), geared = Held(Restraint.Gear, 0.75, 20), bar = Held(Restraint.Bar, 0.75, 20);
        Near.Equal(280_433.949 / 2, At(chocked), 1e-8);
        Near.Equal(195_000, At(geared), 1e-12);
        Near.Equal(622_918.918, At(bar), 1e-8);
        Near.Equal(195_000, At(chocked with { By = [Restraint.Chock, Restraint.Gear] }), 1e-12);
        Near.Equal(195_000, At(geared with { HalfShafts = HalfShafts.One }), 1e-12);
        Assert.Equal(0, At(chocked with { HalfShafts = HalfShafts.One }));
        Near.Equal(622_918.918, At(bar with { HalfShafts = HalfShafts.One }), 1e-8);
    }

    [Fact]
    public void On_stands_nothing_grips_and_lifting_takes_grip_away()
    {
        Hold hold = Held(Restraint.Helper, 0.75, 20);
        Assert.Equal(0, HoldCapacity.Of(hold with { OnStands = true }, 0).GripNmm);
        Assert.Equal(0, HoldCapacity.Of(hold, 5000).GripNmm);
        Near.Equal(0.75 * 2200 * 310, HoldCapacity.Of(hold, 1000).GripNmm, 1e-12);
    }

    /// <summary>1250 kg at 300 mm: 2.44·1250·0.3 = 915 N·m, four tenths or six tenths of it over two wheels.</summary>
    [Theory]
    [InlineData(false, 183.0)]
    [InlineData(true, 274.5)]
    public void A_helper_with_the_engine_off_holds_what_the_unaided_brake_must(bool front, double nm)
    {
        Hold hold = Held(Restraint.Helper, 0.75, 20) with { TyreRadius = Length.FromMillimeters(300), Front = front };
        HoldCapacity capacity = HoldCapacity.Of(hold, 0);
        Near.Equal(nm, capacity.TotalNmm / 1000, 1e-9);
        Assert.Equal(HoldSource.FootBrakeApproval, capacity.Parts[0].Source);
        Assert.Equal((nm * 1000, 0.15), (Math.Round(capacity.Strength.MedianNmm, 6), capacity.Strength.Sigma));
        HoldCapacity running = HoldCapacity.Of(hold with { EngineRunning = true }, 0);
        Near.Equal(0.75 * 3200 * 300, running.TotalNmm, 1e-9);
        Assert.Equal(HoldSource.TyreGrip, running.Parts[0].Source);
    }

    /// <summary>Two tyres 2·0.75·3200·0.31 = 1488 N·m, the engine 60·13 = 780; at 60·30 = 1800 the tyres slip first.</summary>
    [Theory]
    [InlineData(13, HalfShafts.Both, 780, HoldSource.StoppedEngine)]
    [InlineData(30, HalfShafts.Both, 1488, HoldSource.TwoTyres)]
    [InlineData(13, HalfShafts.One, 0, HoldSource.Nothing)]
    public void In_gear_the_engine_or_the_tyres_give_way(double ratio, HalfShafts shafts, double nm, HoldSource source)
    {
        HoldCapacity gear = HoldCapacity.Of(Held(Restraint.Gear, 0.75, 20) with { WholeRatio = ratio, HalfShafts = shafts }, 0);
        Assert.Equal(nm, gear.TotalNmm / 1000, 1e-9);
        Assert.Equal(source, gear.Parts[0].Source);
    }

    /// <summary>1400·9.80665/4·0.15/0.40 = 1287.1 N tips a stand: half of it 643.6, a quarter 321.8.</summary>
    [Theory]
    [InlineData(262, false, StandRisk.Small)]
    [InlineData(321, false, StandRisk.Small)]
    [InlineData(322, false, StandRisk.Care)]
    [InlineData(643, false, StandRisk.Care)]
    [InlineData(644, false, StandRisk.Stop)]
    [InlineData(100, true, StandRisk.Stop)]
    public void On_stands_the_pull_decides_and_a_wheel_s_fastener_waits(double pullN, bool turnsWheel, StandRisk risk)
    {
        Stands stands = Stands.Of(1400, pullN, turnsWheel);
        Assert.Equal((risk, pullN), (stands.Risk, stands.PullN));
        Near.Equal(1287.12, stands.TipsAtN, 1e-5);
        Near.Equal(2 * stands.TipsAtN, Stands.Of(2800, pullN, turnsWheel).TipsAtN);
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
        VehicleMass = Mass.FromKilograms(1250),
        WheelLoad = Force.FromNewtons(3200),
        TyreRadius = Length.FromMillimeters(310),
        ChockHeight = Length.FromMillimeters(chockMm),
        StudBarDiameter = Length.FromMillimeters(30),
        GroundFriction = ground,
    };
}
