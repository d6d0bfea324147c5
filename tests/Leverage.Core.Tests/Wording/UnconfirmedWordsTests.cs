using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Tests.Assessments;
using Leverage.Threads;
using Leverage.Wording;

namespace Leverage.Tests.Wording;

/// <summary>A recalled or judged row never gets into an answer without its mark: the tables' own status decides.</summary>
[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 300)]
public sealed class UnconfirmedWordsTests
{
    [Property]
    public void A_figure_out_of_an_unconfirmed_row_is_marked_and_only_there(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { } a)
        {
            return;
        }

        IReadOnlyList<FigureLine> takes = LooseningFigures.Takes(a, UnitStyle.Metric);
        Marked(takes[0].Value, "conditions", a.Setup.Fastener.Condition.Key);
        Marked(takes[1].Note, "stances", a.Setup.Hands.Stance.Key);
        string held = string.Concat(LooseningFigures.Around(a, UnitStyle.Metric).Where(line => line.Label == "Wheel held to").Select(line => line.Note));
        Assert.Equal(a.Hold?.Capacity.Parts.Count(part => part.Status.IsUnconfirmed()) ?? 0, held.Count(letter => letter == '*'));
    }

    [Property]
    public void A_link_out_of_a_recalled_row_or_an_assumed_bar_is_marked(Draws draws)
    {
        if (Judged(AnyRequest.From(draws)) is not { } a)
        {
            return;
        }

        var assumed = a.Setup.Assumed.Where(one => one.Status.IsUnconfirmed()).Select(one => one.Kind).ToList();
        foreach (LinkLimit link in a.Links.Select(link => link.Limit))
        {
            bool sure = link.Kind switch
            {
                LinkKind.Square or LinkKind.Adapter or LinkKind.Extension or LinkKind.FlexPin or LinkKind.Corners => false,
                LinkKind.Stud => !a.Setup.ThreadBySight,
                LinkKind.Bar => !assumed.Contains(AssumptionKind.BarDiameter) && !assumed.Contains(AssumptionKind.BarYield),
                _ => true,
            };
            Assert.Equal(sure, link.Confirmed);
        }
    }

    [Fact]
    public void The_tool_s_own_rows_are_all_in_print_so_no_hexagon_needs_a_mark() =>
        Assert.DoesNotContain(TableCatalog.Tables["tool-torques"].Rows, row => row.Status != ValueStatus.Published);

    [Fact]
    public void What_a_handle_row_gives_is_marked_in_what_is_assumed()
    {
        foreach (TableRow row in TableCatalog.Tables["handles"].Rows)
        {
            var request = SampleRequests.AxleNut with { Drive = row.Key, BarDiameter = null, Overlap = null };
            string assumed = AssumedWords.Brief(LooseningDefaults.Complete(request with { Tube = request.Tube! with { Outside = null, Wall = null, Bore = UnitsNet.Length.FromMillimeters(60) } }).Assumed, UnitStyle.Metric);
            Assert.Contains($"bar {UnitStyle.Trim(row.Number("diameter_mm"), 1)} mm*", assumed, StringComparison.Ordinal);
            Assert.Contains("bar yield 900 MPa*", assumed, StringComparison.Ordinal);
            Assert.Contains("m*", assumed[assumed.IndexOf("tube pushed on", StringComparison.Ordinal)..], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_bolt_grade_at_every_thread_is_in_print_or_told()
    {
        foreach (ScrewThread thread in ThreadCatalog.Family(ThreadFamily.Metric).Concat(ThreadCatalog.Family(ThreadFamily.Unified)))
        {
            foreach (Grade grade in GradeCatalog.BoltsFor(thread))
            {
                string told = string.Join('\n', UnconfirmedWords.Of(grade, new(0.1, 0.14, 0.2)));
                Assert.Equal(grade.Status.IsUnconfirmed(), told.Contains($"grade {grade.Name}", StringComparison.Ordinal));
                Assert.Contains("friction 0.1 to 0.2 (judgement)", told, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Nothing_unconfirmed_is_told_of_a_recalled_grade_as_sure()
    {
        ScrewThread thread = ThreadCatalog.Named("M12");
        Grade recalled = GradeCatalog.Bolt("8.8", thread) with { Status = ValueStatus.Memory };
        Assert.Contains("grade 8.8 (memory)", UnconfirmedWords.Of(recalled, new(0.1, 0.14, 0.2)));
    }

    private static void Marked(string figure, string table, string key)
    {
        TableRow row = Assert.Single(TableCatalog.Tables[table].Rows, row => row.Key == key);
        Assert.Equal(row.Status.IsUnconfirmed(), figure.EndsWith('*'));
    }

    private static LooseningAssessment? Judged(LooseningRequest request)
    {
        try
        {
            return SampleRequests.Judged(request);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
