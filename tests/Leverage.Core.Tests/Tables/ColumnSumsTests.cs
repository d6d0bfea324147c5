using Leverage.Tables;

namespace Leverage.Tests.Tables;

public sealed class ColumnSumsTests
{
    private static readonly string[] Pinned = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Tables", "column-sums.csv"));

    public static TheoryData<string> Names => [.. TableCatalog.Tables.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_column_has_the_sum_it_was_checked_with(string name)
    {
        var pinned = Pinned.Where(line => line.StartsWith(name + ",", StringComparison.Ordinal));
        Assert.Equal(string.Join('\n', pinned), string.Join('\n', ColumnSums.Of(TableCatalog.Tables[name])));
    }

    [Fact]
    public void No_pinned_line_is_left_over()
    {
        Assert.Equal(ColumnSums.Header, Pinned[0]);
        var known = TableCatalog.Tables.Names.ToHashSet(StringComparer.Ordinal);
        Assert.All(Pinned.Skip(1), line => Assert.Contains(line.Split(',')[0], known));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_digit_mistyped_in_any_cell_changes_the_sum_of_its_column(string name)
    {
        var table = TableCatalog.Tables[name];
        for (var c = 0; c < table.Columns.Count; c++)
        {
            string[] cells = [.. table.Rows.Select(r => r.Cells[c])];
            var right = ColumnSums.Line(name, table.Columns[c], cells);
            for (var r = 0; r < cells.Length; r++)
            {
                Assert.All(Mistyped(cells[r]), wrong =>
                {
                    var line = ColumnSums.Line(name, table.Columns[c], [.. cells[..r], wrong, .. cells[(r + 1)..]]);
                    Assert.False(string.Equals(right, line, StringComparison.Ordinal), $"{name}: {wrong} passes as {cells[r]}");
                });
            }
        }
    }

    private static IEnumerable<string> Mistyped(string cell)
    {
        for (var i = 0; i < cell.Length; i++)
        {
            if (char.IsAsciiDigit(cell[i]))
            {
                yield return $"{cell[..i]}{(char)('0' + ((cell[i] - '0' + 1) % 10))}{cell[(i + 1)..]}";
            }
        }
    }
}
