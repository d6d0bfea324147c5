using System.Reflection;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Proof;

public sealed class FormulaCoverageTests
{
    private static readonly Dictionary<string, CheckOutcome[]> ByFormula = Prover.Run().SelectMany(t => t.Outcomes)
        .GroupBy(o => o.Row.Formula.Name, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);

    /// <summary>A bound, not a number: it has a law and no printed value.</summary>
    private static readonly string[] LawOnly = ["TubeSection.IsCompact"];

    public static TheoryData<string> Formulas => [.. FormulaMethod.All().Select(f => f.Name)];

    public static TheoryData<string> Checked => [.. CheckedFormulas.All.Select(f => f.Name)];

    public static TheoryData<string, string> Numbers
    {
        get
        {
            var numbers = new TheoryData<string, string>();
            foreach (var formula in FormulaMethod.All().Where(f => ByFormula.ContainsKey(f.Name)))
            {
                foreach (var (_, _, name) in formula.Numbers())
                {
                    numbers.Add(formula.Name, name);
                }
            }

            return numbers;
        }
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    [MemberData(nameof(Checked))]
    public void Every_formula_stands_on_two_independent_sources_or_on_one_and_a_law(string formula)
    {
        if (formula == "PrintedUnit.Coherent")
        {
            Assert.InRange(Evidence(formula).Length, 2, int.MaxValue);
            return;
        }

        bool law = Laws.Tests.ContainsKey(formula);
        Assert.True(
            Evidence(formula).Length >= 2 || law && (ByFormula.ContainsKey(formula) || LawOnly.Contains(formula)),
            $"{formula} stands on [{string.Join("; ", Evidence(formula))}] and {(law ? "a law" : "no law")}");
    }

    [Fact]
    public void The_list_of_laws_names_formulas_and_tests_that_exist()
    {
        var formulas = FormulaMethod.All().Select(f => f.Name).Concat(CheckedFormulas.All.Select(f => f.Name))
            .ToHashSet(StringComparer.Ordinal);
        var tests = typeof(Laws).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods().Where(IsTest).Select(m => $"{t.Name}.{m.Name}")).ToHashSet(StringComparer.Ordinal);
        Assert.All(Laws.Tests, law =>
        {
            Assert.Contains(law.Key, formulas);
            Assert.Contains(law.Value, tests);
        });
        Assert.All(LawOnly, formula => Assert.False(ByFormula.ContainsKey(formula), formula));
    }

    [Theory]
    [MemberData(nameof(Checked))]
    public void Two_percent_either_way_breaks_a_check(string formula)
    {
        if (formula == "PrintedUnit.Coherent")
        {
            return;
        }

        var firm = ByFormula[formula].Where(o => o.Row.Status != ValueStatus.Memory).ToArray();
        Assert.Contains(firm, o => !(o with { Value = o.Value * 1.02 }).Holds);
        Assert.Contains(firm, o => !(o with { Value = o.Value * 0.98 }).Holds);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_formula_refuses_what_is_no_finite_number(string formula, string number)
    {
        var method = FormulaMethod.All().Single(f => f.Name == formula);
        var inputs = ByFormula[formula][0].Row.Inputs;
        foreach (double value in (ReadOnlySpan<double>)[double.NaN, double.PositiveInfinity, double.NegativeInfinity])
        {
            var error = Record.Exception(() => method.Call(inputs, number, value));
            Assert.True(error is ArgumentOutOfRangeException, FormattableString.Invariant(
                $"{formula} with {number} {value}: {error?.GetType().Name ?? "gave a result"}"));
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_row_gives_each_number_in_a_unit_of_its_kind(string formula, string number)
    {
        var method = FormulaMethod.All().Single(f => f.Name == formula);
        var (parameter, field, name) = method.Numbers().Single(n => n.Name == number);
        string kind = FormulaMethod.UnitOf(name)?.Kind ?? "number";
        string input = FormulaMethod.InputName(parameter, field);
        foreach (var row in ByFormula[formula].Select(o => o.Row))
        {
            foreach (var (_, _, unit) in row.Inputs.Given.Where(g => g.Name == input && g.Unit.Length > 0))
            {
                Assert.True(PrintedUnit.Kind(unit) == kind, $"{row.Id}: {input} in {unit}");
            }
        }
    }

    /// <summary>Sources that do not lean on each other: each book or standard, each engine. Hand and memory do not count.</summary>
    private static string[] Evidence(string formula) => ByFormula.TryGetValue(formula, out CheckOutcome[]? rows)
        ? [.. rows.Where(o => o.Row.Status is ValueStatus.Published or ValueStatus.Engine)
            .Select(o => o.Row.Source.Split(';')[0]).Distinct(StringComparer.Ordinal)]
        : [];

    private static bool IsTest(MethodInfo method) =>
        method.GetCustomAttributes().Any(a => a.GetType().Name is "FactAttribute" or "TheoryAttribute" or "PropertyAttribute");
}
