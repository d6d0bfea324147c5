using Leverage.Corners;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Tests.Corners;

/// <summary>A tool on a nut, from the tables to the torque its corners stand.</summary>
public sealed class CornerLimitTests
{
    private static readonly CornerGrip SoftRounded =
        new(18, 10.8, 0.4, CornerTool.OpenJaw, CornerWear.Named("rounded").Share, NutClass.Named("unknown").YieldMpa!.Value);

    [Fact]
    public void A_rounded_soft_m12_in_a_jaw_of_two_per_cent_play_gives_at_44_newton_metres_and_less_as_the_jaw_spreads()
    {
        // By hand: 2·0.097·(1 − 0.02/0.03923)·4.32·18²·330 = 43.9 N·m; over 1 + 89.6·0.02/(0.03923·128) it is 32.4.
        double rigid = CornerHold.Torque(CornerHold.RigidJaw(0.02, SoftRounded.Wear), 0.4 * 10.8, 18, SoftRounded.YieldMpa);
        double test = ToolStrength.Test("open", 18)!.Value.TorqueNm * 1000;
        double spread = CornerHold.SpreadingJaw(new JawGrip(0.4 * 10.8, 18, SoftRounded.YieldMpa, 0.02, SoftRounded.Wear, test));
        Assert.Equal(43.92e3, rigid, 10.0);
        Assert.Equal(32.37e3, spread, 10.0);
    }

    [Fact]
    public void The_limit_of_a_grip_is_the_formula_at_the_play_of_its_size()
    {
        // 18.05 to 18.30 on 17.73 to 18 mm: play 0.05/18 to 0.57/18, midway 0.31/18 = 0.017222.
        CornerLimit limit = SoftRounded.Limit()!;
        Assert.Equal(0.05 / 18, limit.Play.Low, 1e-12);
        Assert.Equal(0.57 / 18, limit.Play.High, 1e-12);
        Assert.Equal(17_276.74, limit.LowNmm, 0.01);
        Assert.Equal(50_269.72, limit.MedianNmm, 0.01);
        Assert.Equal(83_262.71, limit.HighNmm, 0.01);
        Assert.Equal(limit.MedianNmm, limit.TorqueNmm(0.5));
        Assert.True((SoftRounded with { JawTestNmm = 128_000 }).Limit()!.MedianNmm < limit.MedianNmm);
        Assert.Equal(3 * limit.MedianNmm, (SoftRounded with { Tool = CornerTool.SixPoints }).Limit()!.MedianNmm, 1e-6);
    }

    [Fact]
    public void A_class_8_m24_in_a_six_point_socket_does_not_round_before_the_socket_s_own_test_torque()
    {
        var nut = new CornerGrip(36, 21.5, 0.8, CornerTool.SixPoints, CornerWear.Named("new").Share, NutClass.Named("8").YieldMpa!.Value);
        CornerLimit limit = nut.Limit()!;
        double socket = ToolStrength.Test("socket", 36)!.Value.TorqueNm * 1000;
        // 0.349·17.2·36²·640 = 4 979 N·m, the bore shearing; P5 of it is 3 319.
        Assert.Equal(4979e3, limit.LowNmm, 1e3);
        Assert.True(limit.LowNmm / CornerLimit.ScatterFactor > 2 * socket);
    }

    [Fact]
    public void One_in_twenty_lies_a_factor_of_one_and_a_half_below() =>
        Assert.Equal(Math.Log(1.5) / 1.6448536269514722, CornerLimit.Sigma, 1e-12);

    [Fact]
    public void Without_a_height_nothing_is_judged() => Assert.Null((SoftRounded with { NutHeightMm = null }).Limit());

    [Theory]
    [InlineData(18, 19)]
    [InlineData(19, 19.05)]
    [InlineData(23.8125, 24)]
    [InlineData(24, 24.5)]
    public void A_wider_tool_adds_what_it_is_wider_and_holds_less(double nut, double tool)
    {
        var (right, over) = (ToolFit.Of(nut, nut)!.Value, ToolFit.Of(nut, tool)!.Value);
        Assert.Equal((tool - nut) / nut, over.Likely - right.Likely, 0.002);
        var grip = new CornerGrip(nut, 12, 1, CornerTool.OpenJaw, 0.05, 420);
        Assert.True((grip with { ToolAcrossFlatsMm = tool }).Limit()!.MedianNmm < grip.Limit()!.MedianNmm);
    }

    [Theory]
    [InlineData(24, 23.8125, 0, 0.0209375)]
    [InlineData(19.05, 19, 0.000174978, 0.029448819)]
    public void A_tool_a_hair_small_goes_on_the_smaller_nuts_only(double nut, double tool, double low, double high)
    {
        // By hand: 15/16 in on 24 mm is 23.8125 + 0.36 on 23.67 at the widest; 19 mm on 3/4 in is 19.32 on 18.759, 19.05333 on 19.05.
        PlayRange play = ToolFit.Of(nut, tool)!.Value;
        Assert.Equal(low, play.Low, 1e-9);
        Assert.Equal(high, play.High, 1e-9);
    }

    [Fact]
    public void A_tool_a_size_under_does_not_go_on()
    {
        Assert.Null(ToolFit.Of(19, 18));
        var refusal = Assert.Throws<InputException>(() => (SoftRounded with { ToolAcrossFlatsMm = 17 }).Limit());
        Assert.Equal("a tool of 17 mm does not go on a nut of 18 mm across flats.", refusal.Message);
    }

    [Fact]
    public void The_likely_play_is_midway() => Assert.Equal(0.03, new PlayRange(0.01, 0.05).Likely, 1e-15);

    [Fact]
    public void Play_runs_straight_between_the_sizes_and_in_proportion_beyond_them()
    {
        Assert.Equal(0.05 / 17, ToolFit.Of(17, 17)!.Value.Low, 1e-12);
        Assert.Equal(0.555 / 17, ToolFit.Of(17, 17)!.Value.High, 1e-12);
        Assert.Equal(0.04 / 10, ToolFit.Of(7, 7)!.Value.Low, 1e-12);
        Assert.Equal(0.41 / 10, ToolFit.Of(7, 7)!.Value.High, 1e-12);
        Assert.Equal(0.81 / 27, ToolFit.Of(55, 55)!.Value.High, 1e-12);
        Assert.All(TableCatalog.Tables["ring-fit"].Rows, row =>
        {
            double s = row.Number("across_flats_mm");
            Assert.Equal((row.Number("opening_max_mm") - row.Number("nut_min_mm")) / s, ToolFit.Of(s, s)!.Value.High, 1e-12);
            Assert.Equal(ToolFit.Of(s, s)!.Value.High, ToolFit.Of(s + 1e-9, s + 1e-9)!.Value.High, 1e-6);
        });
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_size_is_refused(double wrong)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolFit.Of(wrong, 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolFit.Of(18, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolFit.Play(19, wrong, 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolFit.Play(19, 18, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => (SoftRounded with { NutHeightMm = wrong }).Limit());
        Assert.Throws<ArgumentOutOfRangeException>(() => (SoftRounded with { EngagedShare = wrong }).Limit());
        Assert.Throws<ArgumentOutOfRangeException>(() => (SoftRounded with { YieldMpa = wrong }).Limit());
        Assert.Throws<ArgumentOutOfRangeException>(() => (SoftRounded with { JawTestNmm = wrong }).Limit());
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.Torque(0.1, wrong, 18, 330));
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.Torque(0.1, 5, wrong, 330));
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.Torque(0.1, 5, 18, wrong));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(0.1301)]
    public void Wear_past_its_ends_is_refused(double wear)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HexagonShape.SpinningPlay(wear));
        Assert.Throws<ArgumentOutOfRangeException>(() => HexagonShape.CornerRadius(wear));
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.SixPoints(0.01, wear));
    }

    [Fact]
    public void Play_below_nothing_more_than_the_whole_height_and_m_past_its_bound_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.RigidJaw(-0.001, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HexagonShape.FreeSwing(-0.001, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolFit.Play(17.9, 18, 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => (SoftRounded with { EngagedShare = 1.001 }).Limit());
        Assert.Throws<ArgumentOutOfRangeException>(() => CornerHold.Torque(0.3491, 5, 18, 330));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlayRange(0.01, 0.02).At(1.01));
        Assert.True((SoftRounded with { EngagedShare = 1 }).Limit()!.MedianNmm > 0);
    }

    [Fact]
    public void Names_are_found_in_the_tables_or_refused_with_the_nearest()
    {
        Assert.Equal((0.0, 0.05, 0.1), (CornerWear.Named("new").Share, CornerWear.Named("Worn").Share, CornerWear.Named("rounded").Share));
        Assert.Equal((420.0, 870.0, 330.0), (NutClass.Named("5").YieldMpa, NutClass.Named("10").YieldMpa, NutClass.Named(NutClass.Unknown).YieldMpa));
        Assert.Null(NutClass.Named("head").YieldMpa);
        Assert.Contains("Nearest: rounded", Assert.Throws<InputException>(() => CornerWear.Named("round")).Message, StringComparison.Ordinal);
        Assert.Throws<InputException>(() => NutClass.Named("9"));
    }
}
