using System.Text.RegularExpressions;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Tests.Jobs;

namespace Leverage.Workshop.Tests.Sheets;

/// <summary>The sheet as Markdown and as a list for a spreadsheet.</summary>
public static partial class SheetTextTests
{
    private static readonly JobPlan Demo = JobPlanner.Plan(JobReader.Read(JobText.Demo("job.toml")));

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
            Assert.Contains(Unescaped().Count(line) - 1, (int[])[5, 9]));
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
        JobCsv.Write(Demo, text, UnitStyle.Us);

        Assert.Equal(Demo.Job.Fasteners.Count + 1, text.ToString().TrimEnd().Split('\n').Length);
        Assert.StartsWith("\uFEFFfastener,place,", text.ToString(), StringComparison.Ordinal);
        Assert.Contains(",refit [lbf·ft],", text.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", text.ToString(), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"(?<!\\)\|", RegexOptions.None, 1000)]
    private static partial Regex Unescaped();
}
