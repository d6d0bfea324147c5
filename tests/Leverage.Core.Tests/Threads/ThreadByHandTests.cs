using Leverage.Grades;
using Leverage.Levers;
using Leverage.Preload;
using Leverage.Threads;
using Leverage.Tubes;

namespace Leverage.Tests.Threads;

/// <summary>What the catalogues choose and what follows from it, by hand or as the standard prints it.</summary>
public sealed class ThreadByHandTests
{
    [Theory]
    [InlineData("M12", 84.266368)]
    [InlineData("1/2-20", 103.195108)]
    public void Each_family_has_the_stress_area_of_its_own_standard(string name, double areaMm2)
    {
        ScrewThread thread = ThreadCatalog.Named(name);
        Near.Equal(areaMm2, thread.StressAreaMm2, 1e-7);
        Near.Equal(Math.Sqrt(areaMm2 * 4 / Math.PI), thread.Section(0.14, 1.5).StressDiameterMm, 1e-7);
    }

    [Theory]
    [InlineData("M6", 5.794)]
    [InlineData("M10", 9.732)]
    [InlineData("M24", 23.577)]
    public void The_least_major_diameter_of_6g_is_the_one_iso_965_prints_within_its_rounding(string name, double leastMm)
    {
        ScrewThread thread = ThreadCatalog.Named(name);
        Assert.Equal(leastMm, ThreadTolerance.LeastMajorExternal(thread.DiameterMm, thread.PitchMm), 0.005);
    }

    [Theory]
    [InlineData("M12", true)]
    [InlineData("M48", false)]
    public void A_bearing_face_says_whether_the_tables_know_it(string name, bool known) =>
        Assert.Equal(known, HexagonCatalog.Bearing(ThreadCatalog.Named(name)).FromTables);

    [Theory]
    [InlineData("M16", 800)]
    [InlineData("M18", 830)]
    [InlineData("M3", 800)]
    public void A_grade_is_as_strong_as_its_size(string name, double tensileMpa) =>
        Assert.Equal(tensileMpa, GradeCatalog.Bolt("8.8", ThreadCatalog.Named(name)).TensileMpa);

    [Theory]
    [InlineData(50, 1, 235, true)]
    [InlineData(50.1, 1, 235, false)]
    [InlineData(25, 1, 470, true)]
    [InlineData(25.1, 1, 470, false)]
    public void A_tube_is_compact_up_to_fifty_walls_at_235_mpa(double outside, double wall, double yield, bool compact) =>
        Assert.Equal(compact, TubeSection.IsCompact(outside, wall, yield));

    [Fact]
    public void A_measured_force_scatters_by_a_tenth_either_way() => Near.Equal(0.078292088, Stance.MeasuredSigma, 1e-7);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    public void Force_goes_with_mass_by_a_power_from_nought_to_one(double exponent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HandForce.Scaled(500, 80, 84.6, exponent));

    [Theory]
    [InlineData(0)]
    [InlineData(0.501)]
    public void A_dent_is_deeper_than_nothing_and_no_deeper_than_half(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeDent.Resistance(235, 33.7, 3.2, 0, share));

    [Fact]
    public void A_wall_of_half_the_outside_leaves_no_tube_to_dent() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeDent.Resistance(235, 33.7, 16.85, 0, 0.01));

    [Fact]
    public void A_washer_face_no_wider_than_its_hole_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Leverage.Threads.BearingFace.MeanDiameter(13, 13.5));
}
