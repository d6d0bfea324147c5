using Leverage.Holding;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

public static class JobStatesTests
{
    private static readonly Wheel Left = new(Axle.Rear, Side.Left);
    private static readonly string[] All = ["wheels down", "in gear", "parking brake", "left half shaft in", "right half shaft in"];
    private static readonly Job Job = JobText.Read(JobText.Head + JobText.AxleNut
        + "[[tasks]]\nname = \"t\"\ngives = [\"chocked\", \"foot brake\"]" + JobText.Chest);

    [Fact]
    public static void Gear_and_brake_hold_the_driven_and_braked_wheel_with_both_half_shafts_in() =>
        Assert.Equal([Restraint.Brake, Restraint.Gear], Of(Left, All).Request.HeldBy!);

    [Fact]
    public static void Nothing_of_gear_or_brake_holds_a_front_wheel_of_a_rear_drive() =>
        Assert.Empty(Of(new Wheel(Axle.Front, Side.Left), All).Request.HeldBy!);

    [Theory]
    [InlineData("left half shaft in")]
    [InlineData("right half shaft in")]
    public static void In_gear_holds_nothing_once_a_half_shaft_is_out(string gone)
    {
        WheelHold hold = Of(Left, All.Except([gone]));

        Assert.DoesNotContain(Restraint.Gear, hold.Request.HeldBy!);
        Assert.Contains(hold.Lost, words => words.Contains(gone, StringComparison.Ordinal));
    }

    [Fact]
    public static void In_gear_holds_nothing_with_the_wheels_off_the_ground()
    {
        WheelHold hold = Of(Left, All.Except(["wheels down"]));

        Assert.True(hold.Request.OnStands);
        Assert.Equal([Restraint.Brake], hold.Request.HeldBy!);
    }

    [Fact]
    public static void A_later_spell_of_a_state_counts_like_the_first() =>
        Assert.False(Of(Left, [.. All.Except(["wheels down"]), "wheels down again"]).Request.OnStands);

    [Fact]
    public static void A_chock_holds_with_its_height_and_a_helper_without_anything()
    {
        WheelHold hold = Of(Left, ["wheels down", "chocked", "foot brake"]);

        Assert.Equal([Restraint.Chock, Restraint.Helper], hold.Request.HeldBy!);
        Assert.Equal(110, hold.Request.ChockHeight?.Millimeters);
        Assert.Equal(3100, hold.Request.WheelLoad?.Newtons);
    }

    [Fact]
    public static void A_thing_of_the_chest_holds_under_its_own_name() =>
        Assert.Contains(Restraint.Chock, Of(Left, ["wheels down", "oak chocks"]).Request.HeldBy!);

    private static WheelHold Of(Wheel wheel, IEnumerable<string> states) => new JobStates(Job).Of(wheel, states);
}
