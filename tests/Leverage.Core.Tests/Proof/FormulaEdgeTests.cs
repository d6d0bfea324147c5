using Leverage.Grades;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Stiffness;
using Leverage.Threads;
using Leverage.Tubes;

namespace Leverage.Tests.Proof;

/// <summary>How far each formula may be asked: just inside is answered, just outside refused.</summary>
public sealed class FormulaEdgeTests
{
    private static readonly TensionAndTorsion Section = new(10, 10.8, 0.04, 0.16, 1.5);

    /// <summary>Formulas of one figure, with the last one they take.</summary>
    public static TheoryData<string, Func<double, double>, double> Most => new()
    {
        { "friction of a tyre", x => TyreGrip.Torque(x, 3200, 310), 2 },
        { "friction of a thread", x => ThreadFriction.Angle(x, Math.PI / 6), 2 },
        { "friction of a face", x => JointTorque.FacePart(10_000, x, 15), 2 },
        { "friction of a tube", x => SlipLimit.CloseFitTangent(x, 600, 120), 2 },
        { "share of yield", x => AssemblyPreload.AtYieldShare(x, 640, Section), 1.5 },
        { "torsion factor", x => AssemblyPreload.AtYieldShare(0.9, 640, Section with { TorsionFactor = x }), 2 },
        { "torque left once moving", x => Release.PushSpeed(500, x, 85), 1 },
        { "torque left of a snap", x => Release.Freed(20, x), 1 },
        { "share of an axle", x => FootBrake.WheelTorque(1200, 300, x), 1 },
        { "friction of a chock", x => WheelChock.SlippingTorque(x, 3200, 310, 100), 2 },
        { "torque left as it breaks loose", x => SlipLimit.SafeAngle(1.2, 0.05, x), 1 },
        { "power of body mass", x => HandForce.Scaled(500, 80, 84.6, x), 1 },
        { "wheels braked", x => ParkingBrake.WheelTorque(1200, 300, x), 8 },
        { "scatter of a clamp", ClampScatter.LargestOverSmallest, 0.99 },
        { "grip over diameter", x => ClampedParts.Stiffness(1, x, 207_000, 0.78715, 0.62873), 100 },
        { "diameter over grip", x => ClampedParts.FrustaStiffness(x, 1, 207_000), 10 },
        { "exponent of what is clamped", x => ClampedParts.Stiffness(10, 30, 207_000, 0.78715, x), 2 },
    };

    [Theory]
    [MemberData(nameof(Most))]
    public void A_figure_past_the_last_is_refused_and_the_last_is_taken(string what, Func<double, double> formula, double most)
    {
        ArgumentNullException.ThrowIfNull(formula);
        Assert.True(double.IsFinite(formula(most)), what);
        Assert.Throws<ArgumentOutOfRangeException>(() => formula(most * 1.001));
    }

    [Theory]
    [InlineData(3, 0.5, 2.8705619, 2.5786128, 2.7757290, 2.5936704)]
    [InlineData(10, 1.5, 9.7352052, 8.8609678, 9.2016162, 8.6816887)]
    [InlineData(24, 3, 23.5794036, 21.8115264, 22.3047725, 21.2486687)]
    public void Tolerances_follow_the_equations_of_iso_965_by_hand(double d, double p, double major, double pitchOut, double pitchIn, double minor)
    {
        Assert.Equal(major, ThreadTolerance.LeastMajorExternal(d, p), 1e-7);
        Assert.Equal(pitchOut, ThreadTolerance.LeastPitchExternal(d, p), 1e-7);
        Assert.Equal(pitchIn, ThreadTolerance.MostPitchInternal(d, p), 1e-7);
        Assert.Equal(minor, ThreadTolerance.MostMinorInternal(d, p), 1e-7);
    }

    /// <summary>0.2659·5.5^2.3405; 36.015 is 36 as tabled and 36.025 is not.</summary>
    [Fact]
    public void The_law_of_series_A_begins_and_ends_at_its_sizes_and_gives_way_to_the_table()
    {
        Near.Equal(14.3728, ToolStrength.Test("socket", 5.5)!.Value.TorqueNm, 1e-4);
        Assert.NotNull(ToolStrength.Test("ring", 60));
        Assert.Equal(LimitSource.TestTorque, ToolStrength.Test("socket", 36.015)!.Value.Source);
        Assert.Equal(LimitSource.SeriesLaw, ToolStrength.Test("socket", 36.025)!.Value.Source);
    }

    [Fact]
    public void Hands_just_beyond_the_tip_bend_the_tube()
    {
        var links = new List<LinkLimit>();
        LinkList.AddTube(new TubeLimits(1e6, 1e4, 7e3, LimitSource.PlasticTube, false), new LeverGeometry(600, 0.5, 250), links);
        Assert.Equal(3, links.Count);
    }

    [Fact]
    public void A_lever_is_at_least_as_long_as_what_is_beyond_the_mouth() => Assert.Throws<ArgumentOutOfRangeException>(
        () => LeverDeflection.AtHand(200, new LeverBeam(700, 600, 120, 1e9, 1e9)));

    [Fact]
    public void Half_a_millimetre_of_tube_bends_too() =>
        Near.Equal(200.0 / 3 * (0.125 / 1e-3 + (1000 - 0.125) / 1e9), LeverDeflection.AtHand(200, new LeverBeam(10, 0.5, 0, 1e-3, 1e9)), 1e-9);

    [Fact]
    public void A_nut_in_no_table_is_eight_tenths_of_its_diameter_high() =>
        Near.Equal(38.4, HexagonCatalog.NutHeightMm(ThreadCatalog.Named("M48")), 1e-12);

    [Fact]
    public void A_grade_without_a_proof_stress_takes_nine_tenths_of_its_yield()
    {
        Grade stainless = GradeCatalog.Bolt("A2-70", ThreadCatalog.Named("M12"));
        Assert.Equal((0.0, 405.0), (stainless.ProofMpa, stainless.UsableProofMpa));
    }

    [Fact]
    public void A_family_lists_its_own_threads()
    {
        Assert.All(ThreadCatalog.Family(ThreadFamily.Metric), thread => Assert.StartsWith("M", thread.Designation, StringComparison.Ordinal));
        Assert.DoesNotContain(ThreadCatalog.Family(ThreadFamily.Unified), thread => thread.Designation.StartsWith('M'));
    }

    [Theory]
    [InlineData("m99", "'m99' is not a thread known here")]
    [InlineData("\"", "'\"' is not a thread known here")]
    [InlineData("y", "'y' is not a thread known here")]
    public void A_thread_that_is_none_is_named_as_it_was_typed(string text, string says) =>
        Assert.StartsWith(says, Assert.Throws<InputException>(() => ThreadCatalog.Named(text)).Line, StringComparison.Ordinal);
}
