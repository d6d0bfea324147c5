using System.Text.RegularExpressions;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Tables;

/// <summary>The page about trust leaves out no model and no judgement.</summary>
public sealed partial class CredibilityTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Tables", "README.md"));

    /// <summary>Names in the first column of the list of judgements.</summary>
    private static readonly HashSet<string> Listed =
        [.. Lines.SkipWhile(line => line != "## Every judgement").Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('|')[1].Replace("`", "", StringComparison.Ordinal).Trim())];

    [Fact]
    public void Every_judged_row_of_a_table_is_listed()
    {
        foreach (string name in TableCatalog.Tables.Names)
        {
            var judged = TableCatalog.Tables[name].Rows.Where(row => row.Status == ValueStatus.Judgement).Select(row => $"tables/{name}: {row.Key}");
            Assert.Empty(judged.Except(Listed));
        }
    }

    [Fact]
    public void Every_row_listed_is_judged_in_its_table()
    {
        foreach (string[] parts in Listed.Where(one => one.StartsWith("tables/", StringComparison.Ordinal)).Select(one => one["tables/".Length..].Split(": ")))
        {
            Table table = TableCatalog.Tables[parts[0]];
            bool column = parts[1] == "every likely" && table.Rows.All(row => row.Text("likely_basis").Contains("judgement", StringComparison.Ordinal));
            Assert.True(column || table.Rows.Any(row => row.Key == parts[1] && row.Status == ValueStatus.Judgement), string.Join(": ", parts));
        }
    }

    [Fact]
    public void Every_value_a_comment_calls_a_judgement_is_listed_and_nothing_else_is()
    {
        var marked = JudgementMarks.InSources().ToHashSet(StringComparer.Ordinal);
        Assert.InRange(marked.Count, 30, 200);
        Assert.Empty(marked.Except(Listed));
        Assert.Empty(Listed.Where(one => !one.StartsWith("tables/", StringComparison.Ordinal)).Except(marked));
    }

    [Fact]
    public void Every_judgement_says_what_it_stands_for_and_what_would_replace_it()
    {
        var rows = Lines.SkipWhile(line => line != "## Every judgement").Where(line => line.StartsWith("| `", StringComparison.Ordinal));
        Assert.All(rows, row => Assert.All(row.Split('|')[1..4], cell => Assert.True(cell.Trim().Length > 2, row)));
    }

    [Fact]
    public void Every_formula_belongs_to_a_model_whose_limits_are_told()
    {
        string[][] models = [.. Lines.SkipWhile(line => !line.StartsWith("| model |", StringComparison.Ordinal)).Skip(2)
            .TakeWhile(line => line.StartsWith('|')).Select(line => line.Split('|')[1..^1])];
        Assert.All(models, cells => Assert.Equal(7, cells.Length));
        Assert.All(models.SkipLast(1), cells => Assert.All(cells, cell => Assert.False(string.IsNullOrWhiteSpace(cell), cells[0])));
        var told = models.SelectMany(cells => Quoted().Matches(cells[1]).Select(match => match.Groups["name"].Value)).ToHashSet(StringComparer.Ordinal);
        var formulas = CheckedFormulas.All.Select(formula => formula.Name.Split('.')[0]).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(formulas.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("`(?<name>[A-Za-z]+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Quoted();
}
