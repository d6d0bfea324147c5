using FsCheck.Xunit;
using Leverage.LoadPath;

namespace Leverage.Tests.LoadPath;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class PlasticTorsionLaws
{
    [Property]
    public void A_section_stands_twice_the_sand_heaped_on_it(Sized width, Sized shear)
    {
        // A heap of slope τ over a square or hexagon of width s across flats is a pyramid of height τ·s/2.
        var (s, tau) = (width.Log(1, 60), shear.Log(100, 1000));
        Near.Equal(2 * s * s * (tau * s / 2) / 3, DriveSquare.PlasticTorque(s, tau));
        Near.Equal(2 * (Math.Sqrt(3) / 2 * s * s) * (tau * s / 2) / 3, HexagonKey.PlasticTorque(s, tau));
    }

    [Property(MaxTest = 5)]
    public void A_square_s_first_yield_follows_the_series_of_its_torsion(Sized width, Sized shear)
    {
        // Saint-Venant, a rectangle with equal sides: with n odd, the torque of unit twist is
        // a⁴/3·(1 - 192/π⁵·Σ tanh(nπ/2)/n⁵) and the largest shear a·(1 - 8/π²·Σ 1/(n²·cosh(nπ/2))).
        var (a, tau) = (width.Log(1, 60), shear.Log(100, 1000));
        var (stiff, steep) = (0.0, 0.0);
        for (int n = 1; n < 40; n += 2)
        {
            stiff += Math.Tanh(n * Math.PI / 2) / Math.Pow(n, 5);
            steep += 1 / (n * n * Math.Cosh(n * Math.PI / 2));
        }

        double torque = a * a * a * a / 3 * (1 - 192 / Math.Pow(Math.PI, 5) * stiff);
        double peak = a * (1 - 8 / (Math.PI * Math.PI) * steep);
        Near.Equal(torque / peak * tau, DriveSquare.ElasticTorque(a, tau), 1e-4);
    }

    [Property]
    public void A_hinge_pin_shears_in_two_planes_a_tang_apart(Sized diameter, Sized apart, Sized shear)
    {
        var (d, w, tau) = (diameter.Log(2, 20), apart.Log(5, 40), shear.Log(100, 1000));
        double plane = tau * Math.PI / 4 * d * d;
        Near.Equal(2 * plane * w / 2, HingePin.Torque(d, w, tau));
    }
}
