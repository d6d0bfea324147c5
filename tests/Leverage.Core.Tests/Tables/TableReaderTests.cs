using Leverage.Tables;

namespace Leverage.Tests.Tables;

public sealed class TableReaderTests
{
    private const string Good = "# Two things\n# millimetres\nkey,size_mm,source,status\na,1.5,\"one, two\",published\nb,,\"said \"\"so\"\"\",memory\n";

    [Fact]
    public void A_good_table_has_title_notes_columns_and_rows()
    {
        var table = TableReader.Read("tables/things.csv", Good);
        Assert.Equal("things", table.Name);
        Assert.Equal("Two things", table.Title);
        Assert.Equal("millimetres", Assert.Single(table.Notes));
        Assert.Equal("key size_mm source status", string.Join(' ', table.Columns));
        Assert.Equal(2, table.Rows.Count);
        Assert.Equal(1.5, table.Rows[0].Number("size_mm"));
        Assert.Equal("one, two", table.Rows[0].Source);
        Assert.Equal("said \"so\"", table.Rows[1].Source);
        Assert.Null(table.Rows[1].OptionalNumber("size_mm"));
        Assert.Equal(ValueStatus.Memory, table.Rows[1].Status);
        Assert.Equal([4, 5], table.Rows.Select(r => r.Line));
    }

    [Theory]
    [InlineData("1,5")]
    [InlineData("1 000")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("0x10")]
    [InlineData("1.5mm")]
    public void A_cell_that_is_no_number_names_file_line_and_column(string cell)
    {
        var text = Good.Replace("1.5,", $"\"{cell}\",", StringComparison.Ordinal);
        var row = TableReader.Read("tables/things.csv", text).Rows[0];
        var error = Assert.Throws<TableFormatException>(() => row.Number("size_mm"));
        Assert.Equal(
            $"tables/things.csv(4), column size_mm: found '{cell}'; accepted: a number such as 12.5, or nothing.",
            error.Message);
        Assert.Equal((4, "size_mm"), (error.Line, error.Column));
    }

    [Fact]
    public void A_blank_cell_where_a_number_is_needed_is_refused()
    {
        var row = TableReader.Read("tables/things.csv", Good).Rows[1];
        var error = Assert.Throws<TableFormatException>(() => row.Number("size_mm"));
        Assert.Equal("tables/things.csv(5), column size_mm: found nothing; accepted: a number such as 12.5.", error.Message);
    }

    [Theory]
    [InlineData("a,1.5,x,sure\n", "tables/t.csv(2), column status: found 'sure'; accepted: published, memory, judgement, derived or engine.")]
    [InlineData("a,1.5,x,Published\n", "tables/t.csv(2), column status: found 'Published'; accepted: published, memory, judgement, derived or engine.")]
    [InlineData("a,1.5,,memory\n", "tables/t.csv(2), column source: found nothing; accepted: a text.")]
    [InlineData(",1.5,x,memory\n", "tables/t.csv(2), column key: found nothing; accepted: a name for the row.")]
    [InlineData("a,1.5,x,memory\nb, 2,x,memory\n", "tables/t.csv(3), column size_mm: found ' 2'; accepted: a cell without space at its ends.")]
    [InlineData("a,1.5,x\n", "tables/t.csv(2): found 3 cells; accepted: 4 cells, one for each column.")]
    [InlineData("a,1.5,x,y,memory\n", "tables/t.csv(2): found 5 cells; accepted: 4 cells, one for each column.")]
    [InlineData("a,1.5,x,memory\n\nb,2,x,memory\n", "tables/t.csv(3): found 1 cells; accepted: 4 cells, one for each column.")]
    [InlineData("a,1.5,\"x,memory\nb,2,x,memory\n", "tables/t.csv(2): found a quote that never closes; accepted: \"text\" with inner quotes doubled.")]
    [InlineData("a,1.5,x\"y\"z,memory\n", "tables/t.csv(2): found a quote inside a cell; accepted: \"text\" with inner quotes doubled.")]
    [InlineData("a,1.5,\"x\"\"y\",memory\nb,1.5,x\"y,memory\n", "tables/t.csv(3): found a quote inside a cell; accepted: \"text\" with inner quotes doubled.")]
    public void A_bad_row_names_file_line_and_column(string rows, string message)
    {
        var text = "key,size_mm,source,status\n" + rows;
        Assert.Equal(message, Assert.Throws<TableFormatException>(() => TableReader.Read("tables/t.csv", text)).Message);
    }

    [Theory]
    [InlineData("", "tables/t.csv(1): found no column names; accepted: a line of column names.")]
    [InlineData("# only a title\n", "tables/t.csv(2): found no column names; accepted: a line of column names.")]
    [InlineData("key,key,source,status\n", "tables/t.csv(1): found column key twice; accepted: column names that differ.")]
    [InlineData("key,,source,status\n", "tables/t.csv(1): found a column without a name; accepted: column names that differ.")]
    [InlineData("key,source\n", "tables/t.csv(1), column status: found no such column; accepted: every table has source and status.")]
    public void A_bad_header_names_file_and_line(string text, string message) =>
        Assert.Equal(message, Assert.Throws<TableFormatException>(() => TableReader.Read("tables/t.csv", text)).Message);

    [Fact]
    public void A_column_that_is_not_there_is_an_error_that_lists_those_that_are()
    {
        var row = TableReader.Read("tables/things.csv", Good).Rows[0];
        var error = Assert.Throws<TableFormatException>(() => row.Number("size_in"));
        Assert.Equal("tables/things.csv(3), column size_in: found no such column; accepted: key, size_mm, source, status.", error.Message);
    }

    [Fact]
    public void Windows_line_ends_and_a_byte_order_mark_are_read_the_same()
    {
        var text = "\uFEFF" + Good.Replace("\n", "\r\n", StringComparison.Ordinal);
        var table = TableReader.Read("tables/things.csv", text);
        Assert.Equal("Two things", table.Title);
        Assert.Equal("said \"so\"", table.Rows[1].Source);
        Assert.Equal([4, 5], table.Rows.Select(r => r.Line));
    }

    [Theory]
    [InlineData("A", 1)]
    [InlineData("a", 1)]
    [InlineData("memory", 1)]
    [InlineData("1.5", 1)]
    [InlineData("1.", 0)]
    [InlineData("", 2)]
    public void Rows_are_found_by_a_whole_cell_or_the_beginning_of_the_first(string text, int rows) =>
        Assert.Equal(rows, TableReader.Read("tables/things.csv", Good).Where(text).Count());

    [Fact]
    public void What_the_writer_writes_the_reader_read()
    {
        using var text = new StringWriter();
        TableWriter.Write(TableReader.Read("tables/things.csv", Good), text);
        Assert.Equal(Good, text.ToString());
    }
}
