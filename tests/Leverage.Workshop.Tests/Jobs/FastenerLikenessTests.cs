using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Requests;
using Leverage.Workshop.Jobs;
using UnitsNet;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>Which fasteners of a job share one choice of set-up.</summary>
public static class FastenerLikenessTests
{
    [Fact]
    public static void Fasteners_that_differ_only_in_name_and_refitting_are_alike() =>
        Assert.Equal(Of(100, "stand-pull"), Of(100, "stand-pull", name: "another"));

    [Fact]
    public static void The_last_digit_of_a_torque_counts() =>
        Assert.NotEqual(Of(100, "stand-pull"), Of(100.001, "stand-pull"));

    [Fact]
    public static void Stances_and_what_holds_count()
    {
        Assert.NotEqual(Of(100, "stand-pull"), Of(100, "kneel-pull"));
        Assert.NotEqual(Of(100, "stand-pull"), Of(100, "stand-pull", held: [Restraint.Brake]));
        Assert.NotEqual(Of(100, "stand-pull", held: [Restraint.Chock]), Of(100, "stand-pull", held: [Restraint.Brake]));
        Assert.Equal(Of(100, "stand-pull", held: [Restraint.Brake]), Of(100, "stand-pull", held: [Restraint.Brake]));
    }

    private static FastenerLikeness Of(double torqueNm, string stance, string name = "nut", Restraint[]? held = null) => FastenerLikeness.Of(
        new JobFastener { Name = name, BookTorque = Torque.FromNewtonMeters(torqueNm), Stances = [stance] },
        held is null ? null : new WheelHold(new LooseningRequest { HeldBy = held, VehicleMass = Mass.FromKilograms(1200) }, []), new NutHistory(null, []));
}
