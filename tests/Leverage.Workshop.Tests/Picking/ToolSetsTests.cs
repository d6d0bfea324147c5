using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Tests.Picking;

public sealed class ToolSetsTests
{
    private static readonly Length Hexagon = Length.FromMillimeters(36);

    [Fact]
    public void Every_bar_that_reaches_a_socket_makes_a_set_and_every_tube_that_goes_over_it_another()
    {
        ToolChest chest = Nuts.Chest(
            Nuts.Bar("thin", "1/2", 600, 16) + Nuts.Bar("thick", "3/4", 700, 25) + Nuts.Bar("small", "3/8", 300, 11)
            + Nuts.Socket("half", "1/2") + Nuts.Socket("three", "3/4") + Nuts.Adapter("down", "3/4", "1/2")
            + Nuts.Tube("narrow", 26.9, 2.6, 1000) + Nuts.Tube("wide", 33.7, 3.2, 1000));
        Assert.Equal(
            "half thin | half thin narrow | half thin wide | half down thick | half down thick wide | three thick | three thick wide",
            Sets(Nuts.Request(chest)));
    }

    [Fact]
    public void A_spanner_is_its_own_lever_and_takes_no_tube()
    {
        ToolChest chest = Nuts.Chest(
            "[[spanners]]\nname = \"ring\"\nkind = \"ring\"\nsize = [\"32mm\", \"36mm\"]\nlength = \"400mm\"\n" + Nuts.Tube("wide", 60, 3, 1000));
        Assert.Equal("ring", Sets(Nuts.Request(chest)));
        Assert.Equal("", Sets(With(Nuts.Request(chest), ToolKind.Socket)));
        Assert.Equal("", Sets(Nuts.Request(chest), Length.FromMillimeters(35.6)));
        Assert.Equal("ring", Sets(Nuts.Request(chest), Length.FromMillimeters(35.8)));
        Assert.Equal("ring", Sets(Nuts.Request(chest), Length.FromMillimeters(36.05)));
    }

    [Fact]
    public void Points_of_a_ring_go_with_it_and_where_it_says_none_those_of_the_nut_s_request()
    {
        string Ring(string name, string points) =>
            $"[[spanners]]\nname = \"{name}\"\nkind = \"ring\"\nsize = \"36mm\"\nlength = \"400mm\"\n{points}";
        ToolChest chest = Nuts.Chest(Ring("twelve", "points = 12\n") + Ring("six", "points = \"6\"\n") + Ring("any", ""));
        var nut = new LooseningRequest { Points = 12 };
        Assert.Equal([12, 6, 12], chest.NutTools.Select(tool => new ToolSet(tool, [], null, null).Into(nut).Points!.Value));
    }

    private static PickRequest With(PickRequest request, ToolKind tool) => request with { Nut = request.Nut with { Tool = tool } };

    [Fact]
    public void Keys_are_for_hexagon_sockets_only()
    {
        ToolChest chest = Nuts.Chest(
            Nuts.Bar("bar", "1/2", 600, 16) + "[[keys]]\nname = \"driven\"\nsize = \"17mm\"\ndrive = \"1/2\"\n"
            + "[[keys]]\nname = \"bent\"\nsize = \"17mm\"\nlength = \"200mm\"\n");
        var size = Length.FromMillimeters(17);
        Assert.Equal("", Sets(Nuts.Request(chest), size));
        Assert.Equal("driven bar | bent", Sets(With(Nuts.Request(chest), ToolKind.Key), size));
    }

    [Fact]
    public void The_shortest_chain_of_adapters_is_taken_and_of_equal_ones_the_stoutest()
    {
        ToolChest chest = Nuts.Chest(
            Nuts.Bar("bar", "1/2", 600, 16) + Nuts.Socket("three", "3/4")
            + Nuts.Adapter("thin step", "1/2", "3/8") + Nuts.Adapter("back", "3/8", "3/4") + Nuts.Adapter("straight up", "1/2", "3/4"));
        Assert.Equal("three straight up bar", Sets(Nuts.Request(chest)));
        ToolChest stout = Nuts.Chest(
            Nuts.Bar("bar", "3/4", 600, 22) + Nuts.Socket("half", "1/2") + Nuts.Adapter("a", "3/4", "3/8") + Nuts.Adapter("b", "3/8", "1/2")
            + Nuts.Adapter("c", "3/4", "1") + Nuts.Adapter("d", "1", "1/2"));
        Assert.Equal("half c d bar", Sets(Nuts.Request(stout)));
    }

    [Fact]
    public void A_recess_asks_for_extensions_long_enough()
    {
        ToolChest chest = Nuts.Chest(
            Nuts.Bar("bar", "3/4", 600, 22) + Nuts.Socket("three", "3/4") + Nuts.Extension("short", "3/4", 100) + Nuts.Extension("long", "3/4", 200));
        Assert.Equal("three bar", Sets(Nuts.Request(chest)));
        Assert.Equal("three long bar", Sets(Nuts.Request(chest) with { Recess = Length.FromMillimeters(150) }));
        Assert.Equal("three short long bar", Sets(Nuts.Request(chest) with { Recess = Length.FromMillimeters(250) }));
        Assert.Equal("", Sets(Nuts.Request(chest) with { Recess = Length.FromMillimeters(350) }));
    }

    [Fact]
    public void Ten_overlaps_are_tried_where_they_leave_room_for_hands_and_are_no_shorter_than_the_bar_is_thick()
    {
        ToolChest chest = Nuts.Chest(Nuts.Bar("bar", "3/4", 800, 22) + Nuts.Socket("three", "3/4") + Nuts.Tube("tube", 33.7, 3.2, 1000));
        LooseningSetup setup = ToolSets.Of(Nuts.Request(chest), Hexagon).Last().Setup;
        Assert.Equal("60 120 180 240 300 360 420 480 540 600", Overlaps(setup, "stand-push"));
        ToolChest shorter = Nuts.Chest(Nuts.Bar("bar", "3/4", 800, 22) + Nuts.Socket("three", "3/4") + Nuts.Tube("tube", 33.7, 3.2, 250));
        setup = ToolSets.Of(Nuts.Request(shorter), Hexagon).Last().Setup;
        Assert.Equal("30 45 60 75 90 105 120 135 150", Overlaps(setup, "stand-push"));
        Assert.Equal("35 55 75 95 115 135 155 175 195", Overlaps(setup, "one-hand"));
    }

    [Fact]
    public void A_lever_shorter_than_the_hands_on_it_is_tried_only_in_the_stance_that_was_asked_for()
    {
        ToolChest chest = Nuts.Chest(Nuts.Bar("stub", "3/4", 150, 22) + Nuts.Socket("three", "3/4"));
        Assert.Equal(1, Picker.Pick(Nuts.Request(chest, "stand-push") with { Advise = false }).Tally.Setups);
        // Of the nine stances the two of one hand.
        Assert.Equal(2, Picker.Pick(Nuts.Request(chest) with { Advise = false }).Tally.Setups);
    }

    [Fact]
    public void Twenty_bars_in_nine_stances_and_ten_tubes_at_ten_overlaps_in_six_are_all_tried()
    {
        string bars = string.Concat(Enumerable.Range(0, 20).Select(i => Nuts.Bar(FormattableString.Invariant($"bar {i}"), "3/4", 500 + 25 * i, 20)));
        string tubes = string.Concat(Enumerable.Range(0, 10).Select(i => Nuts.Tube(FormattableString.Invariant($"tube {i}"), 33 + i, 3.2, 900)));
        PickRequest request = Nuts.Request(Nuts.Chest(Nuts.Socket("s", "3/4") + bars + tubes)) with { Advise = false };
        PickTally tally = Picker.Pick(request with { Nut = request.Nut with { Room = Length.FromMeters(3) } }).Tally;
        Assert.Equal((220, 20 * 10 * 10 * 6 + 20 * 9), (tally.Sets, tally.Setups));
    }

    [Fact]
    public void Nobody_slips_a_tube_over_a_ratchet_or_swings_a_long_bar_lying_where_no_room_is_told()
    {
        ToolChest chest = Nuts.Chest(Nuts.Bar("ratchet", "3/4", 290, 20) + Nuts.Bar("metre", "3/4", 1000, 20) + Nuts.Socket("s", "3/4") + Nuts.Tube("pipe", 33.7, 3.2, 900));

        Assert.Equal("s ratchet | s metre | s metre pipe", Sets(Nuts.Request(chest)));
        Assert.Equal((3, 1), (Picker.Pick(Nuts.Request(chest, "lie-push") with { Advise = false }).Tally.Sets, Picker.Pick(Nuts.Request(chest, "lie-push") with { Advise = false }).Tally.Setups));
    }

    private static string Sets(PickRequest request, Length? acrossFlats = null) =>
        string.Join(" | ", ToolSets.Of(request, acrossFlats ?? Hexagon).Select(set => Words(set.Set)));

    private static string Words(ToolSet set) => string.Join(
        ' ',
        (string?[])[set.Tool.Name, .. set.Adapters.Select(adapter => adapter.Name), set.Bar?.Name, set.Tube?.Name]).Trim();

    private static string Overlaps(LooseningSetup setup, string stance) =>
        string.Join(' ', Fit.OverlapsMm(setup, Stance.Named(stance)).Select(overlap => overlap.ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
