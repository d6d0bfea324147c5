using Leverage.BreakLoose;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

public sealed class LargeNutTests
{
    /// <summary>Within a tenth of the ends, or of the one torque named; what is set by its strength alone never.</summary>
    [Theory]
    [InlineData("hub", 200.0, null, 300.0, 180.1, true)]
    [InlineData("hub", 200.0, null, 300.0, 179.9, false)]
    [InlineData("hub", 200.0, null, 300.0, 329.9, true)]
    [InlineData("hub", 200.0, null, 300.0, 330.1, false)]
    [InlineData("wheel", null, 120.0, null, 108.1, true)]
    [InlineData("wheel", null, 120.0, null, 132.1, false)]
    [InlineData("general", null, 120.0, null, 120.0, false)]
    [InlineData("structure", null, 120.0, null, 120.0, false)]
    [InlineData("first-stage", null, 120.0, null, 120.0, false)]
    [InlineData("adjusting", null, 120.0, null, 120.0, false)]
    public void A_row_is_set_to_what_lies_within_a_tenth_of_it(string on, double? low, double? typical, double? high, double nm, bool set) => Assert.Equal(
        set, new LargeNut(on, "a nut", "M20", low, typical, high, [30], "the row", ValueStatus.Derived).IsSetTo(Torque.FromNewtonMeters(nm)));
}
