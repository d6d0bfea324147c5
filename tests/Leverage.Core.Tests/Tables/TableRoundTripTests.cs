using FsCheck.Xunit;
using Leverage.Tables;

namespace Leverage.Tests.Tables;

public sealed class TableRoundTripTests
{
    [Property(MaxTest = 300)]
    public bool Any_cells_come_back_as_they_were_written(string? first, string? second, string? third)
    {
        string[] cells = [Cell(first, "a"), Cell(second, ""), Cell(third, "somewhere"), "derived"];
        var text = "key,words,source,status\n" + string.Join(',', cells.Select(Quoted)) + "\n";
        var table = TableReader.Read("tables/t.csv", text);
        using var again = new StringWriter();
        TableWriter.Write(table, again);
        var twice = TableReader.Read("tables/t.csv", again.ToString());
        return cells.SequenceEqual(table.Rows[0].Cells, StringComparer.Ordinal)
            && cells.SequenceEqual(twice.Rows[0].Cells, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("one\ntwo")]
    [InlineData("one\r\ntwo")]
    [InlineData("\"")]
    [InlineData("a,\"b\",c")]
    [InlineData("# no comment")]
    [InlineData("N·m, °C, 10⁻⁶")]
    public void Awkward_cells_come_back_and_the_next_row_keeps_its_line(string cell)
    {
        var text = $"key,words,source,status\na,{Quoted(cell)},x,memory\nb,,y,memory\n";
        var table = TableReader.Read("tables/t.csv", text);
        Assert.Equal(cell, table.Rows[0].Text("words"), StringComparer.Ordinal);
        Assert.Equal(3 + cell.Count(c => c == '\n'), table.Rows[1].Line);
    }

    private static string Cell(string? text, string blank)
    {
        var cell = (text ?? "").Trim();
        return cell.Length == 0 ? blank : cell;
    }

    private static string Quoted(string cell) => $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
