using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Tests.Jobs;

namespace Leverage.Workshop.Tests.Sheets;

/// <summary>What a row of the sheet tells of a nut that is safe to pull: what comes before, and what if it stays tight.</summary>
public static class FastenerPhrasesTests
{
    private static readonly JobPlan Demo = JobPlanner.Plan(JobReader.Read(JobText.Demo("job.toml")));

    public static TheoryData<string> Gos => [.. Demo.Loosening.Where(planned => planned is { Choice: not null, Verdict: Verdict.Go }).Select(planned => planned.Fastener.Name)];

    [Theory]
    [MemberData(nameof(Gos))]
    public static void What_may_well_stay_tight_says_so_and_what_then_and_what_surely_comes_says_nothing(string name)
    {
        PlannedLoosening planned = Demo.Loosening.Single(one => one.Fastener.Name == name);
        string note = FastenerPhrases.Note(planned, UnitStyle.Metric);
        bool may = planned.Assessment.Judgement.ComesLoose < 0.9;
        Assert.Equal(may, note.Contains("If it stays tight: ", StringComparison.Ordinal));
        Assert.Equal(may, FastenerPhrases.Takes(planned, UnitStyle.Metric).Any(line => line.EndsWith(" in 100", StringComparison.Ordinal)));
        Assert.Equal(planned.Fastener.Castle, note.StartsWith("Straighten the split pin and pull it out.", StringComparison.Ordinal));
        Assert.DoesNotContain("tight: straighten", note, StringComparison.Ordinal);
    }

    /// <summary>The tubes of the chest come second: the bar alone is safe and likely, and what broke stays broken.</summary>
    [Fact]
    public static void A_bar_that_is_safe_and_likely_comes_before_the_tube_that_is_likelier()
    {
        PlannedLoosening nut = Demo.Loosening.Single(planned => planned.Fastener.Name == "axle-shaft nut, right");
        Assert.Null(nut.Choice!.SetUp.Set.Tube);
        Assert.Matches(@"If it stays tight: take jack handle \+ long bar \+ three-quarter set, tube \d+ mm on\.$", FastenerPhrases.Note(nut, UnitStyle.Metric));
    }
}
