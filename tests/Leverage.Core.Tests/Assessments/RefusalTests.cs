using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>Things that do not go together are refused in a line that says what, why and the cure.</summary>
public sealed class RefusalTests
{
    public static TheoryData<string, Func<LooseningRequest, LooseningRequest>> Refused => new()
    {
        {
            "overlap: 700 mm is longer than the bar, 600 mm. It can be no more than the straight handle.",
            r => r with { Overlap = Mm(700) }
        },
        {
            "overlap: 550 mm does not go with a tube of 500 mm. It must leave room for the hands.",
            r => r with { Overlap = Mm(550), Tube = r.Tube! with { Length = Mm(500) } }
        },
        {
            "tube: it does not go over the bar: bore 27.3 mm, bar 27.4 mm. Take a wider tube.",
            r => r with { BarDiameter = Mm(27.4) }
        },
        {
            "tube: it is far too loose: 27.3 mm of play on 20 mm of overlap. Take a narrower tube.",
            r => r with { Overlap = Mm(20), Tube = new TubeText(Mm(1000), Mm(53.7), Mm(3.2)) }
        },
        {
            "tube: 90 mm is too short: the middle of your hands is 95 mm from its end. Take a longer one.",
            r => r with { Overlap = Mm(50), Tube = r.Tube! with { Length = Mm(90) } }
        },
        {
            "force: 850 N down is more than the body weight of 82 kg. Write: force 450N",
            r => r with { Force = Force.FromNewtons(850) }
        },
        {
            "tube: cannot use '6mmx3mmx1000mm': the wall leaves no bore. The outside must be more than twice the wall.",
            r => r with { Tube = new TubeText(Mm(1000), Mm(6), Mm(3)) }
        },
        {
            "tube: a jack handle's bore must be measured. Write: bore 30mm",
            r => r with { Tube = new TubeText(Mm(1100)) }
        },
        {
            "bar-diameter: is of no use without bar. Write: bar 600mm",
            r => r with { Bar = null }
        },
        {
            "tube: whether the tube goes over the bar needs the bar's diameter; the drive will do too. Write: bar-diameter 18mm",
            r => r with { Drive = null, BarDiameter = null }
        },
        {
            "grade: is of no use without thread. Write: thread M24x1.5",
            r => r with { Thread = null, Grade = "8.8" }
        },
        {
            "torque: nothing says how tight the nut is. Give the torque, or hexagon or thread with where the nut sits. Nearest in the table: "
            + "passenger car axle nut that sets the hub bearing, passenger car axle nut, hub bearing preset by its maker, "
            + "rear hub nut, older car or light truck, drum brake and taper bearings. Write: torque 460Nm",
            r => r with { BookTorque = null, Thread = null, AcrossFlats = null }
        },
        {
            "held-by: what a parking brake holds follows from the vehicle's mass. Write: mass 1250kg",
            r => r with { VehicleMass = null }
        },
        {
            "held-by: how well the tyre grips needs the load on the wheel, or the vehicle's mass. Write: wheel-load 3200N",
            r => r with { HeldBy = [Restraint.Helper], VehicleMass = null, WheelLoad = null }
        },
        {
            "held-by: what a foot brake holds follows from the vehicle's mass. Write: mass 1250kg",
            r => r with { HeldBy = [Restraint.Helper], OnStands = true, VehicleMass = null, WheelLoad = null }
        },
        {
            "hands-in: 201 mm is more than a third of a lever of 600 mm: give the length you use as its length. Write: hands-in 200mm",
            r => r with { HandsIn = Mm(201), Tube = null, Overlap = null, Bar = Mm(600) }
        },
        {
            "tool-size: a tool of 22 mm does not go on a nut of 23.81 mm across flats. Write: tool-size 24mm",
            r => r with { Thread = null, Grade = null, AcrossFlats = Mm(23.8125), ToolSize = Mm(22) }
        },
        {
            "chock: a chock cannot be higher than the middle of the wheel.",
            r => r with { ChockHeight = Mm(311) }
        },
        {
            "chock: a chock cannot be higher than the middle of the wheel.",
            r => r with { ChockHeight = Mm(301), TyreRadius = null }
        },
        {
            "held-by: what a bar across the studs holds follows from its diameter. Write: hold-bar 30mm",
            r => r with { HeldBy = [Restraint.Bar] }
        },
        {
            "condition: 'locked-high' needs the thread: a locker's grip grows with the diameter. Write: thread M24x1.5",
            r => r with { Condition = "locked-high", Thread = null }
        },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_does_not_go_together_is_refused_with_the_cure(string line, Func<LooseningRequest, LooseningRequest> wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        Assert.Equal(line, Assert.Throws<InputException>(() => SampleRequests.Judged(wrong(SampleRequests.AxleNut))).Line);
    }

    [Theory]
    [InlineData("condition", "rustd", "Nearest: rusted")]
    [InlineData("stance", "stand-pul", "Nearest: stand-pull")]
    [InlineData("drive", "1/3", "Nearest: ")]
    [InlineData("surface", "dri", "Nearest: dry")]
    [InlineData("grade", "8.9", "Nearest: 8.8")]
    [InlineData("ground", "dry-concret", "Nearest: dry-concrete")]
    public void A_name_in_no_table_gets_the_nearest_names(string what, string name, string near)
    {
        LooseningRequest wrong = what switch
        {
            "condition" => SampleRequests.AxleNut with { Condition = name },
            "stance" => SampleRequests.AxleNut with { Stance = name },
            "drive" => SampleRequests.AxleNut with { Drive = name },
            "surface" => SampleRequests.AxleNut with { Surface = name },
            "grade" => SampleRequests.AxleNut with { Grade = name },
            _ => SampleRequests.AxleNut with { Ground = name },
        };
        Assert.Contains(near, Assert.Throws<InputException>(() => SampleRequests.Judged(wrong)).Line, StringComparison.Ordinal);
    }

    [Fact]
    public void The_question_about_a_tube_needs_one() => Assert.Equal(
        "tube: this question needs a bar and a tube. Write: bar 600mm tube 33.7x3.2x1000mm",
        Assert.Throws<InputException>(() => SlipDefaults.Complete(SampleRequests.AxleNut with { Tube = null, Overlap = null })).Line);

    [Theory]
    [InlineData("M24x1.5", "9.8")]
    [InlineData("M27", "A2-70")]
    public void A_grade_without_figures_at_the_size_is_refused(string thread, string grade) => Assert.Contains(
        $"grade {grade} has no figures at ",
        Assert.Throws<InputException>(() => SampleRequests.Judged(SampleRequests.AxleNut with { Thread = ThreadCatalog.Named(thread), Grade = grade })).Line,
        StringComparison.Ordinal);

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
