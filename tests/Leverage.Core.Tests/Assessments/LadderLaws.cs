using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class LadderLaws
{
    private static readonly (string Thread, double Nm, double FlatsMm, string Drive, double BarMm)[] Nuts =
    [
        ("M8", 25, 13, "3/8", 200), ("M12x1.5", 110, 19, "1/2", 450), ("M12", 100, 18, "1/2", 250), ("M24x1.5", 460, 36, "1/2", 600), ("M24x1.5", 460, 36, "3/4", 1000),
    ];

    private static readonly Func<LooseningRequest, LooseningRequest>[] Ways =
    [
        r => r,
        r => r with { Stance = "lie-pull" },
        r => r with { Stance = "reach-one-hand" },
        r => r with { On = "hub", HeldBy = [], VehicleMass = Mass.FromKilograms(1250) },
        r => r with { On = "hub", OnStands = true, VehicleMass = Mass.FromKilograms(1250) },
        r => r with { Tool = ToolKind.Open, Drive = null, Worn = "rounded" },
        r => r with { On = "exhaust", Bar = null, Drive = null },
        r => r with { Tube = new(Length.FromMillimeters(1200), Length.FromMillimeters(26.9), Length.FromMillimeters(2.6)), BarDiameter = Length.FromMillimeters(18), Surface = "greasy" },
    ];

    public static TheoryData<int, string, int> Situations
    {
        get
        {
            var all = new TheoryData<int, string, int>();
            foreach (string condition in (string[])["clean", "used", "rusted", "heat-rusted", "locked-high"])
            {
                for (int nut = 0; nut < Nuts.Length; nut++)
                {
                    for (int way = 0; way < Ways.Length; way++)
                    {
                        all.Add(nut, condition, way);
                    }
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void Chances_never_fall_and_each_figure_gains_five_points_or_comes_first(int nut, string condition, int way)
    {
        LadderStep[] figured = [.. Moves(nut, condition, way).Where(step => step.ComesLooseBy is not null)];
        Assert.All(figured.Zip(figured.Skip(1)), pair =>
        {
            Assert.True(pair.Second.ComesLooseBy >= pair.First.ComesLooseBy + (pair.Second.Key == "soak" ? -1e-9 : LadderRank.LeastGain));
            Assert.True(pair.Second.BreaksBy >= pair.First.BreaksBy);
        });
        Assert.All(figured, step => Assert.InRange(step.ComesLooseBy!.Value + step.BreaksBy!.Value, 0, 1 + 1e-3));
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void Nothing_that_is_not_safe_is_pulled_and_the_stud_is_never_heated(int nut, string condition, int way)
    {
        IReadOnlyList<LadderStep> moves = Moves(nut, condition, way);
        Assert.All(moves, step =>
        {
            Assert.NotEqual(Verdict.Stop, step.Alone?.Verdict);
            Assert.NotEqual(HeatedPart.Stud, step.Request?.Heat);
            Assert.NotEmpty(MoveWords.Of(step, UnitStyle.Metric));
            Assert.NotEmpty(MoveWords.Of(step, UnitStyle.Us));
        });
        Assert.DoesNotContain("stud", string.Join(' ', moves.Where(step => step.Key.StartsWith("heat", StringComparison.Ordinal)).Select(step => step.Move!.Words)), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void The_last_resort_is_last_and_few_steps_have_no_figure(int nut, string condition, int way)
    {
        IReadOnlyList<LadderStep> moves = Moves(nut, condition, way);
        Assert.Equal("split-nut", moves[^1].Key);
        Assert.Single(moves, step => step.Move?.Effect == MoveEffect.Cut);
        Assert.InRange(moves.Count(step => step is { Move: { Joint: null, HasNoFigure: true }, ComesLooseBy: null } && step != moves[^1]), 0, 4);
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void Nobody_slips_a_tube_over_where_there_is_no_room(int nut, string condition, int way)
    {
        if (way is 1 or 2)
        {
            Assert.All(Moves(nut, condition, way), step => Assert.Null(step.Tool?.Tube));
        }
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void The_first_pull_has_the_chances_the_answer_has(int nut, string condition, int way)
    {
        LooseningAssessment assessment = Loosening.Assess(Request(nut, condition, way));
        if (assessment.Moves.FirstOrDefault(step => step.Key == "now") is { } now)
        {
            Assert.Equal(assessment.Judgement.ComesLoose, now.ComesLooseBy!.Value, 1e-9);
            Assert.Equal(assessment.Judgement.Breaks, now.BreaksBy!.Value, 1e-9);
        }
        else
        {
            Assert.True(assessment.Lever is null || assessment.Verdict == Verdict.Stop
                || assessment.Moves.Single(step => step.Key == "ring").BreaksBy < assessment.Judgement.Breaks);
        }
    }

    /// <summary>Common practice: whoever sees rust soaks before anything heavier, whatever this nut or like nuts have shown.</summary>
    [Theory]
    [MemberData(nameof(Situations))]
    public void Rust_is_soaked_before_anything_heavier_unless_the_nut_is_all_but_sure_to_come(int nut, string condition, int way)
    {
        LooseningRequest plain = Request(nut, condition, way);
        foreach (LooseningRequest request in (LooseningRequest[])[plain, plain with { Held = 0.9 * plain.BookTorque!.Value }, plain with { Came = [1.2 * plain.BookTorque.Value, 1.4 * plain.BookTorque.Value] }])
        {
            LooseningAssessment assessment = Loosening.Assess(request);
            string[] keys = [.. assessment.Moves.Where(step => step.Move is { Joint: null }).Select(step => step.Key)];
            bool rusty = condition is "rusted" or "heat-rusted";
            LadderStep? first = assessment.Moves.FirstOrDefault(step => step.ComesLooseBy is not null);
            Assert.Equal(rusty && !(first is { Key: not "soak" } && first.ComesLooseBy >= 1 - LadderRank.LeastGain && first.Setup!.Fastener.Soaked == false), keys.Contains("soak"));
            Assert.DoesNotContain(keys.TakeWhile(key => key != "soak"), key => rusty && keys.Contains("soak") && key is not ("seat-socket" or "ring"));
            Assert.All(assessment.Moves.Where(step => step.Key == "soak" && step.ComesLooseBy is not null), soak =>
                Assert.True(soak.ComesLooseBy >= first!.ComesLooseBy));
        }
    }

    [Fact]
    public void A_soak_halves_what_has_grown_on_a_nut_whose_like_came_hard()
    {
        // G - 1 halves: a like nut that came at 1.5 of the median tells as much of the soaked one against the soaked median.
        Fastener dry = LooseningDefaults.Complete(Request(3, "rusted", 0)).Fastener;
        NutFigures plain = NutFigures.Of(dry), soaked = NutFigures.Of(dry with { Soaked = true });
        Fastener hard = dry with { CameNmm = [1.5 * plain.LikelyNmm] };
        Assert.Equal(soaked.LikelyNmm * NutFigures.Of(hard).LikelyNmm / plain.LikelyNmm, NutFigures.Soaked(hard).LikelyNmm, 1e-6 * plain.LikelyNmm);

        // One that held the median dry is of the harder half: the middle of those is at three in four of all soaked ones.
        Assert.Equal(soaked.Spread.Quantile(0.75), NutFigures.Soaked(dry with { HeldNmm = plain.LikelyNmm }).LikelyNmm, 1e-6 * plain.LikelyNmm);
        Assert.Equal(soaked.Spread.Quantile(0.55), NutFigures.Soaked(dry with { HeldNmm = plain.LowNmm }).LikelyNmm, 1e-6 * plain.LikelyNmm);
    }

    /// <summary>Common practice: a wheel nut is half-inch work; three-quarter drive is for what half an inch does not bring.</summary>
    [Theory]
    [InlineData("used", "3/8")]
    [InlineData("rusted", "3/8")]
    [InlineData("rusted", null)]
    [InlineData("salted", null)]
    public void The_smallest_drive_that_will_do_comes_before_a_bigger_one(string condition, string? drive)
    {
        LooseningRequest request = Request(1, condition, 0) with { Drive = drive, Bar = Length.FromMillimeters(250), Tool = drive is null ? ToolKind.Ring : null, Person = Leverage.Levers.Person.Woman, Body = Mass.FromKilograms(55) };
        LadderStep[] bigger = [.. Loosening.Assess(request).Moves.Where(step => step.Key == "bigger-drive")];
        Assert.Equal("1/2", bigger[0].Tool!.Drive);
        Assert.All(bigger.Skip(1), step => Assert.True(bigger[0].ComesLooseBy < LadderRank.Enough && step.Tool!.Drive == "3/4"));
    }

    /// <summary>By the interface: a room of 0.7 m takes no lever of a metre.</summary>
    [Theory]
    [MemberData(nameof(Situations))]
    public void Nothing_is_taken_that_there_is_no_room_to_swing(int nut, string condition, int way)
    {
        LooseningRequest request = Request(nut, condition, way) with { Room = Length.FromMillimeters(650) };
        Assert.All(Loosening.Assess(request).Moves.Where(step => step.Key is "longer-lever" or "bigger-drive"), step =>
            Assert.InRange(step.Setup!.LeverLength!.Value.Millimeters, 1, 650));
        if (way is 1 or 2)
        {
            Assert.All(Moves(nut, condition, way).Where(step => step.Key is "longer-lever" or "bigger-drive"), step =>
                Assert.InRange(step.Setup!.LeverLength!.Value.Millimeters, 1, 750));
        }
    }

    [Theory]
    [InlineData(SpecialJoint.Castle, "pull-pin")]
    [InlineData(SpecialJoint.ThroughBolt, "hold-bolt")]
    [InlineData(SpecialJoint.BallJoint, "load-taper")]
    public void A_special_joint_comes_before_any_pull(SpecialJoint joint, string first)
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(1, "used", 0) with { Joints = [joint] }).Moves;
        Assert.Equal([first, "now"], moves.Take(2).Select(step => step.Key));
    }

    [Fact]
    public void Stainless_is_oiled_and_turned_slowly_and_meets_no_impact_wrench()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(3, "rusted", 0) with { Grade = "A4-70" }).Moves;
        Assert.Equal("paste-slow", moves[0].Key);
        Assert.DoesNotContain(moves, step => step.Key == "impact-wrench");
    }

    /// <summary>Statics: 505 mm from the nut with the hands at the end, 405 mm with them 195 mm in; two push four thirds of one.</summary>
    [Fact]
    public void Hands_further_out_and_a_second_person_have_figures()
    {
        LooseningRequest nut = Request(3, "used", 0) with { HandsIn = Length.FromMillimeters(195) };
        LooseningAssessment inward = Loosening.Assess(nut);
        Assert.Equal(405, inward.Lever!.Value.ReachMm, 1e-9);
        LadderStep outward = inward.Moves.First(step => step.Key is "hands-out" or "bigger-drive");
        Assert.True(outward.ComesLooseBy > inward.Judgement.ComesLoose);
        LooseningAssessment one = Loosening.Assess(Request(3, "used", 0));
        LooseningAssessment two = Loosening.Assess(Request(3, "used", 0) with { People = 2 });
        Assert.Equal(4.0 / 3, two.Hand.Quantile(0.5) / one.Hand.Quantile(0.5), 1e-9);
        LadderStep second = Loosening.Assess(Request(4, "salted", 0)).Moves.Single(step => step.Key == "second-person");
        Assert.NotNull(second.ComesLooseBy);
        Assert.Equal(2, second.Request!.People);
    }

    /// <summary>A person more changes the force and nothing else: the lever is the one of the pull before, as it is listed.</summary>
    [Theory]
    [MemberData(nameof(Situations))]
    public void A_second_person_pulls_on_the_lever_listed_before(int nut, string condition, int way)
    {
        LadderStep[] pulls = [.. Moves(nut, condition, way).Where(step => step.Setup is not null)];
        Assert.All(pulls.Zip(pulls.Skip(1)).Where(pair => pair.Second.Key == "second-person"), pair =>
            Assert.Equal(pair.First.Setup!.LeverLength, pair.Second.Setup!.LeverLength));
    }

    [Fact]
    public void The_lever_of_a_rusted_tractor_nut_is_listed_before_two_pull_on_it()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(new LooseningRequest
        {
            AcrossFlats = Length.FromMillimeters(46),
            On = "tractor",
            Condition = "salted",
            Drive = "3/4",
            Bar = Length.FromMillimeters(1000),
        }).Moves;
        Assert.All(moves.Where(step => step.Key == "second-person"), step => Assert.True(
            step.Request!.Tube is null || moves.Any(lever => lever.Key is "longer-lever" or "bigger-drive" && lever.Request?.Tube is not null)));
    }

    [Fact]
    public void A_move_that_changes_the_stance_is_kept_for_the_tools_that_follow()
    {
        IReadOnlyList<LadderStep> moves = Loosening.Assess(Request(1, "salted", 0) with { Stance = "stand-pull" }).Moves;
        int stance = moves.ToList().FindIndex(step => step.Key == "better-stance");
        Assert.True(stance > 0);
        Assert.All(moves.Skip(stance).Where(step => step.Setup is not null), step => Assert.Equal("stand-push", step.Setup!.Hands.Stance.Key));
    }

    [Fact]
    public void A_pull_that_falls_short_says_by_what()
    {
        LooseningAssessment axle = Loosening.Assess(Request(3, "rusted", 0));
        Assert.Equal(Verdict.Short, axle.Verdict);
        Assert.Equal("The nut likely needs 630 N·m. Your hands likely make 253.", Reasons.Of(axle, UnitStyle.Metric)[^1]);
    }

    [Fact]
    public void What_is_near_decides_what_may_be_heated()
    {
        LooseningRequest nut = Request(4, "salted", 0) with { Bar = Length.FromMillimeters(500), Person = Leverage.Levers.Person.Woman };
        Assert.Contains(Loosening.Assess(nut with { On = "structure" }).Moves, step => step.Key == "heat-nut");
        Assert.DoesNotContain(Loosening.Assess(nut with { On = "hub" }).Moves, step => step.Key == "heat-nut");
    }

    [Fact]
    public void A_vehicle_on_stands_comes_down_first_and_a_free_wheel_is_chocked()
    {
        string[] keys = [.. Loosening.Assess(Request(4, "used", 4)).Moves.Select(step => step.Key)];
        Assert.Equal("on-its-wheels", keys[0]);
        Assert.Equal("chock", keys[1]);
        Assert.Equal("chock", Loosening.Assess(Request(4, "used", 3)).Moves[0].Key);
    }

    [Fact]
    public void A_bar_that_is_asked_for_can_be_bought()
    {
        LadderStep lever = Loosening.Assess(Request(3, "rusted", 0)).Moves.Single(step => step.Key == "bigger-drive");
        Assert.Equal("3/4", lever.Tool!.Drive);
        Assert.True(lever.Tool.Bar!.Value.Millimeters is 500 or 1000);
        Assert.True(lever.Tool.Tube!.Length.Millimeters is 600 or 1000 or 1500);
        string words = MoveWords.Of(lever, UnitStyle.Metric);
        Assert.StartsWith("Take a 3/4 in bar ", words, StringComparison.Ordinal);
        Assert.Contains("36 mm socket", words, StringComparison.Ordinal);
    }

    private static IReadOnlyList<LadderStep> Moves(int nut, string condition, int way) => Loosening.Assess(Request(nut, condition, way)).Moves;

    private static LooseningRequest Request(int nut, string condition, int way)
    {
        var (thread, torque, flats, drive, bar) = Nuts[nut];
        return Ways[way](new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(torque),
            Thread = ThreadCatalog.Named(thread),
            Condition = condition,
            AcrossFlats = Length.FromMillimeters(flats),
            Drive = drive,
            Bar = Length.FromMillimeters(bar),
        });
    }
}
