using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Workshop.Tests.Jobs;

public static class RefitTests
{
    [Theory]
    [InlineData("torque = \"50Nm\"", "small wrench", 50)]
    [InlineData("torque = \"60.5Nm\"", "big wrench", 60.5)]
    [InlineData("torque = \"60Nm\"\nadapter = \"60mm\"", "small wrench", 50)] // 60·300/(300 + 60)
    public static void The_smallest_wrench_in_range_is_taken_and_an_adapter_lowers_its_setting(string keys, string wrench, double setting)
    {
        WrenchChoice choice = Planned(keys).Wrench!;

        Assert.Equal(wrench, choice.Wrench.Name);
        Assert.Equal(setting, choice.Setting.NewtonMeters, 9);
    }

    [Fact]
    public static void Out_of_every_wrenchs_range_there_is_none() => Assert.Null(Planned("torque = \"211Nm\"").Wrench);

    [Fact]
    public static void The_scatter_is_the_wrenchs_accuracy_of_the_torque_at_the_nut() =>
        Assert.Equal(2.4, Planned("torque = \"60Nm\"\nadapter = \"60mm\"").Wrench!.Scatter.NewtonMeters, 9);

    [Fact]
    public static void A_weight_hangs_at_torque_over_mass_times_gravity_where_no_wrench_goes_so_high() =>
        Assert.Equal(250 / (25 * 9.80665), Planned("torque = \"250Nm\"", "hung_mass = \"25kg\"\n").Hang!.Distance.Meters, 9);

    [Theory]
    [InlineData("torque = \"100Nm\"")]
    [InlineData("torque = \"250Nm\"\nroom = \"900mm\"")]
    [InlineData("torque = \"250Nm\"\nstances = \"lie-pull\"")]
    public static void No_weight_hangs_where_a_wrench_fits_or_there_is_no_room(string keys) =>
        Assert.Null(Planned(keys, "hung_mass = \"25kg\"\n").Hang);

    [Fact]
    public static void Without_a_book_the_torque_is_the_one_that_tighten_sets_for_the_lubricant()
    {
        // M12 8.8 just yields at friction 0.08 with 69.59 N·m (90 % at 0.113: 80.15), d2 10.863 mm, Db (16.63 + 13.5)/2 mm.
        PlannedTightening planned = Planned("thread = \"M12\"\ngrade = \"8.8\"\nlubrication = \"oiled\"");

        Assert.Equal(TorqueBasis.WorkedOut, planned.Basis);
        Assert.Equal(69.59, planned.Torque.NewtonMeters, 0.05);
    }

    [Theory]
    [InlineData("torque = \"110Nm\"\ncount = 5", "55 80 110")] // 82.5 is no mark of a wrench: fives above fifty
    [InlineData("torque = \"58Nm\"\ncount = 5", "29 44 58")] // 43.5
    [InlineData("torque = \"75Nm\"\ncount = 4", "55 75")] // half of it, 37.5, is below the big wrench's 40
    [InlineData("torque = \"110Nm\"\ncount = 5\npattern = \"none\"", "110")]
    [InlineData("torque = \"19Nm\"\ncount = 5", "19")] // small screws go up in one round
    public static void A_group_goes_up_in_stages_its_wrench_can_be_set_to(string keys, string stages) =>
        Assert.Equal(stages.Split(' ').Select(double.Parse), Planned(keys).Stages.Select(stage => Math.Round(stage.NewtonMeters, 9)));

    [Fact]
    public static void A_turn_after_the_torque_is_written_on_the_sheet_and_is_no_misreading()
    {
        const string Bolt = "thread = \"M14x1.5\"\ngrade = \"10.9\"\ntorque = \"100Nm + 90deg\"\ngrip = \"45mm\"\nclamped = \"iron\"";
        PlannedTightening planned = Planned(Bolt);

        Assert.Equal((100, 90), (planned.Torque.NewtonMeters, planned.Fastener.Then!.Value.Degrees));
        Assert.Equal((90, 45, "iron"), (planned.Check!.Setup.Request.Then!.Value.Degrees, planned.Check.Setup.Request.Grip!.Value.Millimeters, planned.Check.Setup.Clamped!.Name));
        Assert.Equal(["100 N·m", "then turn 90° more"], RefitPhrases.Torque(new RefitFit(planned, RefitStage.Full, true), UnitStyle.Metric));
        Assert.Contains(
            RefitPhrases.Torque(new RefitFit(Planned(Bolt.Replace("100Nm", "400Nm", StringComparison.Ordinal)), RefitStage.Full, true), UnitStyle.Metric),
            line => line == "breaks the bolt");
    }

    [Fact]
    public static void A_single_one_has_no_order() => Assert.Empty(Planned("torque = \"110Nm\"").Sequence);

    /// <summary>M12 8.8 at friction 0.14 by hand: 90 % of yield at 93 N·m, all of it at 103.4, twists off at 129.2.</summary>
    [Theory]
    [InlineData("130Nm", TorqueVerdict.Breaks, "breaks the bolt")]
    [InlineData("125Nm", TorqueVerdict.Yields, "yields the bolt")]
    [InlineData("93Nm", TorqueVerdict.High, "high for the bolt: 90 % of yield")]
    [InlineData("75Nm", TorqueVerdict.Fits, null)]
    public static void A_book_torque_that_is_not_believable_is_told(string torque, TorqueVerdict quote, string? doubt)
    {
        PlannedTightening planned = Planned($"thread = \"M12\"\ngrade = \"8.8\"\ntorque = \"{torque}\"");
        Assert.Equal(quote, planned.Check?.Quote);
        Assert.Equal(doubt, RefitPhrases.Torque(new RefitFit(planned, RefitStage.Full, true), UnitStyle.Metric).FirstOrDefault(line => line.EndsWith("the bolt", StringComparison.Ordinal) || line.EndsWith("yield", StringComparison.Ordinal)));
    }

    private static PlannedTightening Planned(string keys, string head = "") => Assert.Single(
        JobPlanner.Plan(JobText.Read($"title = \"x\"\n{head}[[fasteners]]\nname = \"f\"\n{keys}\n{JobText.Chest}")).Refit);
}
