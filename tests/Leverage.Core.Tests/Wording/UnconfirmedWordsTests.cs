using FsCheck.Xunit;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Tests.Assessments;
using Leverage.Threads;

namespace Leverage.Tests.Wording;

/// <summary>A recalled or judged row never gets into an answer without its mark: the tables' own status decides.</summary>
[Properties(Arbitrary = [typeof(SizedValues)], MaxTest = 300)]
public sealed class UnconfirmedWordsTests
{
    [Property]
    public void Whatever_row_an_answer_rests_on_is_told_where_it_is_unconfirmed_and_only_there(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { } a)
        {
            return;
        }

        string told = string.Join('\n', UnconfirmedWords.Of(a, UnitStyle.Metric));
        Told(told, "condition", "conditions", a.Setup.Fastener.Condition.Key, true);
        Told(told, "stance", "stances", a.Setup.Hands.Stance.Key, true);
        Told(told, "handle", "handle-friction", a.Setup.GripWords, a.Setup.Tube is not null);
        bool brake = a.Setup.Hold?.By.Contains(Restraint.Brake) ?? false;
        Assert.Equal(brake, told.Contains("brake that just meets its approval", StringComparison.Ordinal));
        Assert.All(a.Links, link => Assert.Equal(!link.Limit.Confirmed, told.Contains($"limit of {PartWords.Name(link.Limit, UnitStyle.Metric)} (", StringComparison.Ordinal)));
    }

    [Property]
    public void A_link_out_of_a_recalled_row_or_an_assumed_bar_is_marked(Places places)
    {
        if (Judged(AnyRequest.From(places)) is not { } a)
        {
            return;
        }

        var assumed = a.Setup.Assumed.Where(one => one.Status.IsUnconfirmed()).Select(one => one.What).ToList();
        foreach (LinkLimit link in a.Links.Select(link => link.Limit))
        {
            bool sure = link.Kind switch
            {
                LinkKind.Square or LinkKind.Adapter or LinkKind.FlexPin => false,
                LinkKind.Bar => !assumed.Contains("bar") && !assumed.Contains("bar yield"),
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
            var request = Asked.AxleNut with { Drive = row.Key, BarDiameter = null, Overlap = null };
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
                string told = string.Join('\n', UnconfirmedWords.Of(thread, grade, new(0.1, 0.14, 0.2)));
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
        Assert.Contains("grade 8.8 (memory)", UnconfirmedWords.Of(thread, recalled, new(0.1, 0.14, 0.2)));
    }

    private static void Told(string told, string what, string table, string key, bool used)
    {
        bool unconfirmed = TableCatalog.Tables[table].Rows.Any(row => row.Key == key && row.Status.IsUnconfirmed());
        Assert.Equal(used && unconfirmed, told.Split('\n').Any(line => line.StartsWith($"{what} {key} (", StringComparison.Ordinal)));
    }

    private static LooseningAssessment? Judged(LooseningRequest request)
    {
        try
        {
            return Asked.Judged(request);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
