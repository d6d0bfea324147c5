using FsCheck.Xunit;
using Leverage.Levers;
using Leverage.Tubes;

namespace Leverage.Tests.Tubes;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class TubeSectionLaws
{
    [Property(MaxTest = 30)]
    public void Section_values_are_the_sums_over_thin_strips(Sized outside, Sized wall)
    {
        var (d, t) = Tube(outside, wall);
        double inner = d / 2 - t;
        var (area, second, first) = (0.0, 0.0, 0.0);
        const int Strips = 20_000;
        for (int i = 0; i < Strips; i++)
        {
            // Equal steps of the angle, so that the strips thin out towards the edge.
            double from = Math.PI / 2 * i / Strips;
            double mid = from + Math.PI / 4 / Strips;
            double height = d / 2 * (Math.Sin(from + Math.PI / 2 / Strips) - Math.Sin(from));
            double y = d / 2 * Math.Sin(mid);
            double width = 2 * (d / 2 * Math.Cos(mid) - (y < inner ? Math.Sqrt(inner * inner - y * y) : 0));
            area += 2 * width * height;
            second += 2 * width * height * y * y;
            first += 2 * width * height * y;
        }

        Near.Equal(area, TubeSection.Area(d, t), 1e-4);
        Near.Equal(second, TubeSection.Inertia(d, t), 1e-4);
        Near.Equal(first, TubeSection.PlasticModulus(d, t), 1e-4);
    }

    [Property]
    public void Moduli_lie_between_those_of_a_skin_and_of_a_solid_bar(Sized outside, Sized wall, Sized scale)
    {
        var (d, t) = Tube(outside, wall);
        double k = scale.Log(0.1, 10);
        double shape = TubeSection.PlasticModulus(d, t) / TubeSection.ElasticModulus(d, t);
        Assert.InRange(shape, 4 / Math.PI, 16 / (3 * Math.PI));
        Near.Equal(TubeSection.Inertia(d, t), TubeSection.ElasticModulus(d, t) * d / 2);
        Near.Equal(k * k * k * TubeSection.ElasticModulus(d, t), TubeSection.ElasticModulus(k * d, k * t));
        Assert.True(TubeSection.PlasticModulus(d, 1.01 * t) > TubeSection.PlasticModulus(d, t));
    }

    [Property]
    public void A_tube_with_hardly_a_bore_is_a_bar(Sized outside)
    {
        double d = outside.Log(10, 100);
        Near.Equal(RoundBar.ElasticModulus(d), TubeSection.ElasticModulus(d, 0.4999 * d), 1e-9);
        Near.Equal(RoundBar.PlasticModulus(d), TubeSection.PlasticModulus(d, 0.4999 * d), 1e-9);
        Near.Equal(RoundBar.Mass(d, 1000), TubeSection.MassPerMetre(d, 0.4999 * d), 1e-4);
    }

    [Property]
    public void Mass_of_tube_is_the_mass_of_its_steel(Sized outside, Sized wall)
    {
        var (d, t) = Tube(outside, wall);
        Near.Equal(7.85e-3 * TubeSection.Area(d, t), TubeSection.MassPerMetre(d, t), 1e-5);
    }

    [Property]
    public void Dent_resistance_grows_with_strength_wall_and_depth(Sized outside, Sized wall, Sized depth, Sized yield, Sized scale)
    {
        var (d, t) = Tube(outside, wall);
        double w = depth.Log(0.001, 0.24);
        var (mpa, k) = (yield.Log(100, 1000), scale.Log(0.1, 10));
        double resistance = TubeDent.Resistance(mpa, d, t, 0, w);
        Near.Equal(k * resistance, TubeDent.Resistance(k * mpa, d, t, 0, w));
        Near.Equal(k * k * resistance, TubeDent.Resistance(mpa, k * d, k * t, 0, w));
        Assert.True(TubeDent.Resistance(mpa, d, 1.01 * t, 0, w) > resistance);
        Assert.True(TubeDent.Resistance(mpa, d, t, 0, 1.01 * w) > resistance);
        Near.Equal(Math.Pow(2, 0.55), TubeDent.Resistance(mpa, d, t, 0, 2 * w) / resistance);
        Near.Equal(mpa * t * t / 3.6, TubeDent.MarkForce(mpa, t));
    }

    [Property]
    public void A_socket_tips_by_force_times_stand_off_over_its_depth(Sized force, Sized off, Sized deep)
    {
        var (n, h, e) = (force.Log(1, 2000), off.Log(1, 300), deep.Log(5, 50));
        Near.Equal(SocketTipping.Moment(n, h), n * e * SocketTipping.Ratio(h, e));
    }

    private static (double OutsideMm, double WallMm) Tube(Sized outside, Sized wall)
    {
        double d = outside.Log(10, 100);
        return (d, wall.Log(0.02, 0.45) * d);
    }
}
