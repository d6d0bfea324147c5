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
        Assert.All(Demo.Job.Fasteners, fastener => Assert.Contains(fastener.Name.Split(", ")[0], html, StringComparison.Ordinal));
        Assert.All(Demo.Parts, part => Assert.Contains(part.Part, html.Replace("&#xA0;", " ", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.Contains("<b>380&#xA0;N·m</b>", html, StringComparison.Ordinal);
    }

    [Fact]
    public static void Alike_fasteners_left_and_right_share_a_row_with_their_count()
    {
        string text = MarkdownSheet.Write(JobSheet.Of(Demo, UnitStyle.Metric, []));

        Assert.Contains("☐ **10 × wheel nuts, left and right**", text, StringComparison.Ordinal);
        Assert.Contains("☐ **8 × U-bolt nuts, left and right**", text, StringComparison.Ordinal);
        Assert.Contains("new: 8 × locknut M12×1.25", text, StringComparison.Ordinal);
    }

    [Fact]
    public static void What_is_to_see_to_before_stands_on_top() => Assert.Equal(
        ["At the start", "Evening before", "Borrow or buy", "Lay out", "Supplies", "Photograph"],
        Preparation.Lines(Demo, UnitStyle.Metric).Select(line => line.Label));

    [Fact]
    public static void A_left_hand_one_never_shares_a_row_with_a_right_hand_one()
    {
        JobFastener one = Demo.Job.Fasteners[0] with { Wheel = null };
        Job job = Demo.Job with { Fasteners = [one, one with { Name = "wheel nuts, right", LeftHand = true }], Tasks = [] };
        string text = MarkdownSheet.Write(JobSheet.Of(JobPlanner.Plan(job), UnitStyle.Metric, []));

        Assert.Contains("☐ **5 × wheel nuts, right**<br>**LEFT-HAND: loosen clockwise**", text, StringComparison.Ordinal);
        Assert.Contains("☐ **5 × wheel nuts, left**<br>M12", text, StringComparison.Ordinal);
        Assert.Contains("**LEFT-HAND: tighten anticlockwise**", text, StringComparison.Ordinal);
    }

    [Fact]
    public static void What_has_rusted_is_soaked_the_evening_before_and_what_is_bought_is_a_thing()
    {
        IReadOnlyList<SheetLine> lines = Preparation.Lines(Demo, UnitStyle.Metric);
        string soak = lines.Single(line => line.Label == "Evening before").Words;

        Assert.Contains("backing-plate nuts, left and right", soak, StringComparison.Ordinal);
        Assert.DoesNotContain("axle-shaft nut, left and right", soak, StringComparison.Ordinal);
        Assert.DoesNotContain("wheel nuts", soak, StringComparison.Ordinal);
        Assert.Equal("anti-seize, axle oil, brake cleaner, brake fluid, gearbox oil, oil for threads", lines.Single(line => line.Label == "Supplies").Words);
    }

    [Fact]
    public static void What_may_twist_off_gets_a_plan_for_the_stud_and_never_more_strength()
    {
        PlannedLoosening exhaust = Demo.Loosening.Single(planned => planned.Fastener.Name == "exhaust flange nuts");

        Assert.Matches("twists off .* Clean the thread, soak it overnight; heat the nut to red, .* Expect to split or drill it", FastenerPhrases.Note(exhaust, UnitStyle.Metric));
        Assert.DoesNotContain(Demo.Loosening, planned => FastenerPhrases.Note(planned, UnitStyle.Metric) is var note
            && note.Contains("Expect to", StringComparison.Ordinal) && note.Contains("second person", StringComparison.Ordinal));
    }

    [Fact]
    public static void A_brake_pipe_is_not_heated() => Assert.All(
        Demo.Loosening.Where(planned => planned.Fastener.On == "brake"),
        planned => Assert.DoesNotContain("heat", FastenerPhrases.Note(planned, UnitStyle.Metric), StringComparison.OrdinalIgnoreCase));

    [Fact]
    public static void There_is_room_to_write_what_came_what_held_and_what_broke()
    {
        SheetTable work = JobSheet.Of(Demo, UnitStyle.Metric, []).Blocks.OfType<SheetTable>().First();

        Assert.Equal(["came", "held", "R S"], work.Columns.Skip(5).Take(3).Select(column => column.Name));
        Assert.All(work.Groups.SelectMany(group => group.Rows), row => Assert.Equal(CellKind.Blank, row.Cells[4].Kind));
    }

    [Fact]
    public static void What_a_wheel_holds_is_snug_while_it_hangs_and_its_book_is_not_called_a_misreading()
    {
        RefitFit[] wheels = [.. Demo.RefitSteps.SelectMany(step => step.Fits).Where(fit => fit.Tightening.Fastener.Wheel is not null)];

        Assert.Equal(4, wheels.Count(fit => fit.Stage == RefitStage.Snug));
        Assert.DoesNotContain(wheels, fit => RefitPhrases.Torque(fit, UnitStyle.Metric).Any(line => line.Contains("misread", StringComparison.Ordinal)));
    }

    [Fact]
    public static void Sizes_the_chest_lacks_are_told_in_one_line()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read("""
            title = "x"
            at_start = ["parking break", "handbrake"]
            [[fasteners]]
            name = "a"
            torque = "20Nm"
            hex = "18mm"
            [[fasteners]]
            name = "b"
            torque = "20Nm"
            hex = "13mm"
            [[fasteners]]
            name = "c"
            torque = "300Nm"
            hex = "1-1/8in"
            [[tasks]]
            name = "t"
            takes_off = ["a", "b"]

            """ + JobText.Chest));
        IReadOnlyList<SheetLine> lines = Preparation.Lines(plan, UnitStyle.Metric);

        Assert.Contains("sockets missing: 13, 18 mm, 1-1/8 in", lines.Single(line => line.Label == "Borrow or buy").Words, StringComparison.Ordinal);
        Assert.Contains("torque wrench for 300 N·m", lines.Single(line => line.Label == "Borrow or buy").Words, StringComparison.Ordinal);
        Assert.Equal(
            "\"parking break\" holds nothing: write \"parking brake\" if that is meant. \"handbrake\" holds nothing: write \"parking brake\" if that is meant. In no task: c.",
            lines.Single(line => line.Label == "Watch").Words);
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
        Assert.All(page.Descendants("table"), table => Assert.Equal([table.Descendants("col").Count()], Widths(table).Distinct()));
        Assert.True(rows.Length > Demo.Job.Fasteners.Count);
        Assert.All(page.Descendants("colgroup"), group => Assert.InRange(
            group.Elements().Sum(col => int.Parse(((string)col.Attribute("style")!)[6..^1], System.Globalization.CultureInfo.InvariantCulture)), 99, 100));
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

    /// <summary>How many columns each row of a table fills, cells of rows above that reach into it counted.</summary>
    private static IEnumerable<int> Widths(XElement table)
    {
        foreach (XElement body in table.Elements().Where(element => element.Name.LocalName is "thead" or "tbody"))
        {
            int below = 0;
            foreach (XElement row in body.Elements("tr"))
            {
                yield return row.Elements().Sum(cell => (int?)cell.Attribute("colspan") ?? 1) + (below > 0 ? 1 : 0);
                below = Math.Max(below, row.Elements().Max(cell => (int?)cell.Attribute("rowspan") ?? 1)) - 1;
            }
        }
    }

    [GeneratedRegex("<(?:meta|input|col)\\b[^>]*(?=>)", RegexOptions.None, 1000)]
    private static partial Regex VoidElement();
}
