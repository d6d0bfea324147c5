using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Corners;
using Leverage.Grades;
using Leverage.LoadPath;
using Leverage.Preload;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

public sealed class BySightTests
{
    /// <summary>By hand: medians 267.6, 162.6, 287.6, 237 and 340 N·m; of their logarithms mean 5.5279 and variance 0.0613; of the spreads the mean square 0.0539.</summary>
    [Fact]
    public void A_32_mm_hub_nut_gets_the_pooled_rows_of_the_hub()
    {
        StartTorque start = BySight.Start(Place.Named("hub"), 32, null)!;
        Assert.Equal(StartSource.Table, start.From);
        Assert.Equal(5, start.Rows.Count);
        Assert.All(start.Rows, row => Assert.Equal("hub", row.On));
        Assert.Equal(251.6, start.LikelyNmm / 1000, 0.3);
        Assert.Equal(0.3394, start.Sigma, 0.0005);
        Assert.Equal(start.LikelyNmm * Math.Exp(1.2815516 * start.Sigma), start.HighNmm, 1);
        Assert.Equal(start.LikelyNmm * Math.Exp(-1.2815516 * start.Sigma), start.LowNmm, 1);
        Assert.Null(start.Thread);
    }

    [Theory]
    [InlineData("structure", 41, 800)]
    [InlineData("structure", 36, 650)]
    [InlineData("trailer", 32, 510)]
    [InlineData("wheel", 17, 99.34)]
    public void One_figure_or_two_are_pooled_with_at_least_the_least_sigma(string on, double flatsMm, double likelyNm)
    {
        StartTorque start = BySight.Start(Place.Named(on), flatsMm, null)!;
        Assert.Equal(likelyNm, start.LikelyNmm / 1000, 0.001 * likelyNm);
        Assert.True(start.Sigma >= 0.15);
    }

    /// <summary>Set torques of 8.8 as the design gives them, within its three figures.</summary>
    [Theory]
    [InlineData("M8", 24.0)]
    [InlineData("M10", 47.3)]
    [InlineData("M12", 81.6)]
    [InlineData("M16", 200)]
    [InlineData("M20", 404)]
    [InlineData("M24", 694)]
    public void A_thread_gives_half_to_the_whole_of_its_set_torque(string name, double setNm)
    {
        StartTorque start = BySight.FromThread(ThreadCatalog.Named(name));
        Assert.Equal(setNm, start.HighNmm / 1000, 0.003 * setNm);
        Assert.Equal(setNm / 2, start.LowNmm / 1000, 0.003 * setNm);
        Assert.Equal(setNm / Math.Sqrt(2), start.LikelyNmm / 1000, 0.003 * setNm);
        Assert.Equal(StartSource.Thread, start.From);
        Assert.Equal(name, start.Thread!.Designation);
    }

    /// <summary>The rule of setting takes the smaller of 90 % of yield at 0.14 and all of it at 0.10: on every thread that is the second.</summary>
    [Fact]
    public void All_of_yield_at_low_friction_is_the_smaller_on_every_thread()
    {
        Assert.All(ThreadCatalog.Family(ThreadFamily.Metric), thread =>
        {
            double At(double share, double friction) => JointTorque.Tightening(
                AssemblyPreload.AtYieldShare(share, GradeCatalog.Bolt("8.8", thread).YieldMpa, thread.Section(friction, TensionAndTorsion.Plastic)),
                thread.Joint(HexagonCatalog.Bearing(thread).BearingMm), JointFriction.Same(friction));
            Assert.True(At(1, 0.10) < At(0.9, 0.14), thread.Designation);
            Assert.Equal(At(1, 0.10), BySight.FromThread(thread).HighNmm, 1e-6);
        });
    }

    [Theory]
    [InlineData(17, "M10")]
    [InlineData(16, "M10")]
    [InlineData(19, "M12")]
    [InlineData(18, "M12")]
    [InlineData(22, "M14")]
    [InlineData(32, "M22")]
    [InlineData(34, "M22")]
    [InlineData(36, "M24")]
    [InlineData(23.8125, "5/8-11")]
    [InlineData(28.575, "3/4-10")]
    public void A_hexagon_tells_the_thread_old_or_new(double flatsMm, string thread) =>
        Assert.Equal(thread, BySight.ThreadOf(flatsMm)!.Designation);

    [Theory]
    [InlineData(8, "M10")]
    [InlineData(10, "M12")]
    [InlineData(14, "M16")]
    [InlineData(17, "M20")]
    public void A_key_tells_the_cap_screw_and_no_hexagon_outside(double keyMm, string thread)
    {
        Assert.Equal(thread, BySight.ThreadOf(keyMm, recessed: true)!.Designation);
        Assert.Equal(thread, BySight.Start(Place.Named("engine"), keyMm, null, recessed: true)!.Thread!.Designation);
    }

    /// <summary>A plug is tightened for its seal: no plug of 30 mm stands at what an M20 bolt is set to.</summary>
    [Fact]
    public void A_plug_is_judged_by_other_plugs_whatever_turns_it()
    {
        StartTorque large = BySight.Start(Place.Named("drain-plug"), 30, null)!;
        Assert.All(large.Rows, row => Assert.True(row.Fits(30)));
        Assert.Empty(BySight.Start(Place.Named("hub"), 10, null, recessed: true)!.Rows);
        Assert.Equal(StartSource.Table, large.From);
        Assert.InRange(large.HighNmm / 1000, 40, 100);
        StartTorque recessed = BySight.Start(Place.Named("drain-plug"), 10, null, recessed: true)!;
        Assert.Equal(StartSource.Table, recessed.From);
        Assert.All(recessed.Rows, row => Assert.Equal("drain-plug", row.On));
        Assert.InRange(recessed.LikelyNmm / 1000, 25, 50);
    }

    /// <summary>Nobody measured the stud of an exhaust; it twists off all the same.</summary>
    [Fact]
    public void A_bolt_seen_by_its_hexagon_is_judged_too_and_marked_as_assumed()
    {
        LooseningAssessment exhaust = Loosening.Assess(new LooseningRequest
        {
            AcrossFlats = Length.FromMillimeters(13),
            On = "exhaust",
            Condition = "heat-rusted",
            Tool = ToolKind.Ring,
            Bar = Length.FromMillimeters(200),
        });
        LinkLimit stud = exhaust.Links.Single(link => link.Limit.Kind == LinkKind.Stud).Limit;
        Assert.False(stud.Confirmed);
        Assert.True(exhaust.Judgement.Shares.StudTwistsOff > 0.05);
        Assert.Equal(Verdict.Care, exhaust.Verdict);
        Assert.StartsWith("Loosen the 13 mm nut, about", LooseningTitle.Of(exhaust.Setup, UnitStyle.Metric), StringComparison.Ordinal);
        Assert.StartsWith("Stop at 4", WatchWords.Of(exhaust, UnitStyle.Metric)[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(23.8125, 24, true)]
    [InlineData(19.05, 19, true)]
    [InlineData(31.75, 32, true)]
    [InlineData(22.225, 22, false)]
    [InlineData(24, 23.8125, false)]
    [InlineData(20.6375, 21, false)]
    [InlineData(13, 13, true)]
    public void A_socket_one_size_near_goes_on(double nutMm, double toolMm, bool goes) => Assert.Equal(goes, ToolFit.IsNear(nutMm, toolMm));

    [Fact]
    public void The_size_of_the_other_measure_is_told()
    {
        Assert.Equal("24 mm", PartWords.OtherMeasure(Length.FromInches(15 / 16.0), UnitStyle.Metric));
        Assert.Equal("7/8 in", PartWords.OtherMeasure(Length.FromMillimeters(22), UnitStyle.Us));
        Assert.Null(PartWords.OtherMeasure(Length.FromMillimeters(24), UnitStyle.Metric));
        Assert.Null(PartWords.OtherMeasure(Length.FromInches(13 / 16.0), UnitStyle.Metric));
    }

    [Fact]
    public void A_place_without_a_row_of_the_size_falls_back_on_the_thread()
    {
        StartTorque start = BySight.Start(Place.Named("suspension"), 18, null)!;
        Assert.Equal(StartSource.Thread, start.From);
        Assert.Equal("M12", start.Thread!.Designation);
        Assert.Empty(start.Rows);
    }

    [Fact]
    public void A_thread_named_is_looked_up_by_itself_not_by_its_hexagon()
    {
        StartTorque m12 = BySight.Start(Place.Named("wheel"), 19, ThreadCatalog.Named("M12x1.5"))!;
        Assert.All(m12.Rows, row => Assert.StartsWith("M12", row.Threads, StringComparison.Ordinal));
        Assert.Equal(3, m12.Rows.Count);
        StartTorque hub = BySight.Start(Place.Named("hub"), null, ThreadCatalog.Named("M22x1.5"))!;
        Assert.Equal(StartSource.Table, hub.From);
        Assert.Single(BySight.Start(Place.Named("hub"), null, ThreadCatalog.Named("M18x1.5"))!.Rows);
        Assert.Equal("9/16", BySight.Start(Place.Named("wheel"), null, ThreadCatalog.Named("9/16-18"))!.Rows.Single().Threads);
    }

    [Fact]
    public void With_nothing_to_go_on_there_is_none_and_the_nearest_rows_are_told()
    {
        Assert.Null(BySight.Start(Place.Named("hub"), null, null));
        Assert.Null(BySight.Start(null, 500, null));
        Assert.Equal(["M24", "M22", "M27"], BySight.Nearest(Place.Named("structure"), 40, 3).Select(row => row.Threads));
        Assert.Equal(3, BySight.Nearest(null, null).Count);
    }

    [Fact]
    public void A_torque_given_has_no_scatter()
    {
        StartTorque given = StartTorque.Given(460e3);
        Assert.Equal((460e3, 460e3, 0, StartSource.Given), (given.LowNmm, given.HighNmm, given.Sigma, given.From));
        Assert.Throws<ArgumentOutOfRangeException>(() => StartTorque.Given(0));
        Assert.Throws<ArgumentException>(() => StartTorque.Pooled([]));
    }
}
