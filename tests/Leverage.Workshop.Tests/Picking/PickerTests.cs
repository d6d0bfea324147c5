using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
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
    public void The_first_set_up_is_safe_and_likely_where_any_is_and_within_five_points_of_the_likeliest(string name)
    {
        PickRequest request = Case(name);
        PickAssessment pick = Picker.Pick(request with { Advise = false });
        List<LooseningAssessment> all = [.. EverySetUp(request)];
        Assert.Equal(pick.Tally.Setups, all.Count);
        Assert.Equal(
            (pick.Tally.Go, pick.Tally.Care, pick.Tally.Short, pick.Tally.Stop),
            (Count(all, Verdict.Go), Count(all, Verdict.Care), Count(all, Verdict.Short), Count(all, Verdict.Stop)));
        LooseningAssessment[] go = [.. all.Where(one => one.Verdict == Verdict.Go)], safe = [.. all.Where(one => one.Verdict != Verdict.Stop)];
        if (safe.Length > 0)
        {
            Assert.True(go.Length > 0 ? pick.Verdict == Verdict.Go : pick.Verdict != Verdict.Stop);
            double best = (go.Length > 0 ? go : safe).Max(one => one.Judgement.ComesLoose);
            Assert.InRange(pick.SetUps[0].Assessment.Judgement.ComesLoose, best - 2 * LadderRank.LeastGain, best + 1e-9);
        }
    }

    [Fact]
    public void Each_set_up_is_a_set_of_its_own_and_says_what_loosen_says_of_it()
    {
        IReadOnlyList<PickedSetUp> setUps = Picker.Pick(Case("held")).SetUps;
        Assert.Equal(PickAssessment.Most, setUps.Count);
        Assert.Equal(setUps.Count, setUps.Select(setUp => setUp.Set).Distinct().Count());
        Assert.All(setUps, setUp =>
        {
            LooseningAssessment loosen = Loosening.Assess(setUp.Request);
            Assert.Equal(loosen.Judgement, setUp.Assessment.Judgement);
            Assert.Equal(setUp.Effort, loosen.Nut.LikelyNmm / (loosen.Lever!.Value.ReachMm * loosen.Hand.Quantile(0.5)), 1e-12);
        });
    }

    [Fact]
    public void Where_the_chest_leaves_it_tight_something_is_to_be_borrowed_or_bought()
    {
        ToolChest chest = Nuts.Chest(Nuts.Bar("bar", "3/4", 500, 22) + Nuts.Socket("s", "3/4"));
        PickAssessment pick = Picker.Pick(Nuts.Request(chest, "stand-push"));
        Assert.NotEqual(Verdict.Go, pick.Verdict);
        LadderStep get = Assert.Single(pick.Moves, step => step.Tool is { ToGet: true });
        Assert.True(get.ComesLooseBy >= VerdictOf.LikelyShare);
        Assert.NotEqual(Verdict.Stop, get.Alone!.Value.Verdict);
    }

    [Fact]
    public void Nothing_that_fits_asks_for_what_a_shop_sells()
    {
        PickAssessment pick = Picker.Pick(Case("free") with { Nut = Case("free").Nut with { AcrossFlats = Length.FromMillimeters(46) } });
        Assert.Equal((0, Verdict.NotJudged, 0), (pick.SetUps.Count, pick.Verdict, pick.Tally.Sets));
        Assert.Equal(46, pick.Moves.First(step => step.Tool is { ToGet: true }).Tool!.AcrossFlats!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void A_wheel_that_turns_is_held_with_what_the_chest_has()
    {
        PickAssessment pick = Picker.Pick(Nuts.Request(Nuts.Shared, "stand-push").Held(Restraint.Brake));
        Assert.Equal(Verdict.Stop, pick.Verdict);
        Assert.Equal("oak chocks", pick.Moves[0].Tool!.Name);
        Assert.Equal(110, pick.Moves[0].Tool!.Height!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void On_stands_it_comes_down_first()
    {
        PickRequest request = Nuts.Request(Nuts.Shared, "stand-push").Held(Restraint.Brake, Restraint.Chock, Restraint.Helper);
        request = request with { Nut = request.Nut with { OnStands = true } };
        PickAssessment pick = Picker.Pick(request);
        Assert.Equal(Verdict.Stop, pick.Verdict);
        Assert.Equal("on-its-wheels", pick.Moves[0].Key);
    }

    [Fact]
    public void A_measured_force_counts_in_its_stance_only()
    {
        PickRequest request = Nuts.Request(Nuts.Shared, "stand-push", "kneel-push") with { Person = Nuts.Shared.Person("owner") };
        LooseningRequest standing = request.InStance("stand-push");
        Assert.Equal((520.0, null), (standing.Force?.Newtons, request.InStance("kneel-push").Force));
        Assert.Equal(82, request.InStance("kneel-push").Body!.Value.Kilograms);
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
                LooseningRequest nut = request.InStance(stance.Key);
                double[] overlaps = set.Set.Tube is null
                    ? [0]
                    : Fit.OverlapsMm(set.Setup, stance);
                foreach (double overlap in overlaps)
                {
                    Length? on = set.Set.Tube is null ? null : Length.FromMillimeters(overlap);
                    yield return LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(set.Set.Into(nut with { Overlap = on })));
                }
            }
        }
    }

    private static int Count(List<LooseningAssessment> all, Verdict verdict) => all.Count(one => one.Verdict == verdict);
}
