using System.Globalization;
using Leverage.Tables;

namespace Leverage.Tests.Tables;

/// <summary>Loads as printed against stress area times stress of the same property class, three tables holding each other.</summary>
public sealed class PrintedLoadsTests
{
    [Theory]
    [InlineData("proof", "bolt", "proof_mpa", 0.5)]
    [InlineData("ultimate", "bolt", "tensile_mpa", 0.8)]
    [InlineData("nut_proof", "nut", "proof_mpa", 0.4)]
    public void Loads_are_area_times_stress_within_their_printed_figures(string quantity, string kind, string stress, double percent)
    {
        var rows = TableCatalog.Tables["loads"].Rows.Where(r => r.Text("quantity") == quantity).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, row =>
        {
            var area = TableCatalog.Tables["threads-metric"].Rows.Single(t => t.Key == row.Key);
            var expected = area.Number("stress_area_mm2") * Grade(row.Text("grade"), kind, area.Number("diameter_mm")).Number(stress);
            var off = ((row.Number("force_n") / expected) - 1) * 100;
            Assert.True(Math.Abs(off) <= percent, string.Create(CultureInfo.InvariantCulture, $"{row.Key} {row.Text("grade")}: {off:F2} % off"));
        });
    }

    [Fact]
    public void Psi_and_MPa_of_the_inch_grades_are_the_same_stress()
    {
        foreach (var row in TableCatalog.Tables["grades"].Rows.Where(r => r.Text("printed_unit") == "psi"))
        {
            foreach (var quantity in (string[])["proof", "yield", "tensile"])
            {
                var converted = row.Number(quantity + "_psi") * 4.4482216152605 / (25.4 * 25.4);
                Assert.Equal(converted, row.Number(quantity + "_mpa"), 3);
            }
        }
    }

    [Fact]
    public void Inches_and_millimetres_of_inch_hexagons_are_the_same_width()
    {
        foreach (var row in TableCatalog.Tables["hexagons"].Rows.Where(r => r.OptionalNumber("across_flats_in") is not null))
        {
            Assert.Equal(row.Number("across_flats_in") * 25.4, row.Number("across_flats_mm"), 3);
        }
    }

    [Fact]
    public void Tubes_have_the_bore_their_wall_leaves_and_steel_weighs_what_it_should()
    {
        foreach (var row in TableCatalog.Tables["tubes"].Rows)
        {
            var (outside, wall) = (row.Number("outside_mm"), row.Number("wall_mm"));
            Assert.Equal(outside - (2 * wall), row.Number("bore_mm"), 3);
            if (row.OptionalNumber("mass_kg_per_m") is { } mass)
            {
                Assert.InRange(mass / (0.0246615 * (outside - wall) * wall), 0.95, 1.02);
            }
        }
    }

    private static TableRow Grade(string grade, string kind, double diameterMm) =>
        TableCatalog.Tables["grades"].Rows.Single(g => g.Key == grade && g.Text("kind") == kind
            && (g.OptionalNumber("from_mm") ?? 0) <= diameterMm && diameterMm <= (g.OptionalNumber("to_mm") ?? 1000));
}
