using Leverage.Tubes;

namespace Leverage.Tests.Proof;

public sealed class CompactTubeTests
{
    /// <summary>Class 1 limit of EN 1993-1-1 Table 5.2 for tubes, 50·ε², with the ε the table prints.</summary>
    [Theory]
    [InlineData(235, 1.00)]
    [InlineData(275, 0.92)]
    [InlineData(355, 0.81)]
    public void A_tube_is_compact_up_to_fifty_times_235_over_its_yield(double yieldMpa, double epsilon)
    {
        double limit = 50 * epsilon * epsilon;
        Assert.True(TubeSection.IsCompact(0.985 * limit, 1, yieldMpa));
        Assert.False(TubeSection.IsCompact(1.015 * limit, 1, yieldMpa));
        Assert.True(TubeSection.IsCompact(50 * 235 / yieldMpa, 1, yieldMpa));
        Assert.False(TubeSection.IsCompact(50 * 235 / yieldMpa * 1.000001, 1, yieldMpa));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-235)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_yield_that_is_none_is_refused(double yieldMpa)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeSection.IsCompact(33.7, 3.2, yieldMpa));
    }
}
