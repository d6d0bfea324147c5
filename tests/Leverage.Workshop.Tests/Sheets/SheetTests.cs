using System.Text.RegularExpressions;
using System.Xml.Linq;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Tests.Jobs;

namespace Leverage.Workshop.Tests.Sheets;

public static partial class SheetTests
{
    private const string Svg = "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"><g/></svg>\n";
    private static readonly JobPlan Demo = JobPlanner.Plan(JobReader.Read(JobText.Demo("job.toml")));

    [Fact]
    public static void Every_task_fastener_torque_and_part_stands_on_the_sheet()
    {
        string html = HtmlSheet.Write(JobSheet.Of(Demo, UnitStyle.Metric, []));

        Assert.All(Demo.Tasks, task => Assert.Contains(task.Task.Name, html, StringComparison.Ordinal));
        Assert.Equal(5 * Demo.Job.Fasteners.Count, Regex.Count(html, "<input[^>]*aria-label=\"[^\"]*: (?:loosened|photographed|bagged|torqued|marked)\""));
        Assert.All(Demo.Parts, part => Assert.Contains(part.Part, html, StringComparison.Ordinal));
        Assert.Contains("380\u00a0N·m".Replace("\u00a0", "&#xA0;", StringComparison.Ordinal), html, StringComparison.Ordinal);
    }

    [Fact]
    public static void What_a_wheel_holds_gets_its_full_torque_on_the_ground_and_its_book_is_not_called_a_misreading()
    {
        foreach (PlannedTightening planned in Demo.Refit)
        {
            bool wheel = planned.Fastener.Wheel is not null;
            Assert.Equal(wheel, RefitPhrases.Order(planned, UnitStyle.Metric).Contains("full torque on the ground, chocked; on stands only snug"));
            Assert.True(!wheel || !RefitPhrases.Believable(planned).Any(line => line.Contains("misread", StringComparison.Ordinal)));
        }

        Assert.Contains(Demo.Refit, planned => planned.Fastener.Wheel is not null);
    }

    [Fact]
    public static void The_page_leads_nowhere_and_runs_nothing()
    {
        string html = HtmlSheet.Write(JobSheet.Of(Demo, UnitStyle.Metric, [new SheetDrawing(Svg, "a drawing")]));

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("(?:src|href)=|url\\(|@import", html);
        Assert.DoesNotContain("<?xml", html, StringComparison.Ordinal);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
    }

    [Fact]
    public static void Its_elements_nest_and_close()
    {
        string html = HtmlSheet.Write(JobSheet.Of(Demo, UnitStyle.Us, [new SheetDrawing(Svg, "a drawing")]));
        string xml = VoidElement().Replace(html["<!DOCTYPE html>".Length..], "$0/");

        XDocument page = XDocument.Parse(xml);
        XElement[] rows = [.. page.Descendants("tr")];
        Assert.All(page.Descendants("table"), table => Assert.Single(
            table.Descendants("tr").Select(row => row.Elements().Count()).Append(table.Descendants("col").Count()).Distinct()));
        Assert.True(rows.Length > 3 * Demo.Job.Fasteners.Count);
        Assert.All(page.Descendants("colgroup"), group => Assert.InRange(
            group.Elements().Sum(col => int.Parse(((string)col.Attribute("style")!)[6..^1], System.Globalization.CultureInfo.InvariantCulture)), 98, 100));
    }

    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("\"><script>alert(1)</script>")]
    [InlineData("a | b * c _ d ` e [f](g) # h & <i>")]
    public static void A_name_stays_a_name_whatever_is_in_it(string name)
    {
        Job job = Demo.Job with
        {
            Title = name,
            Note = name,
            Fasteners = [Demo.Job.Fasteners[0] with { Name = name, Place = name, NewPart = name, Note = name }],
            Tasks = [],
        };
        Sheet sheet = JobSheet.Of(JobPlanner.Plan(job), UnitStyle.Metric, []);

        string html = HtmlSheet.Write(sheet);
        Assert.DoesNotMatch("<(?:img|script|i>)", html.Replace("<i></i>", "", StringComparison.Ordinal));
        string xml = VoidElement().Replace(html["<!DOCTYPE html>".Length..], "$0/");
        Assert.Equal(name, XDocument.Parse(xml).Descendants("h1").Single().Value.Replace('\u00a0', ' '));
        Assert.DoesNotMatch(@"(?<!\\)[<>|*_`\[\]#](?! )(?=alert|img|script|f\]|i>)", MarkdownSheet.Write(sheet));
    }

    [Fact]
    public static void A_drawing_that_could_run_something_is_refused() =>
        Assert.Throws<ArgumentException>(() => HtmlSheet.Write(JobSheet.Of(
            Demo, UnitStyle.Metric, [new SheetDrawing("<svg><script>x</script></svg>", "no")])));

    [Fact]
    public static void In_us_units_no_metric_unit_of_an_answer_is_left()
    {
        string text = MarkdownSheet.Write(JobSheet.Of(Demo, UnitStyle.Us, []));

        Assert.Contains("lbf·ft", text, StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", text, StringComparison.Ordinal);
    }

    [Fact]
    public static void Markdown_has_a_table_cell_for_every_column()
    {
        string[] lines = MarkdownSheet.Write(JobSheet.Of(Demo, UnitStyle.Metric, [])).Split('\n');

        Assert.All(lines.Where(line => line.StartsWith("| ", StringComparison.Ordinal)), line =>
            Assert.Contains(Unescaped().Count(line) - 1, (int[])[5, 6]));
    }

    [Fact]
    public static void The_same_job_gives_the_same_bytes()
    {
        JobPlan again = JobPlanner.Plan(JobReader.Read(JobText.Demo("job.toml")));

        Assert.Equal(
            HtmlSheet.Write(JobSheet.Of(Demo, UnitStyle.Metric, [])), HtmlSheet.Write(JobSheet.Of(again, UnitStyle.Metric, [])));
    }

    [Fact]
    public static void The_list_for_a_spreadsheet_has_a_line_for_every_fastener()
    {
        var text = new StringWriter();
        JobCsv.Write(Demo, text);

        Assert.Equal(Demo.Job.Fasteners.Count + 1, text.ToString().TrimEnd().Split('\n').Length);
        Assert.StartsWith("step,fastener,place,", text.ToString(), StringComparison.Ordinal);
    }

    [GeneratedRegex("<(?:meta|input|col)\\b[^>]*(?=>)", RegexOptions.None, 1000)]
    private static partial Regex VoidElement();

    [GeneratedRegex(@"(?<!\\)\|", RegexOptions.None, 1000)]
    private static partial Regex Unescaped();
}
