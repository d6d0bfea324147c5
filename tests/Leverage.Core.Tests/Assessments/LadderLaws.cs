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
            Assert.True(pair.Second.ComesLooseBy >= pair.First.ComesLooseBy + LadderRank.LeastGain);
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
        else if (assessment is { Lever: not null, Verdict: not Verdict.Stop })
        {
            // What an open jaw rounds off, a wheel that may turn and a tube that may slide are mended before the first pull, stop or not.
            LadderStep first = assessment.Moves.First(step => step.Alone is not null);
            Judgement asked = assessment.Judgement, mended = first.Alone!.Value;
            Assert.NotEqual("soak", first.Key);
            Assert.True(LadderCures.Harm(mended) < LadderCures.Harm(asked) || mended.ComesLoose >= asked.ComesLoose + LadderRank.LeastGain);
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

    /// <summary>A person more changes the force and nothing else: the lever is the one of the pull before, as it is listed.</summary>
    [Theory]
    [MemberData(nameof(Situations))]
    public void A_second_person_pulls_on_the_lever_listed_before(int nut, string condition, int way)
    {
        LadderStep[] pulls = [.. Moves(nut, condition, way).Where(step => step.Setup is not null)];
        Assert.All(pulls.Zip(pulls.Skip(1)).Where(pair => pair.Second.Key == "second-person"), pair =>
            Assert.Equal(pair.First.Setup!.LeverLength, pair.Second.Setup!.LeverLength));
    }

    internal static IReadOnlyList<LadderStep> Moves(int nut, string condition, int way) => Loosening.Assess(Request(nut, condition, way)).Moves;

    internal static LooseningRequest Request(int nut, string condition, int way)
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
