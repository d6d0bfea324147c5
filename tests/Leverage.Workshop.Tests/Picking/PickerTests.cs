using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Tests.Picking;

public sealed class PickerTests
{
    /// <summary>Nuts of the shared chest: free to turn, held by brake and chock, and with a key.</summary>
    public static TheoryData<string> Cases => ["free", "held", "key"];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_first_place_is_the_best_verdict_and_chance_of_all_set_ups_assessed_one_by_one(string name)
    {
        PickRequest request = Case(name);
        PickAssessment pick = Picker.Pick(request with { Advise = false });
        List<LooseningAssessment> all = [.. EverySetUp(request)];
        Verdict best = all.Min(one => one.Verdict);
        double chance = all.Where(one => one.Verdict == best).Max(one => one.Judgement.ComesLoose);
        Assert.Equal(pick.Tally.Setups, all.Count);
        Assert.Equal(
            (pick.Tally.Go, pick.Tally.Care, pick.Tally.Stop),
            (Count(all, Verdict.Go), Count(all, Verdict.Care), Count(all, Verdict.Stop)));
        Assert.Equal(best, pick.Places[0].Assessment.Verdict);
        Assert.Equal(chance, pick.Places[0].Assessment.Judgement.ComesLoose, 0.01);
        Assert.Equal((int)Math.Round(100 * chance), pick.Places[0].Standing.ComesLoosePercent);
    }

    [Fact]
    public void Each_place_stands_no_higher_than_the_one_above_and_is_a_set_of_its_own()
    {
        IReadOnlyList<Place> places = Picker.Pick(Case("held")).Places;
        Assert.Equal(PickAssessment.MostPlaces, places.Count);
        Assert.Null(places[0].LosesBy);
        for (int i = 1; i < places.Count; i++)
        {
            Assert.True(places[i - 1].Standing <= places[i].Standing);
            Assert.Equal(places[i - 1].Standing.Over(places[i].Standing), places[i].LosesBy);
        }

        Assert.Equal(places.Count, places.Select(place => place.Set).Distinct().Count());
    }

    [Fact]
    public void A_place_says_what_loosen_says_of_the_same_set_up()
    {
        Place place = Picker.Pick(Case("held")).Places[0];
        Assert.Equal(place.Standing.Verdict, place.Assessment.Verdict);
        Assert.Equal(place.Standing.ComesLoosePercent, (int)Math.Round(100 * place.Assessment.Judgement.ComesLoose));
        Assert.Equal(place.Effort, place.Assessment.Nut.LikelyNmm / (place.Assessment.Lever!.Value.ReachMm * place.Assessment.Hand.Quantile(0.5)), 1e-12);
    }

    [Fact]
    public void Judging_one_more_set_up_allocates_nothing()
    {
        PickRequest request = Case("free");
        var bare = LooseningDefaults.Complete(request.Standing("stand-push"));
        NutFigures nut = NutFigures.Of(bare.Fastener);
        StanceHands[] stances = StanceHands.Of(request, nut, null);
        var judge = new SetJudge(ToolSets.Of(request, Length.FromMillimeters(36)).First(set => set.Set.Tube is not null).Setup, nut, null);
        judge.Judge(stances[0], 100);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 200; i++)
        {
            judge.Judge(stances[i % stances.Length], 50 + i);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Nothing_that_fits_asks_for_the_one_piece_that_is_missing()
    {
        PickAssessment pick = Picker.Pick(Case("free") with { Nut = Case("free").Nut with { AcrossFlats = Length.FromMillimeters(46) } });
        Assert.Equal((0, Verdict.Stop, 0), (pick.Places.Count, pick.Verdict, pick.Tally.Sets));
        Purchase first = pick.ToGet[0];
        Assert.Equal("3/4 in socket", Assert.Single(first.Pieces).Name);
        Assert.Equal(Verdict.Go, first.Then.Assessment.Verdict);
    }

    [Fact]
    public void Where_no_tool_is_a_go_the_lightest_piece_that_makes_one_is_named()
    {
        ToolChest chest = Nuts.Chest(Nuts.Bar("bar", "3/4", 500, 22) + Nuts.Socket("s", "3/4"));
        PickAssessment pick = Picker.Pick(Nuts.Request(chest, "stand-push"));
        Assert.NotEqual(Verdict.Go, pick.Verdict);
        Purchase tube = pick.ToGet.Single(get => get.Pieces[0].Tube is not null);
        Assert.Equal(Verdict.Go, tube.Then.Assessment.Verdict);
        Assert.Equal(tube.Pieces[0].Tube, tube.Then.Set.Tube);
        Assert.All(
            StandardPieces.Tubes(Length.FromMillimeters(22)).TakeWhile(piece => piece.MassKg < tube.Mass.Kilograms - 1e-9),
            lighter => Assert.NotEqual(Verdict.Go, WithTube(chest, lighter).Verdict));
        Assert.Equal(pick.ToGet.OrderBy(get => get.Mass), pick.ToGet);
    }

    [Fact]
    public void A_wheel_that_turns_is_held_with_what_the_chest_has_before_anything_is_bought()
    {
        PickAssessment pick = Picker.Pick(Nuts.Request(Nuts.Shared, "stand-push", "lift-legs").Held(Restraint.Brake));
        Assert.NotEqual(Verdict.Go, pick.Verdict);
        Assert.Equal("oak chocks", pick.Changes[0].Hold!.Name);
        Assert.True(pick.CanGo);
        Assert.Equal(110, pick.Changes[0].Then.Assessment.Setup.Hold!.ChockHeight.Millimeters, 1e-9);
    }

    [Fact]
    public void On_stands_the_change_is_to_do_it_on_the_ground()
    {
        PickRequest request = Nuts.Request(Nuts.Shared, "stand-push").Held(Restraint.Brake, Restraint.Chock, Restraint.Helper);
        request = request with { Nut = request.Nut with { OnStands = true } };
        PickAssessment pick = Picker.Pick(request);
        Assert.Equal(Verdict.Stop, pick.Verdict);
        Assert.Equal(AdviceKind.OnTheGround, Assert.Single(pick.Changes, change => change.Then.Assessment.Verdict == Verdict.Go).Kind);
    }

    [Fact]
    public void A_measured_force_counts_in_its_stance_only()
    {
        PickRequest request = Nuts.Request(Nuts.Shared, "stand-push", "kneel-push") with { Person = Nuts.Shared.Person("owner") };
        LooseningRequest standing = request.Standing("stand-push");
        Assert.Equal((520.0, null), (standing.Force?.Newtons, request.Standing("kneel-push").Force));
        Assert.Equal(82, request.Standing("kneel-push").Body!.Value.Kilograms);
    }

    [Fact]
    public void An_empty_chest_and_a_nut_of_unknown_width_are_refused()
    {
        var empty = Assert.Throws<InputException>(() => Picker.Pick(Nuts.Request(Nuts.Chest("# nothing yet\n"))));
        Assert.StartsWith("chest: c holds no bar, socket, key or spanner", empty.Line, StringComparison.Ordinal);
        PickRequest request = Nuts.Request(Nuts.Shared);
        PickRequest unknown = request with { Nut = new LooseningRequest { BookTorque = request.Nut.BookTorque } };
        Assert.Equal(
            "hex: nothing says which of the tools fits. Write: hex 36mm",
            Assert.Throws<InputException>(() => Picker.Pick(unknown)).Line);
    }

    private static PickRequest Case(string name) => name switch
    {
        "free" => Nuts.Request(Nuts.Shared, "stand-push", "one-hand", "lift-legs"),
        "held" => Nuts.Request(Nuts.Shared, "stand-push", "lift-legs").Held(Restraint.Brake, Restraint.Chock, Restraint.Helper),
        _ => Nuts.Request(Nuts.Shared, "kneel-pull") with
        {
            Nut = new LooseningRequest { Tool = ToolKind.Key, BookTorque = Torque.FromNewtonMeters(60), AcrossFlats = Length.FromMillimeters(17) },
        },
    };

    private static IEnumerable<LooseningAssessment> EverySetUp(PickRequest request)
    {
        foreach (SetOnNut set in ToolSets.Of(request, request.Nut.AcrossFlats!.Value))
        {
            foreach (Stance stance in request.Ways())
            {
                LooseningRequest nut = request.Standing(stance.Key);
                double[] overlaps = set.Set.Tube is null
                    ? Fit.HasRoom(set.Setup.Bar!.Length.Millimeters, stance) ? [0] : []
                    : Fit.OverlapsMm(set.Setup, stance);
                foreach (double overlap in overlaps)
                {
                    Length? on = set.Set.Tube is null ? null : Length.FromMillimeters(overlap);
                    yield return LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(set.Set.Into(nut with { Overlap = on })));
                }
            }
        }
    }

    private static PickAssessment WithTube(ToolChest chest, NewPiece piece) =>
        Picker.Pick(Nuts.Request(chest with { Tubes = [piece.Tube!] }, "stand-push") with { Advise = false });

    private static int Count(List<LooseningAssessment> all, Verdict verdict) => all.Count(one => one.Verdict == verdict);
}
