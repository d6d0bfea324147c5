using System.Globalization;
using Leverage.Tables;

namespace Leverage.Tests.Tables;

public sealed class TableCatalogTests
{
    public static TheoryData<string> Names => [.. TableCatalog.Tables.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_table_reads_has_a_title_and_rows_with_source_and_status(string name)
    {
        var table = TableCatalog.Tables[name];
        Assert.Equal(name, table.Name);
        Assert.NotEqual(name, table.Title, StringComparer.Ordinal);
        Assert.NotEmpty(table.Rows);
        Assert.All(table.Rows, row => Assert.False(string.IsNullOrWhiteSpace(row.Source)));
        Assert.All(table.Rows, row => Assert.True(Enum.IsDefined(row.Status)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_column_holds_numbers_throughout_or_no_unit(string name)
    {
        var table = TableCatalog.Tables[name];
        foreach (var column in table.Columns.Where(c => TableColumns.HasUnit(c)))
        {
            Assert.All(table.Rows, row => _ = row.OptionalNumber(column));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_two_rows_say_the_same_thing_twice(string name)
    {
        var table = TableCatalog.Tables[name];
        var keys = TableColumns.KeysOf(table);
        var twice = table.Rows.GroupBy(row => string.Join(" | ", keys.Select(k => row.OptionalText(k))), StringComparer.OrdinalIgnoreCase)
            .Where(g => g.Count() > 1).Select(g => g.Key);
        Assert.Empty(twice);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Recalled_cells_are_named_and_make_the_row_memory(string name)
    {
        var table = TableCatalog.Tables[name];
        if (!table.Has("memory_columns"))
        {
            return;
        }

        foreach (var row in table.Rows)
        {
            var recalled = row.OptionalText("memory_columns")?.Split(' ') ?? [];
            Assert.Equal(recalled.Length > 0, row.Status == ValueStatus.Memory);
            Assert.All(recalled, column => _ = row.Text(column));
        }
    }

    [Fact]
    public void A_prefix_finds_all_tables_that_begin_with_it_and_a_whole_name_only_its_own()
    {
        Assert.Equal("threads-metric threads-unified", string.Join(' ', TableCatalog.Tables.Find("Threads")));
        Assert.Equal("handles", Assert.Single(TableCatalog.Tables.Find("handles")));
        Assert.Empty(TableCatalog.Tables.Find("thraeds"));
    }

    [Fact]
    public void A_name_that_is_no_table_gets_the_nearest_names()
    {
        Assert.Equal("friction", TableCatalog.Tables.Nearest("fricton")[0]);
        var error = Assert.Throws<ArgumentException>(() => TableCatalog.Tables["fricton"]);
        Assert.StartsWith("there is no table 'fricton'; the nearest names are friction", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_designation_finds_its_row_and_its_fine_pitches()
    {
        var found = TableCatalog.Tables["threads-metric"].Where("m24").Select(r => r.Key);
        Assert.Equal("M24 M24x1.5 M24x2", string.Join(' ', found));
    }

    [Fact]
    public void The_readers_list_in_the_folder_names_every_table_and_its_title()
    {
        var listed = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Tables", "README.md"))
            .Where(line => line.StartsWith("- `", StringComparison.Ordinal));
        var tables = TableCatalog.Tables.Names.Select(n => $"- `{n}`: {TableCatalog.Tables[n].Title}");
        Assert.Equal(string.Join('\n', tables), string.Join('\n', listed));
    }

    [Fact]
    public void A_table_is_read_once() => Assert.Same(TableCatalog.Tables["grades"], TableCatalog.Tables["grades"]);

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_file_is_as_the_writer_writes_it(string name)
    {
        using var stream = typeof(TableCatalog).Assembly.GetManifestResourceStream($"tables/{name}.csv")!;
        using var reader = new StreamReader(stream);
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        TableWriter.Write(TableCatalog.Tables[name], writer);
        Assert.Equal(reader.ReadToEnd(), writer.ToString());
    }
}
