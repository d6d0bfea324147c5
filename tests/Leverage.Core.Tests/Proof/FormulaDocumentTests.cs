using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Leverage.Proof;

namespace Leverage.Tests.Proof;

public sealed partial class FormulaDocumentTests
{
    private static readonly Dictionary<string, XElement> Members = XDocument
        .Load(Path.ChangeExtension(typeof(Prover).Assembly.Location, ".xml")).Descendants("member")
        .ToDictionary(m => m.Attribute("name")!.Value, StringComparer.Ordinal);

    public static TheoryData<string> Formulas => FormulaCoverageTests.Formulas;

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_formula_says_where_it_is_valid_where_it_is_from_and_what_checks_it(string formula)
    {
        string[] lines = Remarks(formula).Split('\n', StringSplitOptions.TrimEntries);
        Assert.Contains(lines, l => l.StartsWith("Valid for: ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("Source: ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("Checked by: ", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_file_a_formula_is_checked_by_has_a_row_of_it(string formula)
    {
        if (formula == "TubeSection.IsCompact")
        {
            return;
        }

        var named = CheckFile().Matches(Remarks(formula)).Select(m => m.Groups["file"].Value).ToArray();
        Assert.NotEmpty(named);
        Assert.All(named, file => Assert.Contains(Prover.Run(file).Outcomes, o => o.Row.Formula.Name == formula));
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Every_number_that_goes_into_a_formula_names_its_unit(string formula)
    {
        foreach (var (parameter, field, name) in Method(formula).Numbers())
        {
            string text = Described(Method(formula).Method, parameter, field);
            string unit = FormulaMethod.UnitOf(name)?.Unit ?? string.Empty;
            bool named = unit.Length == 0 || Words(text).Contains(unit);
            Assert.True(named, $"{formula}, {name}: '{text}' does not name {unit}");
        }
    }

    [GeneratedRegex(@"shared/checks/(?<file>[a-z-]+)\.csv", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CheckFile();

    private static FormulaMethod Method(string formula) => FormulaMethod.All().Single(f => f.Name == formula);

    private static string Remarks(string formula) =>
        Document(Method(formula).Method).Element("remarks")?.Value ?? string.Empty;

    private static HashSet<string> Words(string text) =>
        text.Split([' ', ',', ';', ':', '.', '\n'], StringSplitOptions.RemoveEmptyEntries)
            .ToHashSet(StringComparer.Ordinal);

    private static string Described(MethodInfo method, ParameterInfo parameter, PropertyInfo? field) => field is null
        ? Param(Document(method), parameter.Name!)
        : Param(Members[$"T:{field.DeclaringType!.FullName}"], field.Name);

    private static string Param(XElement member, string name) =>
        member.Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value == name)?.Value ?? string.Empty;

    private static XElement Document(MethodInfo method)
    {
        string types = string.Join(',', method.GetParameters().Select(p => p.ParameterType.FullName));
        return Members[$"M:{method.DeclaringType!.FullName}.{method.Name}({types})"];
    }
}
