using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Proof;

public sealed class CheckToleranceTests
{
    [Theory]
    [InlineData("26.18", 0.005)]
    [InlineData("5.0", 0.05)]
    [InlineData("5.00", 0.005)]
    [InlineData("1700", 0.5)]
    [InlineData("-0.466", 0.0005)]
    [InlineData("1.5e3", 50)]
    [InlineData("2.5e-3", 0.00005)]
    public void A_printed_number_is_good_to_half_a_unit_in_its_last_digit(string printed, double tolerance)
    {
        Assert.Equal(tolerance, CheckTolerance.OfLastDigit(printed), 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1,5")]
    [InlineData("12mm")]
    [InlineData("NaN")]
    public void What_is_no_number_has_no_last_digit(string printed)
    {
        Assert.Throws<FormatException>(() => CheckTolerance.OfLastDigit(printed));
    }

    [Theory]
    [InlineData("", 0.05)]
    [InlineData("0.3", 0.3)]
    [InlineData("2%", 0.246)]
    public void A_written_tolerance_is_an_amount_or_a_percentage(string written, double tolerance)
    {
        Assert.Equal(tolerance, CheckTolerance.Of(Row(written)), 1e-12);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1%")]
    [InlineData("wide")]
    [InlineData("NaN%")]
    public void A_tolerance_of_nothing_or_nonsense_is_refused_by_line_and_column(string written)
    {
        var error = Assert.Throws<TableFormatException>(() => CheckTolerance.Of(Row(written)));
        Assert.StartsWith("checks/t.csv(2), column tolerance", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("formula", "TubeSection.Colour,outside=20mm,1,mm2,")]
    [InlineData("unit", "TubeSection.Area,outside=20mm,1,furlong,")]
    [InlineData("inputs", "TubeSection.Area,outside,1,mm2,")]
    [InlineData("inputs", "TubeSection.Area,outside=20mm; outside=21mm,1,mm2,")]
    [InlineData("inputs", "TubeSection.Area,outside=20parsec,1,mm2,")]
    public void A_row_that_cannot_be_worked_out_is_refused_by_column(string column, string cells)
    {
        var row = TableReader.Read("checks/t.csv", Header + $"a,{cells},a book,published,\n").Rows[0];
        var error = Assert.Throws<TableFormatException>(() => new CheckReader().Read(row));
        Assert.StartsWith($"checks/t.csv(2), column {column}", error.Message, StringComparison.Ordinal);
    }

    private const string Header = "id,formula,inputs,expected,unit,tolerance,source,status,note\n";

    private static TableRow Row(string tolerance) => TableReader.Read(
        "checks/t.csv",
        Header + $"a,TubeSection.Area,outside=20mm; wall=2mm,12.3,mm2,{tolerance},a book,published,why\n").Rows[0];
}
