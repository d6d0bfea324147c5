using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.Workshop.Picking;

namespace Leverage.Workshop.Tests.Picking;

public sealed class StandingTests
{
    private static readonly Standing Middle = new(Verdict.Care, 50, 12, 80, 3);

    /// <summary>What beats the middle one, and by what, whatever is worse about it in later respects.</summary>
    public static TheoryData<Standing, Lead> Better => new()
    {
        { new Standing(Verdict.Go, 1, 1, 900, 9), Lead.Verdict },
        { new Standing(Verdict.Care, 51, 1, 900, 9), Lead.Chance },
        { new Standing(Verdict.Care, 50, 13, 900, 9), Lead.Margin },
        { new Standing(Verdict.Care, 50, 12, 79, 9), Lead.Effort },
        { new Standing(Verdict.Care, 50, 12, 80, 2), Lead.Pieces },
    };

    [Theory]
    [MemberData(nameof(Better))]
    public void Verdict_counts_before_chance_before_margin_before_effort_before_pieces(Standing better, Lead lead)
    {
        Assert.True(better < Middle);
        Assert.True(Middle > better);
        Assert.Equal(lead, better.Over(Middle));
    }

    [Fact]
    public void Equal_ones_keep_the_order_of_the_chest() => Assert.Equal(Lead.Order, Middle.Over(Middle));

    [Fact]
    public void Anything_ample_is_as_good_and_anything_easy_is_as_easy()
    {
        var judgement = new Judgement(100, 100, 0, 250, 0.7, 0.3, 0, VerdictRules.None);
        Assert.Equal(Standing.Of(judgement, 0.5, 2), Standing.Of(judgement with { LowestLimitNmm = 900 }, 0.1, 2));
        Assert.True(Standing.Of(judgement, 0.5, 2) < Standing.Of(judgement with { LowestLimitNmm = 190 }, 0.5, 2));
        Assert.True(Standing.Of(judgement, 0.5, 2) < Standing.Of(judgement, 0.52, 2));
    }

    [Property]
    public Property The_order_is_total_and_the_lead_names_where_it_is_decided() => Prop.ForAll(
        Three(),
        t =>
        {
            var (a, b, c) = t;
            bool antisymmetric = Math.Sign(a.CompareTo(b)) == -Math.Sign(b.CompareTo(a));
            bool transitive = !(a <= b && b <= c) || a <= c;
            bool decided = (a.CompareTo(b) == 0) == (a.Over(b) == Lead.Order) && a.Over(b) == b.Over(a);
            return antisymmetric && transitive && decided;
        });

    private static Arbitrary<(Standing A, Standing B, Standing C)> Three()
    {
        Gen<Standing> one =
            from verdict in Gen.Elements(Verdict.Go, Verdict.Care, Verdict.Stop)
            from undone in Gen.Choose(0, 2)
            from safety in Gen.Choose(8, 10)
            from effort in Gen.Choose(50, 52)
            from pieces in Gen.Choose(2, 4)
            select new Standing(verdict, undone, safety, effort, pieces);
        return (from a in one from b in one from c in one select (a, b, c)).ToArbitrary();
    }
}
