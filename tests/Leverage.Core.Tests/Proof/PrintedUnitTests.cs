using Leverage.Proof;

namespace Leverage.Tests.Proof;

public sealed class PrintedUnitTests
{
    /// <summary>Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s².</summary>
    private const double Inch = 25.4, Pound = 0.45359237, PoundForce = Pound * 9.80665;

    public static TheoryData<string, double> Defined => new()
    {
        { "", 1 }, { "%", 0.01 },
        { "mm", 1 }, { "cm", 10 }, { "m", 1000 }, { "um", 0.001 }, { "in", Inch }, { "ft", 12 * Inch },
        { "N", 1 }, { "kN", 1000 }, { "lbf", PoundForce }, { "kip", 1000 * PoundForce }, { "kgf", 9.80665 },
        { "MPa", 1 }, { "GPa", 1000 }, { "psi", PoundForce / (Inch * Inch) },
        { "kpsi", 1000 * PoundForce / (Inch * Inch) },
        { "ksi", 1000 * PoundForce / (Inch * Inch) },
        { "Nmm", 1 }, { "Nm", 1000 }, { "lbfin", PoundForce * Inch }, { "lbfft", PoundForce * 12 * Inch },
        { "kgfm", 9806.65 }, { "J", 1000 }, { "rad", 1 }, { "deg", Math.PI / 180 }, { "K", 1 },
        { "kg", 1 }, { "lb", Pound }, { "kg/m", 1 }, { "lb/ft", Pound / (0.012 * Inch) }, { "m/s", 1 },
        { "mm2", 1 }, { "cm2", 100 }, { "in2", Inch * Inch },
        { "mm3", 1 }, { "cm3", 1000 }, { "in3", Inch * Inch * Inch },
        { "mm4", 1 }, { "cm4", 1e4 }, { "1e6mm4", 1e6 }, { "in4", Inch * Inch * Inch * Inch }, { "Nmm2", 1 },
        { "N/mm", 1 }, { "MN/m", 1000 }, { "Mlbf/in", 1e6 * PoundForce / Inch },
    };

    [Theory]
    [MemberData(nameof(Defined))]
    public void A_printed_unit_holds_as_many_coherent_units_as_its_definition_says(string unit, double factor)
    {
        Assert.Equal(1, PrintedUnit.Factor(unit) / factor, 1e-12);
    }

    [Fact]
    public void Every_unit_of_the_checks_is_tested_here()
    {
        var tested = Defined.Select(d => d.Data.Item1).ToHashSet(StringComparer.Ordinal);
        var used = Prover.Run().Where(t => t.Topic != "unit-spellings").SelectMany(t => t.Outcomes).Select(o => o.Row)
            .SelectMany(r => r.Inputs.Given.Select(g => g.Unit).Append(r.Unit)).Distinct(StringComparer.Ordinal);
        Assert.DoesNotContain(used, u => !tested.Contains(u));
    }

    [Fact]
    public void A_unit_nobody_knows_is_refused_by_name()
    {
        var error = Assert.Throws<ArgumentException>(() => PrintedUnit.Factor("furlong"));
        Assert.StartsWith("no unit 'furlong' is known", error.Message, StringComparison.Ordinal);
    }
}
