using Leverage.Tables;

namespace Leverage.Tests.Tables;

/// <summary>Nothing stands in a table or a check without saying where it is from and how far it may be trusted.</summary>
public sealed class SourceAuditTests
{
    public static TheoryData<string> Checks => [.. TableCatalog.Checks.Names];

    /// <summary>Cells that answers use without a mark: table and column.</summary>
    public static TheoryData<string, string> Unmarked => new()
    {
        { "clearance-holes", "medium_mm" },
        { "hexagons", "across_flats_mm" },
        { "hexagons", "height_mm" },
        { "hexagons", "washer_face_min_mm" },
        { "threads-metric", "diameter_mm" },
        { "threads-metric", "pitch_mm" },
        { "threads-unified", "diameter_in" },
        { "threads-unified", "tpi" },
        { "ground", "friction" },
        { "tapped-materials", "shear_mpa" },
        { "square-dimensions", "nominal_mm" },
    };

    /// <summary>No figure is checked against our own estimate; what a careful mechanic says of a case is one by its nature.</summary>
    [Theory]
    [MemberData(nameof(Checks))]
    public void Every_check_names_its_source_and_its_status(string name)
    {
        Assert.All(TableCatalog.Checks[name].Rows, row =>
        {
            Assert.True(row.Source.Count(char.IsLetter) >= 3, $"{row.Key}: '{row.Source}' is no source");
            Assert.Equal(name == "verdicts", row.Status == ValueStatus.Judgement);
        });
    }

    [Fact]
    public void Every_row_of_every_table_names_its_source()
    {
        foreach (TableRow row in TableCatalog.Tables.Names.SelectMany(name => TableCatalog.Tables[name].Rows))
        {
            Assert.True(row.Source.Count(char.IsLetter) >= 3, $"{row.Table.Name}, {row.Key}: '{row.Source}' is no source");
        }
    }

    [Theory]
    [MemberData(nameof(Unmarked))]
    public void A_cell_that_answers_use_unmarked_is_neither_recalled_nor_judged(string table, string column)
    {
        foreach (TableRow row in TableCatalog.Tables[table].Rows.Where(row => row.Status.IsUnconfirmed()))
        {
            string named = row.Table.Has("memory_columns") ? row.OptionalText("memory_columns") ?? "" : "";
            bool recalled = named.Split(' ').Contains(column) || (named.Length == 0 && row.OptionalText(column) is not null);
            Assert.False(recalled, $"{table}, {row.Key}: {column} is {row.Status.Word()}, and the answers that use it bear no mark");
        }
    }

    [Theory]
    [InlineData("", "published", "source")]
    [InlineData("ISO 724", "", "status")]
    [InlineData("ISO 724", "certain", "status")]
    public void A_row_without_source_or_known_status_is_refused_where_it_is_read(string source, string status, string column)
    {
        const string Columns = "id,formula,inputs,expected,unit,tolerance,source,status,note\n";
        using var text = new StringReader($"{Columns}a,ThreadGeometry.PitchDiameter,diameter=10mm; pitch=1.5mm,9.026,mm,,{source},{status},\n");
        var refusal = Assert.Throws<TableFormatException>(() => TableReader.Read("checks/a.csv", text));
        Assert.Contains($"column {column}", refusal.Message, StringComparison.Ordinal);
    }
}
