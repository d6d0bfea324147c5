using Leverage.Assessments;
using Leverage.BreakLoose;

namespace Leverage.Tests.Assessments;

public sealed class MoveTests
{
    [Fact]
    public void Every_move_reads_in_order_and_harms_only_what_places_name()
    {
        var near = Place.All.SelectMany(place => place.Near).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(Move.All.Count, Move.All.Select(move => move.Order).Distinct().Count());
        Assert.All(Move.All, move => Assert.All(move.Harms, harm => Assert.Contains(harm, near)));
        Assert.All(Move.All, move => Assert.True(move.EffortMin >= 0 && move.WaitMin >= 0, move.Key));
        Assert.All(Move.All, move => Assert.DoesNotContain(move.Words.Split(' '), word => word is "undo" or "undone" or "crack" or "sleeve"));
    }

    /// <summary>The order common practice gives: gentle before rough, and cutting last.</summary>
    [Fact]
    public void An_ordinary_nut_gets_the_ladder_of_the_trade_and_nothing_special()
    {
        string[] wanted = ["seat-socket", "soak", "rock", "tap", "hands-out", "longer-lever", "bigger-drive", "second-person", "heat-nut", "split-nut"];
        var moves = Move.For(null, []);
        Assert.Equal(wanted, moves.Select(move => move.Key).Where(wanted.Contains));
        Assert.All(moves, move => Assert.Null(move.Joint));
        Assert.Equal(MoveEffect.Cut, moves[^1].Effect);
    }

    [Theory]
    [InlineData("staked", "lift-stake")]
    [InlineData("locked", "soften-locker")]
    [InlineData("stainless", "paste-slow")]
    [InlineData("castle", "pull-pin")]
    [InlineData("left-hand", "turn-clockwise")]
    [InlineData("ball-joint", "load-taper")]
    [InlineData("through-bolt", "hold-bolt")]
    public void A_special_joint_has_its_own_move_first(string joint, string first) =>
        Assert.Equal(first, Move.For(null, [joint])[0].Key);

    [Fact]
    public void Rounded_corners_bring_their_own_moves_before_cutting()
    {
        string[] keys = [.. Move.For(null, ["rounded"]).Select(move => move.Key)];
        Assert.Equal(["one-size-under", "grip-pliers", "weld-nut", "split-nut"], keys.Skip(Array.IndexOf(keys, "heat-nut") + 1).Take(4));
    }

    [Theory]
    [InlineData("hub", "heat-nut")]
    [InlineData("hub", "tap")]
    [InlineData("drain-plug", "heat-nut")]
    [InlineData("engine", "cut-off")]
    [InlineData("brake", "weld-nut")]
    public void What_stands_near_rules_a_move_out(string on, string key)
    {
        Assert.DoesNotContain(Move.For(Place.Named(on), ["rounded"]), move => move.Key == key);
        Assert.NotEmpty(Move.All.Single(move => move.Key == key).Harmed(Place.Named(on)));
        Assert.Contains(Move.For(Place.Named("structure"), ["rounded"]), move => move.Key == key);
    }

    [Fact]
    public void The_last_resort_is_there_wherever_it_sits() =>
        Assert.All(Place.All, place => Assert.Equal(
            place.Key == "drain-plug" ? ["drill-plug"] : ["split-nut", "drill-plug"],
            Move.For(place, []).Select(move => move.Key).Where(key => key is "split-nut" or "drill-plug")));

    /// <summary>Soak is the one judged figure for the nut; the three quarters of a powered tool are published.</summary>
    [Fact]
    public void Only_two_moves_have_a_figure_of_their_own()
    {
        var sized = Move.All.Where(move => move.Size is not null).ToDictionary(move => move.Key, move => move.Size!.Value, StringComparer.Ordinal);
        Assert.Equal(2, sized.Count);
        Assert.Equal(Growth.SoakedShare, sized["soak"]);
        Assert.Equal(0.75, sized["powered-wrench"]);
        Assert.All(Move.All.Where(move => move.HasNoFigure), move => Assert.Null(move.Size));
        Assert.True(Move.All.Single(move => move.Key == "heat-nut").HasNoFigure);
    }
}
