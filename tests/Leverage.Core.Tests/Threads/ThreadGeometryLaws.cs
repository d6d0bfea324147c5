using FsCheck.Xunit;
using Leverage.Threads;

namespace Leverage.Tests.Threads;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class ThreadGeometryLaws
{
    [Property]
    public void Diameters_step_down_from_nominal_by_pitch_and_minor_to_the_root(Sized diameter, Sized pitch)
    {
        var (d, p) = Sizes(diameter, pitch);
        double[] steps =
        [
            d, ThreadGeometry.PitchDiameter(d, p), ThreadGeometry.StressDiameter(d, p),
            ThreadGeometry.MinorDiameterInternal(d, p), ThreadGeometry.RootDiameter(d, p), 0,
        ];
        Assert.All(steps.Zip(steps.Skip(1)), pair => Assert.True(pair.First > pair.Second));
    }

    [Property]
    public void Depths_stand_as_the_eighths_of_the_triangle_do(Sized diameter, Sized pitch)
    {
        // H/8 is cut at the crest: d - d2 = 6/8 H, d - D1 = 10/8 H, d - d3 = 17/12 H, and H itself is sin 60° of the pitch.
        var (d, p) = Sizes(diameter, pitch);
        double h = p * Math.Sin(Math.PI / 3);
        Near.Equal(6 * h / 8, d - ThreadGeometry.PitchDiameter(d, p), 1e-7);
        Near.Equal(10 * h / 8, d - ThreadGeometry.MinorDiameterInternal(d, p), 1e-7);
        Near.Equal(17 * h / 12, d - ThreadGeometry.RootDiameter(d, p), 1e-7);
    }

    [Property]
    public void Stress_diameter_is_the_mean_of_pitch_and_root_diameter_to_the_printed_digits(Sized diameter, Sized pitch)
    {
        // 0.9382 is printed; 13/24 of the square root of 3 is 0.938194.
        var (d, p) = Sizes(diameter, pitch);
        double mean = (ThreadGeometry.PitchDiameter(d, p) + ThreadGeometry.RootDiameter(d, p)) / 2;
        Assert.Equal(mean, ThreadGeometry.StressDiameter(d, p), 1e-5 * p);
        Near.Equal(Math.PI / 4 * Math.Pow(ThreadGeometry.StressDiameter(d, p), 2), ThreadGeometry.StressArea(d, p));
    }

    [Property]
    public void A_thread_twice_as_large_has_lengths_twice_and_areas_four_times_as_large(Sized diameter, Sized pitch, Sized scale)
    {
        var (d, p) = Sizes(diameter, pitch);
        double k = scale.Log(0.1, 10);
        Near.Equal(k * ThreadGeometry.PitchDiameter(d, p), ThreadGeometry.PitchDiameter(k * d, k * p));
        Near.Equal(k * ThreadGeometry.RootDiameter(d, p), ThreadGeometry.RootDiameter(k * d, k * p));
        Near.Equal(k * k * ThreadGeometry.StressArea(d, p), ThreadGeometry.StressArea(k * d, k * p));
        Near.Equal(k * k * ThreadGeometry.UnifiedStressArea(d, p), ThreadGeometry.UnifiedStressArea(k * d, k * p));
        Near.Equal(ThreadGeometry.LeadAngle(d, p), ThreadGeometry.LeadAngle(k * d, k * p));
    }

    [Property]
    public void Stress_area_grows_with_diameter_and_falls_with_pitch(Sized diameter, Sized pitch, Sized more)
    {
        var (d, p) = Sizes(diameter, pitch);
        double k = more.Log(1.001, 1.1);
        Assert.True(ThreadGeometry.StressArea(k * d, p) > ThreadGeometry.StressArea(d, p));
        Assert.True(ThreadGeometry.StressArea(d, k * p) < ThreadGeometry.StressArea(d, p));
        Assert.True(ThreadGeometry.UnifiedStressArea(k * d, p) > ThreadGeometry.UnifiedStressArea(d, p));
    }

    [Property]
    public void The_lead_angle_climbs_one_lead_in_one_turn(Sized diameter, Sized pitch)
    {
        var (d, p) = Sizes(diameter, pitch);
        Near.Equal(p, Math.PI * d * Math.Tan(ThreadGeometry.LeadAngle(d, p)));
    }

    [Property]
    public void Flank_friction_is_the_friction_over_the_cosine_of_the_flank(Sized friction, Sized flank)
    {
        double mu = friction.Log(0.01, 2);
        double beta = flank.Even(0, 1);
        Near.Equal(mu, Math.Tan(ThreadFriction.Angle(mu, beta)) * Math.Cos(beta));
        Assert.True(ThreadFriction.Angle(mu, beta) >= Math.Atan(mu) - 1e-15);
    }

    [Property]
    public void A_medium_fit_always_leaves_clearance(Sized diameter, Sized pitch)
    {
        var (d, p) = Sizes(diameter, pitch);
        Assert.True(ThreadTolerance.LeastMajorExternal(d, p) < d);
        Assert.True(ThreadTolerance.LeastPitchExternal(d, p) < ThreadGeometry.PitchDiameter(d, p));
        Assert.True(ThreadTolerance.MostPitchInternal(d, p) > ThreadGeometry.PitchDiameter(d, p));
        Assert.True(ThreadTolerance.MostMinorInternal(d, p) > ThreadGeometry.MinorDiameterInternal(d, p));
    }

    [Fact]
    public void Every_tabled_thread_has_a_face_to_turn_on_and_a_root_inside_it() => Assert.All(AnyThread.All, thread =>
    {
        var (bearing, _) = HexagonCatalog.Bearing(thread);
        Assert.InRange(bearing, 1.1 * thread.DiameterMm, 1.8 * thread.DiameterMm);
        Assert.InRange(thread.RootDiameterMm, 0.6 * thread.DiameterMm, thread.PitchDiameterMm);
        Assert.InRange(thread.StressAreaMm2 / (Math.PI / 4 * Math.Pow(thread.DiameterMm, 2)), 0.6, 1);
        Assert.InRange(HexagonCatalog.NutHeightMm(thread), 0.7 * thread.DiameterMm, 1.1 * thread.DiameterMm);
    });

    private static (double DiameterMm, double PitchMm) Sizes(Sized diameter, Sized pitch)
    {
        double d = diameter.Log(1, 100);
        return (d, pitch.Log(0.03, 0.3) * d);
    }
}
