using Leverage.Probability;
using Leverage.Outcomes;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

/// <summary>Bits, deviates and the normal curve against MathNet.Numerics and the generator's known output.</summary>
public static class NormalDrawTests
{
    private const int Cells = 2048;
    private const int PlaceBits = 21;

    /// <summary>Published test vector of splitmix64 for the seed 1234567 (from memory; many implementations carry it).</summary>
    [Fact]
    public static void The_bits_are_those_of_splitmix64()
    {
        ulong state = 1234567;
        ulong[] drawn = [.. Enumerable.Range(0, 5).Select(_ => SplitMix.Bits(state += SplitMix.Step))];
        Assert.Equal(
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821], drawn);
    }

    [Fact]
    public static void At_the_edge_of_every_cell_the_deviate_is_the_quantile_itself()
    {
        for (uint cell = 1; cell < Cells; cell++)
        {
            Assert.Equal(Normal.InvCDF(0, 1, (double)cell / Cells), NormalTable.Deviate.At(cell << PlaceBits), 1e-12);
        }
    }

    [Fact]
    public static void Within_a_cell_it_stands_between_the_edges_and_in_the_outermost_ones_it_is_exact()
    {
        const uint Quarter = 1u << (PlaceBits - 2);
        for (uint cell = 0; cell < Cells; cell++)
        {
            bool outermost = cell is < 2 or >= Cells - 2;
            double at = NormalTable.Deviate.At((cell << PlaceBits) + Quarter);
            double expected = outermost
                ? Normal.InvCDF(0, 1, (cell + 0.25) / Cells)
                : 0.75 * Normal.InvCDF(0, 1, (double)cell / Cells) + 0.25 * Normal.InvCDF(0, 1, (cell + 1.0) / Cells);
            Assert.Equal(expected, at, 1e-12);
        }
    }

    [Fact]
    public static void The_rarest_bits_give_a_finite_deviate()
    {
        Assert.Equal(Normal.InvCDF(0, 1, 1e-12), NormalTable.Deviate.At(0), 1e-6);
        Assert.Equal(-Normal.InvCDF(0, 1, 1.0 / (1UL << 32)), NormalTable.Deviate.At(uint.MaxValue), 1e-6);
    }

    [Fact]
    public static void The_curve_is_the_normal_to_the_accuracy_it_claims()
    {
        for (double z = -6.9999; z < 7; z += 0.00137)
        {
            var (survival, density) = NormalCurve.At(z);
            Assert.Equal(Normal.CDF(0, 1, -z), survival, 5e-10);
            Assert.Equal(Normal.PDF(0, 1, z), density, 2e-9);
        }
    }

    [Theory]
    [InlineData(7)]
    [InlineData(7.5)]
    [InlineData(double.PositiveInfinity)]
    public static void Seven_deviates_out_nothing_is_left_to_chance(double z)
    {
        Assert.Equal((0, 0), NormalCurve.At(z));
        Assert.Equal((1, 0), NormalCurve.At(-z));
    }

    [Fact]
    public static void A_strength_ends_seven_deviates_about_its_median()
    {
        var curve = new LogNormalCurve(new Strength(500e3, 0.25));
        Assert.Equal((Math.Log(500e3) - 1.75, Math.Log(500e3) + 1.75), (curve.Low, curve.High));
    }

    [Theory]
    [InlineData(1e-300, true)]
    [InlineData(0, false)]
    [InlineData(1 - 1e-16, true)]
    [InlineData(1, false)]
    public static void A_quantile_is_that_of_a_share_between_0_and_1(double share, bool fits)
    {
        void Ask() => LogNormalSpread.Quantile(1, 0.1, share);
        if (fits)
        {
            Ask();
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(Ask);
        }
    }
}
