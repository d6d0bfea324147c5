using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What is taken for granted when something is left out, and that it is told.</summary>
public sealed class DefaultsTests
{
    /// <summary>Everything said that can be said.</summary>
    private static readonly LooseningRequest Full = SampleRequests.AxleNut with
    {
        Grade = "10.9",
        Friction = 0.12,
        LeftHand = true,
        BarYield = Pressure.FromMegapascals(1000),
        TubeYield = Pressure.FromMegapascals(355),
        Surface = "oily",
        StraightHandle = Length.FromMillimeters(420),
        Worn = "rounded",
        NutClass = "10",
        PastSquare = Angle.FromDegrees(10),
        Person = Person.Woman,
        Ground = "gravel",
        HalfShafts = HalfShafts.One,
        HeldBy = [Restraint.Gear, Restraint.Brake],
    };

    public static TheoryData<string, Func<LooseningRequest, LooseningRequest>> LeftOut => new()
    {
        // M24x1.5 8.8, 660 MPa, dw 33.61, dh 26: 761.94 N·m at yield and friction 0.10, over √2.
        { "tightened by the size of its thread 539 N·m*", r => r with { BookTorque = null } },
        { "grade 8.8", r => r with { Grade = null } },
        { "grade SAE 5", r => r with { Thread = ThreadCatalog.Named("1/2-20"), Grade = null } },
        { "the common torque split (no thread given: 10 % pitch, 40 % thread, 50 % face)", r => r with { Thread = null, Grade = null } },
        { "friction 0.14 at assembly (0.10 to 0.196)", r => r with { Friction = null } },
        { "condition used* (years in service)", r => r with { Condition = null } },
        { "across flats 36 mm (standard nut of this thread)", r => r with { AcrossFlats = null } },
        { "drive square not judged (its size is not given)", r => r with { Drive = null } },
        { "bar 15.5 mm* (usual for a 1/2 in drive; measure it)", r => r with { BarDiameter = null } },
        { "bar yield 900 MPa*", r => r with { BarYield = null } },
        { "tube yield 195 MPa* (the weakest tube steel)", r => r with { TubeYield = null } },
        { "tube pushed on 0.45 m* (all the bar's straight handle)", r => r with { Overlap = null, StraightHandle = null } },
        { "straight handle 0.45 m* (usual share of the bar)", r => r with { StraightHandle = null } },
        { "surface dry* (friction 0.20 in the check)", r => r with { Surface = null } },
        { "end of the swing, past square 30°", r => r with { PastSquare = null } },
        { "pushing down*", r => r with { Stance = null } },
        { "a man", r => r with { Person = null } },
        { "body mass 66.8 kg (survey median)", r => r with { Body = null } },
        { "corners shiny and blunt*", r => r with { Worn = null } },
        { "an old nut's steel 330 MPa*", r => r with { NutClass = null } },
        { "right-hand thread", r => r with { LeftHand = false } },
        { "hold not judged (nothing is said to hold it)", r => r with { HeldBy = null, VehicleMass = null, WheelLoad = null, TyreRadius = null, ChockHeight = null, Ground = null, HalfShafts = null } },
        { "dry concrete", r => r with { Ground = null } },
        { "wheel load 3060 N (a quarter of the vehicle)", r => r with { WheelLoad = null } },
        { "tyre radius 0.30 m (usual car tyre)", r => r with { TyreRadius = null } },
        { "both half shafts in, both wheels down", r => r with { HalfShafts = null } },
    };

    [Fact]
    public void Where_everything_is_said_nothing_is_assumed_but_that_the_lever_weighs_nothing() => Assert.Equal(
        ["lever's own weight left out (it helps a push down a little)"], Assumed(Full));

    [Theory]
    [MemberData(nameof(LeftOut))]
    public void What_is_left_out_is_told_with_the_value_taken(string phrase, Func<LooseningRequest, LooseningRequest> without)
    {
        ArgumentNullException.ThrowIfNull(without);
        Assert.Contains(phrase, Assumed(without(Full)));
        Assert.DoesNotContain(phrase, Assumed(Full));
    }

    [Fact]
    public void Without_a_bar_the_answer_is_the_length_needed()
    {
        LooseningAssessment assessment = LooseningAssessor.Assess(LooseningDefaults.Complete(
            SampleRequests.AxleNut with { Bar = null, BarDiameter = null, Tube = null, Overlap = null }));
        Assert.Null(assessment.Lever);
        Assert.Null(assessment.Release);
        Near.Equal(630.2e3 / 484.634, assessment.NeededLikely.Millimeters, 1e-4);
    }

    [Fact]
    public void Without_a_drive_the_bar_s_bending_is_judged_only_when_its_diameter_is_given()
    {
        LooseningRequest bare = SampleRequests.BareBar with { BarDiameter = null };
        Assert.Contains("bar bending not judged (its diameter is not given)", Assumed(bare));
        Assert.Empty(SampleRequests.Judged(bare).Links);
        Assert.Single(SampleRequests.Judged(SampleRequests.BareBar).Links);
    }

    [Fact]
    public void A_hexagon_the_tables_do_not_know_is_left_out_and_told() => Assert.Contains(
        "hexagon not judged (its width is not given)", Assumed(SampleRequests.BareBar));

    [Fact]
    public void A_thread_whose_face_is_in_no_table_is_told()
    {
        ScrewThread odd = Threads.AnyThread.All.First(thread => !HexagonCatalog.Bearing(thread).FromTables);
        Assert.Contains("bearing face 1.25 × diameter (not in the tables for this size)", Assumed(SampleRequests.BareBar with { Thread = odd }));
    }

    [Fact]
    public void A_jack_handle_is_told_as_such()
    {
        string[] assumed = Assumed(Full with { Tube = new TubeText(Length.FromMillimeters(1100), Bore: Length.FromMillimeters(30)) });
        Assert.Contains("jack handle carries at its end 450 N (AS 2615:2016)", assumed);
        Assert.Contains("denting not judged (the wall of a jack handle is not known)", assumed);
    }

    [Fact]
    public void A_measured_force_needs_no_person_yet_its_body_mass_still_sets_the_hand_s_speed()
    {
        string[] assumed = Assumed(Full with { Force = Force.FromNewtons(500), Person = null, Body = null });
        Assert.DoesNotContain("a man", assumed);
        Assert.Contains("body mass 84.6 kg (survey median)", assumed);
    }

    private static string[] Assumed(LooseningRequest request) =>
        [.. AssumedWords.Of(LooseningDefaults.Complete(request).Assumed, UnitStyle.Metric)];

    [Fact]
    public void A_tool_a_size_over_holds_the_corners_less()
    {
        double Corners(double? toolMm) => SampleRequests.Judged(SampleRequests.AxleNut with { ToolSize = toolMm is { } mm ? Length.FromMillimeters(mm) : null })
            .Links.Single(link => link.Limit.Kind == LinkKind.Corners).Limit.LimitNmm;
        Assert.Equal(Corners(null), Corners(36));
        Assert.InRange(Corners(38) / Corners(36), 0.1, 0.9);
    }

    [Theory]
    [InlineData("wheel", "rusted")]
    [InlineData("exhaust", "heat-rusted")]
    [InlineData("engine", "used")]
    [InlineData(null, "used")]
    public void A_state_that_is_not_said_is_the_usual_one_of_its_place(string? on, string state)
    {
        LooseningSetup setup = LooseningDefaults.Complete(SampleRequests.AxleNut with { On = on, Condition = null });
        Assert.Equal(state, setup.Fastener.Condition.Key);
        Assert.Contains(setup.Assumed, one => one.Kind == AssumptionKind.Condition && one.Name == state);
    }
}
