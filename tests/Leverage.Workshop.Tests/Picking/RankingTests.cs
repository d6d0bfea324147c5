using Leverage.Assessments;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Picking;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Tests.Jobs;
using UnitsNet;

namespace Leverage.Workshop.Tests.Picking;

/// <summary>What is taken first, where the chances are alike: rules of common practice, each by a chest in which nothing else differs.</summary>
public sealed class RankingTests
{
    private static readonly string Sockets = Nuts.Socket("half", "1/2") + Nuts.Socket("three", "3/4");

    [Fact]
    public void Of_two_alike_the_one_of_fewer_pieces_is_taken() => Assert.Equal(
        "long + half",
        First(Nuts.Bar("stepped", "3/4", 600, 18) + Nuts.Adapter("down", "3/4", "1/2") + Nuts.Bar("long", "1/2", 600, 18) + Nuts.Socket("half", "1/2"), 60));

    [Fact]
    public void Of_two_alike_the_shorter_is_taken() => Assert.Equal(
        "short + half", First(Nuts.Bar("long", "1/2", 750, 18) + Nuts.Bar("short", "1/2", 600, 18) + Sockets, 60));

    [Fact]
    public void Of_two_alike_the_smaller_drive_is_taken_though_it_is_longer() => Assert.Equal(
        "half bar + half", First(Nuts.Bar("heavy", "3/4", 500, 22) + Nuts.Bar("half bar", "1/2", 600, 18) + Sockets, 60));

    [Fact]
    public void A_bar_is_taken_before_a_shorter_one_with_a_tube() => Assert.Equal(
        "whole + half", First(Nuts.Bar("stub", "1/2", 450, 18) + Nuts.Tube("pipe", 26.9, 2.6, 800) + Nuts.Bar("whole", "1/2", 750, 18) + Sockets, 150));

    [Fact]
    public void A_tube_is_taken_where_it_gains_more_than_five_points() => Assert.StartsWith(
        "pipe + ", First(Nuts.Bar("stub", "3/4", 500, 22) + Nuts.Tube("pipe", 33.7, 3.2, 1200) + Sockets, 400), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.22, 0.18, 0)]
    [InlineData(0.24, 0.20, 1)]
    [InlineData(0.15, 0.12, 1)]
    [InlineData(0.90, 0.86, 1)]
    [InlineData(0.90, 0.84, 0)]
    public void Nothing_that_comes_under_twenty_in_a_hundred_outranks_what_does(double threePieces, double onePiece, int first)
    {
        (double Chance, int Pieces)[] candidates = [(threePieces, 3), (onePiece, 1)];
        Assert.Equal(candidates[first], LadderRank.First(candidates, one => one.Chance, one => one.Pieces));
    }

    [Theory]
    [InlineData("lie-pull")]
    [InlineData("lie-push")]
    [InlineData("reach-one-hand")]
    public void Nobody_takes_a_tube_where_he_lies_or_hardly_reaches(string stance)
    {
        PickAssessment pick = Picker.Pick(Request(Nuts.Bar("bar", "3/4", 500, 22) + Nuts.Tube("pipe", 33.7, 3.2, 1200) + Sockets, 200, stance));
        Assert.NotEmpty(pick.SetUps);
        Assert.All(pick.SetUps, setUp => Assert.Null(setUp.Set.Tube));
        Assert.All(pick.Moves, step => Assert.Null(step.Tool?.Tube));
    }

    [Fact]
    public void What_there_is_no_room_to_swing_is_neither_picked_nor_named()
    {
        PickRequest request = Request(Nuts.Bar("short", "3/4", 500, 22) + Nuts.Bar("long", "3/4", 1000, 25) + Sockets, 400, "stand-push");
        Assert.Equal("long + three", Picker.Pick(request).SetUps[0].Set.Name);
        PickAssessment tight = Picker.Pick(request with { Nut = request.Nut with { Room = Length.FromMillimeters(650) } });
        Assert.Equal("short + three", Assert.Single(tight.SetUps).Set.Name);
        Assert.All(tight.Moves.Where(step => step.Setup is not null), step => Assert.InRange(step.Setup!.LeverLength!.Value.Millimeters, 1, 650));
    }

    [Fact]
    public void A_socket_one_size_near_is_taken_where_there_is_no_other_and_told()
    {
        string bar = Nuts.Bar("bar", "1/2", 600, 18);
        const string near = "[[sockets]]\nname = \"metric set\"\ndrive = \"1/2\"\nsize = [\"22mm\", \"24mm\"]\n";
        const string own = "[[sockets]]\nname = \"inch set\"\ndrive = \"1/2\"\nsize = [\"7/8in\", \"15/16in\"]\n";
        PickAssessment pick = Picker.Pick(Inch(bar + near));
        Assert.Equal("bar + metric set 24 mm, on 15/16 in", PickWords.Tools(pick.SetUps[0], UnitStyle.Metric));
        Assert.Equal(24, pick.SetUps[0].Request.ToolSize!.Value.Millimeters, 1e-9);
        Assert.Contains("A 24 mm tool on 15/16 in: 0.19 mm more play.", WatchWords.Of(pick.SetUps[0].Assessment, UnitStyle.Metric));
        Assert.Equal("bar + inch set 15/16 in", PickWords.Tools(Picker.Pick(Inch(bar + near + own)).SetUps[0], UnitStyle.Metric));
        Assert.Empty(Picker.Pick(Inch(bar + near.Replace("\"24mm\"", "\"23mm\"", StringComparison.Ordinal))).SetUps);
    }

    /// <summary>The stronger of two can stop in time; the weaker one cannot do more. So the stronger pulls, and is told where to stop.</summary>
    [Fact]
    public void The_stronger_person_pulls_and_is_told_where_to_stop()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read("""
            title = "An exhaust"
            people = ["weak", "strong"]
            [[fasteners]]
            name = "flange nut"
            thread = "M8"
            grade = "8.8"
            hex = "17mm"
            torque = "20Nm"
            condition = "heat-rusted"
            stances = ["one-hand"]
            [[tasks]]
            name = "Off"
            loosens = ["flange nut"]
            [[chest.people]]
            name = "weak"
            person = "woman"
            body = "50kg"
            [[chest.people]]
            name = "strong"
            person = "man"
            body = "95kg"
            [[chest.bars]]
            name = "ratchet"
            drive = "1/2"
            length = "250mm"
            [[chest.sockets]]
            name = "sockets"
            drive = "1/2"
            size = "17mm"
            """));
        PlannedLoosening planned = Assert.Single(plan.Loosening);
        Assert.Equal("strong", planned.Choice!.Person);
        Assert.Matches(@"Stop at \d+(\.\d)? N·m: past that the M8 8\.8 bolt or stud may twist off\.", FastenerPhrases.Note(planned, UnitStyle.Metric));
    }

    private static string First(string chest, double torqueNm) => Picker.Pick(Request(chest, torqueNm, "stand-push") with { Advise = false }).SetUps[0].Set.Name;

    private static PickRequest Request(string chest, double torqueNm, string stance)
    {
        PickRequest request = Nuts.Request(Nuts.Chest(chest), stance);
        return request with { Nut = request.Nut with { BookTorque = Torque.FromNewtonMeters(torqueNm), Condition = "clean" } };
    }

    private static PickRequest Inch(string chest) => Nuts.Request(Nuts.Chest(chest), "stand-push") with
    {
        Nut = new LooseningRequest { BookTorque = Torque.FromNewtonMeters(120), AcrossFlats = Length.FromInches(15 / 16.0) },
    };
}
