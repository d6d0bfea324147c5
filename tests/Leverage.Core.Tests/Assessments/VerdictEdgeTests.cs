using FsCheck.Xunit;
using Leverage.Assessments;

namespace Leverage.Tests.Assessments;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class VerdictEdgeTests
{
    private static readonly VerdictFacts Calm = new() { ComesLoose = 0.9, Pulled = true, ToolJudged = true };

    /// <summary>Each threshold with its figure on the edge, where it is silent, and just past it.</summary>
    public static TheoryData<VerdictFacts, Safe, Comes, Verdict> Edges => new()
    {
        { Calm, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { ToolGives = 0.02 }, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { ToolGives = 0.0201 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { ToolGives = 0.10 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { ToolGives = 0.1001 }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { ToolGives = 0.04, SlidesOff = 0.04, WheelTurns = 0.021 }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { WheelTurns = 0.1001 }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { SlidesOff = 0.0201 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { StudTwistsOff = 0.05 }, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { StudTwistsOff = 0.0501 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { StudTwistsOff = 0.15, CornersRound = 0.10 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { StudTwistsOff = 0.15, CornersRound = 0.1001 }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { SlidesAsItTurns = 0.05 }, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { SlidesAsItTurns = 0.0501 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { HandsMs = 3 }, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { HandsMs = 3.01 }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { Stands = Safe.Care }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { Stands = Safe.No }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { Tube = Safe.Care }, Safe.Care, Comes.Likely, Verdict.Care },
        { Calm with { Tube = Safe.No }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { ComesLoose = 0.50 }, Safe.Yes, Comes.Likely, Verdict.Go },
        { Calm with { ComesLoose = 0.4999 }, Safe.Yes, Comes.Maybe, Verdict.Short },
        { Calm with { ComesLoose = 0.20 }, Safe.Yes, Comes.Maybe, Verdict.Short },
        { Calm with { ComesLoose = 0.1999 }, Safe.Yes, Comes.No, Verdict.Short },
        { Calm with { ComesLoose = 0.3, StudTwistsOff = 0.06 }, Safe.Care, Comes.Maybe, Verdict.Short },
        { Calm with { ComesLoose = 0.12, StudTwistsOff = 0.06, CornersRound = 0.06 }, Safe.Care, Comes.No, Verdict.Short },
        { Calm with { ComesLoose = 0.12, StudTwistsOff = 0.06, CornersRound = 0.0601 }, Safe.No, Comes.No, Verdict.Stop },
        { Calm with { ComesLoose = 0, StudTwistsOff = 0.05 }, Safe.Yes, Comes.No, Verdict.Short },
        { Calm with { ToolJudged = false }, Safe.NotJudged, Comes.Likely, Verdict.NotJudged },
        { Calm with { ToolJudged = false, StudTwistsOff = 0.3 }, Safe.No, Comes.Likely, Verdict.Stop },
        { Calm with { Pulled = false, ComesLoose = 0 }, Safe.NotJudged, Comes.NotJudged, Verdict.NotJudged },
    };

    [Theory]
    [MemberData(nameof(Edges))]
    public void A_threshold_speaks_past_its_edge_and_not_on_it(VerdictFacts facts, Safe safe, Comes comes, Verdict verdict)
    {
        Ruling ruling = VerdictOf.Of(facts);
        Assert.Equal((safe, comes, verdict), (ruling.Safe, ruling.Comes, ruling.Verdict));
    }

    [Fact]
    public void The_cause_that_weighs_is_named()
    {
        Assert.Equal(VerdictRules.WheelTurns, VerdictOf.Of(Calm with { ToolGives = 0.01, WheelTurns = 0.4 }).Stops);
        Assert.Equal(
            VerdictRules.ToolGives | VerdictRules.SlidesOff | VerdictRules.WheelTurns,
            VerdictOf.Of(Calm with { ToolGives = 0.05, SlidesOff = 0.05, WheelTurns = 0.05 }).Stops);
        Assert.Equal(VerdictRules.ToolGives | VerdictRules.SlidesOff, VerdictOf.Of(Calm with { ToolGives = 0.03, SlidesOff = 0.07 }).Cares);
        Assert.Equal(VerdictRules.SlidesOff, VerdictOf.Of(Calm with { ToolGives = 0.0299, SlidesOff = 0.07 }).Cares);
        Assert.Equal(VerdictRules.CornersRound, VerdictOf.Of(Calm with { CornersRound = 0.3, StudTwistsOff = 0.01 }).Stops);
        Assert.Equal(VerdictRules.ToolGives | VerdictRules.SlidesOff, VerdictOf.Of(Calm with { ToolGives = 0.05, SlidesOff = 0.06 }).Stops);
    }

    [Property]
    public void No_chance_of_harm_that_rises_makes_it_safer(Draws draws, Sized which, Sized by)
    {
        Func<Sized> next = draws.Reader();
        double Small() => next().Even(0, 0.2);
        VerdictFacts facts = Calm with
        {
            ToolGives = Small(),
            SlidesOff = Small(),
            WheelTurns = Small(),
            StudTwistsOff = Small(),
            CornersRound = Small(),
            SlidesAsItTurns = Small(),
        };
        double more = by.Even(0, 0.3);
        VerdictFacts worse = ((int)(which.Share * 6)) switch
        {
            0 => facts with { ToolGives = facts.ToolGives + more },
            1 => facts with { SlidesOff = facts.SlidesOff + more },
            2 => facts with { WheelTurns = facts.WheelTurns + more },
            3 => facts with { StudTwistsOff = facts.StudTwistsOff + more },
            4 => facts with { CornersRound = facts.CornersRound + more },
            _ => facts with { SlidesAsItTurns = facts.SlidesAsItTurns + more },
        };
        Assert.True(VerdictOf.Of(worse).Safe >= VerdictOf.Of(facts).Safe);
    }
}
