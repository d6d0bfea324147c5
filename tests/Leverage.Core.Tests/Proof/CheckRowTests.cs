using System.Globalization;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Proof;

public sealed class CheckRowTests
{
    private static readonly Dictionary<string, CheckOutcome> Outcomes = Prover.Run()
        .SelectMany(t => t.Outcomes).ToDictionary(o => o.Row.Id, StringComparer.Ordinal);

    public static TheoryData<string> Rows => [.. Outcomes.Keys];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_formula_gives_the_printed_number(string id)
    {
        var outcome = Outcomes[id];
        var row = outcome.Row;
        Assert.True(outcome.Holds, FormattableString.Invariant(
            $"{row.Formula.Name} gives {outcome.Value:G7} {row.Unit} ({outcome.DeviationPercent:+0.000;-0.000} %), ")
            + FormattableString.Invariant($"{row.Source} prints {row.Expected}, tolerance {row.Tolerance:G3}"));
    }

    [Fact]
    public void Every_id_stands_once_over_all_files()
    {
        var ids = TableCatalog.Checks.Names.SelectMany(n => TableCatalog.Checks[n].Rows).Select(r => r.Key);
        var twice = ids.GroupBy(id => id, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1);
        Assert.Empty(twice.Select(g => g.Key));
    }

    [Fact]
    public void A_tolerance_wider_than_the_print_says_why()
    {
        var wider = Prover.Topics.SelectMany(t => TableCatalog.Checks[t].Rows)
            .Where(r => r.OptionalText("tolerance") is not null);
        Assert.All(wider, r => Assert.True(r.OptionalText("note") is not null, r.Key));
    }

    [Fact]
    public void More_than_a_thousand_rows_are_published()
    {
        Assert.InRange(Outcomes.Values.Count(o => o.Row.Status == ValueStatus.Published), 1000, int.MaxValue);
    }

    [Fact]
    public void A_recalled_number_is_never_the_only_check_of_a_formula()
    {
        var seen = Outcomes.Values.Where(o => o.Row.Status != ValueStatus.Memory)
            .Select(o => o.Row.Formula.Name).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(CheckedFormulas.All, f => !seen.Contains(f.Name));
    }

    [Fact]
    public void A_row_kept_as_a_disagreement_disagrees_as_far_as_it_says_and_says_why()
    {
        var table = TableCatalog.Checks[Prover.DisagreementsFile];
        foreach (var (row, outcome) in table.Rows.Zip(Prover.Disagreements().Outcomes))
        {
            Assert.False(outcome.Holds, row.Key);
            Assert.NotEmpty(outcome.Row.Note);
            double stated = double.Parse(row.Text("deviation").TrimEnd('%'), CultureInfo.InvariantCulture);
            double rounding = 0.06 + Math.Abs(stated) * 0.06;
            Assert.InRange(outcome.DeviationPercent, stated - rounding, stated + rounding);
        }
    }

    [Fact]
    public void A_printed_unit_is_of_the_kind_the_formula_gives()
    {
        foreach (var row in Outcomes.Values.Select(o => o.Row).Where(r => r.Formula.Unit.Length > 0))
        {
            bool divided = row.Inputs.Given.Any(g => g.Name == "per");
            Assert.True(divided || PrintedUnit.Kind(row.Formula.Unit) == PrintedUnit.Kind(row.Unit), row.Id);
        }
    }
}
