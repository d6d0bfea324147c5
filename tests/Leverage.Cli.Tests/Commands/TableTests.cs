using System.Text.Json;
using Leverage.Tables;

namespace Leverage.Cli.Tests.Commands;

public sealed class TableTests
{
    public static TheoryData<string> Names => [.. TableCatalog.Tables.Names];

    [Fact]
    public void The_list_names_every_table_with_its_rows_and_title()
    {
        string words = Ran.Here("table").Answer;
        JsonElement[] json = [.. Ran.Here("table", "--json").Json().EnumerateArray()];
        Assert.Equal(TableCatalog.Tables.Names, json.Select(table => table.GetProperty("name").GetString()!));
        Assert.All(json, table =>
        {
            Assert.Equal(["name", "title", "rows"], Ran.Names(table));
            Assert.Contains($"\n  {table.GetProperty("name").GetString()} ", words, StringComparison.Ordinal);
        });
        Assert.All(words.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_row_is_printed_with_its_source_and_status(string name)
    {
        Table table = TableCatalog.Tables[name];
        string words = Flowing(Ran.Here("table", name).Answer);
        Assert.All(table.Rows, row => Assert.Contains(row.Key, words, StringComparison.Ordinal));
        Assert.All(table.Rows.Select(row => row.Source).Distinct(), source => Assert.Contains(Flowing(source), words, StringComparison.Ordinal));
        Assert.All(table.Rows.Select(row => row.Status.Word()).Distinct(), status => Assert.Contains($"{status} [", words, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_CSV_reads_back_as_the_same_table(string name)
    {
        Table table = TableCatalog.Tables[name];
        Table back = TableReader.Read($"tables/{name}.csv", Ran.Here("table", name, "--csv").Answer);
        Assert.Equal(table.Columns, back.Columns);
        Assert.Equal(table.Rows.Select(row => string.Join('|', row.Cells)), back.Rows.Select(row => string.Join('|', row.Cells)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_JSON_has_every_cell_under_its_columns_name(string name)
    {
        Table table = TableCatalog.Tables[name];
        JsonElement json = Assert.Single(Ran.Here("table", name, "--json").Json().EnumerateArray());
        JsonElement[] rows = [.. json.GetProperty("rows").EnumerateArray()];
        Assert.Equal(table.Rows.Count, rows.Length);
        for (int i = 0; i < rows.Length; i++)
        {
            Assert.Equal(table.Columns, Ran.Names(rows[i]));
            Assert.Equal(table.Rows[i].Cells.Select(Plain), rows[i].EnumerateObject().Select(cell => Plain(cell.Value.ToString())));
        }
    }

    [Fact]
    public void A_prefix_and_a_filter_pick_the_rows()
    {
        JsonElement json = Assert.Single(Ran.Here(Ran.Words("table threads M24 --json")).Json().EnumerateArray());
        Assert.Equal("threads-metric", json.GetProperty("name").GetString());
        Assert.Equal(["M24", "M24x1.5", "M24x2"], json.GetProperty("rows").EnumerateArray().Select(row => row.GetProperty("designation").GetString()!));
        JsonElement nut = Assert.Single(Ran.Here(Ran.Words("table hexagons M12 nut --json")).Json().EnumerateArray());
        Assert.All(nut.GetProperty("rows").EnumerateArray(), row => Assert.EndsWith("nut", row.GetProperty("item").GetString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("axle")]
    [InlineData("AXLE")]
    public void A_word_finds_the_rows_that_say_it(string word)
    {
        JsonElement json = Assert.Single(Ran.Here("table", "large-nuts", word, "--json").Json().EnumerateArray());
        string[] found = [.. json.GetProperty("rows").EnumerateArray().Select(row => row.GetProperty("application").GetString()!)];
        Assert.Equal(
            TableCatalog.Tables["large-nuts"].Rows.Select(row => row.Text("application")).Where(key => key.Split(' ', ',').Contains("axle")), found.Where(key => key.Split(' ', ',').Contains("axle")));
        Assert.True(found.Length >= 2);
    }

    [Fact]
    public void A_figure_recalled_in_a_published_row_is_starred()
    {
        Table table = TableCatalog.Tables["threads-metric"];
        TableRow row = table.Rows.First(r => (r.OptionalText("memory_columns") ?? "").Split(' ').Contains("minor_internal_mm"));
        string words = Ran.Here("table", "threads-metric", row.Key).Answer;
        Assert.Contains($"{row.Text("minor_internal_mm")}*", words, StringComparison.Ordinal);
        Assert.Contains("recalled from memory", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_choose_which_of_two_printed_columns_is_shown()
    {
        Assert.DoesNotContain("psi", Head("table grades SAE"), StringComparison.Ordinal);
        Assert.DoesNotContain("MPa", Head("table grades SAE --units us"), StringComparison.Ordinal);

        static string Head(string line) => string.Join('\n', Ran.Here(Ran.Words(line)).Answer.Split('\n').Skip(2).Take(3));
    }

    private static string Flowing(string text) =>
        string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static string Plain(string cell) =>
        TableRow.TryNumber(cell, out double number) ? number.ToString("R", System.Globalization.CultureInfo.InvariantCulture) : cell;
}
