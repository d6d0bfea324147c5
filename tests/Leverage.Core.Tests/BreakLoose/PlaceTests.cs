using Leverage.BreakLoose;
using Leverage.Corners;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.Tests.BreakLoose;

/// <summary>Where a fastener sits, by name, and what turns and stands near there.</summary>
public sealed class PlaceTests
{
    private static readonly string[] Harmed = ["seal", "bearing", "tyre", "oil", "oil-behind", "fuel", "brake-hose", "rubber"];

    public static TheoryData<string> Places => [.. TableCatalog.Tables["places"].Rows.Select(row => row.Key)];

    [Theory]
    [InlineData("caliper", "brake", "slide bolt of a brake caliper; bolt that holds a brake carrier")]
    [InlineData("splined", "hub", "rear axle nut on taper and key or splined hub, old passenger car; passenger car axle nut that sets the hub bearing")]
    [InlineData("arm", "suspension", "bolt or nut of an arm, strut or ball joint")]
    [InlineData("ball joint", "suspension", "bolt or nut of an arm, strut or ball joint")]
    public void A_part_is_told_the_place_it_is_of_with_its_nearest_rows(string part, string place, string rows)
    {
        var refused = Assert.Throws<InputException>(() => LooseningFields.On.Read(new LooseningRequest(), part));
        Assert.Contains($"It is of {place}: {rows}. ", refused.Line, StringComparison.Ordinal);
        Assert.EndsWith($"Write: on {place}", refused.Line, StringComparison.Ordinal);
        Assert.Contains("All of them: table places", Assert.Throws<InputException>(() => LooseningFields.On.Read(new LooseningRequest(), "zzz")).Line, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Every_place_reads_and_names_only_what_moves_can_harm(string key)
    {
        Place place = Place.Named(key);
        Assert.Contains(place, Place.All.Select(one => one with { Near = place.Near }));
        Assert.All(place.Near, near => Assert.Contains(near, Harmed));
    }

    [Fact]
    public void Every_row_of_the_torques_sits_at_a_place_or_is_listed_only()
    {
        string[] known = [.. Place.All.Select(place => place.Key), "first-stage", "adjusting"];
        Assert.All(LargeNut.All, row => Assert.Contains(row.On, known));
        Assert.All(LargeNut.All, row => Assert.True(row.TorqueNmm.Median > 0 && row.FlatsMm.Count > 0));
    }

    [Theory]
    [InlineData("wheel", TurnsWith.Wheel)]
    [InlineData("hub", TurnsWith.Wheel)]
    [InlineData("crank", TurnsWith.Crank)]
    [InlineData("brake", TurnsWith.Nothing)]
    public void What_turns_with_it_follows_from_the_place(string on, TurnsWith turns) => Assert.Equal(turns, Place.Named(on).Turns);

    /// <summary>A span holds both its ends, whatever the pitch; a thread named with its pitch only itself, or what is of its size and named without one.</summary>
    [Theory]
    [InlineData("M20 to M24", "M20", true)]
    [InlineData("M20 to M24", "M24x1.5", true)]
    [InlineData("M20 to M24", "M18", false)]
    [InlineData("M20 to M24", "M27", false)]
    [InlineData("M24x1.5", "M24x1.5", true)]
    [InlineData("M24x1.5", "M24", false)]
    [InlineData("M24", "M24x1.5", true)]
    [InlineData("M22 or M24", "M24x2", true)]
    [InlineData("M22 or M24", "M20", false)]
    [InlineData("", "M24", false)]
    public void A_row_fits_the_threads_it_names(string threads, string thread, bool fits) =>
        Assert.Equal(fits, (LargeNut.All[0] with { Threads = threads }).Fits(ThreadCatalog.Named(thread)));

    /// <summary>A road wheel's studs are the stronger grade, of the measure of their thread (common practice); anything else is the usual one.</summary>
    [Theory]
    [InlineData("wheel", "M12x1.5", "10.9")]
    [InlineData("wheel", "1/2-20", "SAE 8")]
    [InlineData("hub", "M12x1.5", "8.8")]
    [InlineData(null, "1/2-20", "SAE 5")]
    public void A_wheel_s_studs_are_taken_for_the_stronger_grade(string? on, string thread, string grade) =>
        Assert.Equal(grade, Place.UsualGrade(on is null ? null : Place.Named(on), ThreadCatalog.Named(thread)));
}
