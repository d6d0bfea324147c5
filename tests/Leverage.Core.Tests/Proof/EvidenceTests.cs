using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Tests.Proof;

public sealed class EvidenceTests
{
    private static readonly ConditionEvidence[] States = [.. ConditionEvidence.All()];

    private static MeasuredRatio Ratio(string key) => MeasuredRatio.All.Single(ratio => ratio.Key == key);

    /// <summary>By hand: z = ln(ratio/median)/σ, σ = ln(P90/P10)/2.563; rusted 1.04, salted 1.02, heat-rusted 1.24; clean 0.9 over 0.8·0.95·1.05 is 1.01.</summary>
    [Theory]
    [InlineData("rust", 0.851)]
    [InlineData("salt", 0.846)]
    [InlineData("heat", 0.893)]
    public void Upper_ends_fall_where_the_states_were_drawn_to_have_them(string key, double share) =>
        Assert.Equal(share, Ratio(key).ShareBelow(Ratio(key).High)!.Value, 0.002);

    [Theory]
    [InlineData("clean-bench", 0.846)]
    [InlineData("clean-textbook", 0.509)]
    [InlineData("static-dry", 0.436)]
    public void Typical_figures_have_their_percentile(string key, double share) =>
        Assert.Equal(share, Ratio(key).ShareBelow(Ratio(key).Typical)!.Value, 0.005);

    [Fact]
    public void Used_looks_too_low_for_a_road_wheel_by_half_again()
    {
        ConditionEvidence used = States.Single(state => state.Condition == "used");
        Assert.Equal(EvidenceFinding.TooLow, used.Finding);
        Assert.Equal(1.5, Ratio("road-wheel").OverMedian!.Value, 0.06);
        Assert.Contains("not a road wheel", used.Words, StringComparison.Ordinal);
        Assert.Contains("road wheel", States.Single(state => state.Condition == "rusted").Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("clean", EvidenceFinding.Fits)]
    [InlineData("rusted", EvidenceFinding.Fits)]
    [InlineData("salted", EvidenceFinding.Fits)]
    [InlineData("heat-rusted", EvidenceFinding.Fits)]
    [InlineData("locked-medium", EvidenceFinding.None)]
    [InlineData("staked", EvidenceFinding.None)]
    public void Each_state_has_its_finding(string condition, EvidenceFinding finding) =>
        Assert.Equal(finding, States.Single(state => state.Condition == condition).Finding);

    [Fact]
    public void A_state_above_its_figures_is_too_high()
    {
        TableRow salted = TableCatalog.Tables["conditions"].Rows.Single(row => row.Key == "salted");
        MeasuredRatio low = Ratio("rust") with { Condition = "salted", High = 1.5 };
        Assert.Equal(EvidenceFinding.TooHigh, ConditionEvidence.Of(salted, [low]).Finding);
        Assert.Equal(EvidenceFinding.TooLow, ConditionEvidence.Of(salted, [low with { High = 5 }]).Finding);
    }

    [Fact]
    public void Ratios_of_another_kind_have_no_percentile()
    {
        Assert.Null(Ratio("locker-cold").ShareBelow(1.25));
        Assert.Null(Ratio("penetrant-mix").ShareBelow(0.1));
        Assert.Null(Ratio("rust").ShareBelow(null));
    }

    [Fact]
    public void Every_figure_belongs_to_a_known_state_or_to_none()
    {
        var known = TableCatalog.Tables["conditions"].Rows.Select(row => row.Key).ToHashSet(StringComparer.Ordinal);
        Assert.All(MeasuredRatio.All.Where(ratio => ratio.Condition is not null), ratio => Assert.Contains(ratio.Condition!, known));
        Assert.All(MeasuredRatio.All, ratio => Assert.True((ratio.Low ?? ratio.Typical ?? ratio.High) > 0, ratio.Key));
    }

    [Fact]
    public void The_proof_carries_the_evidence_into_its_answer()
    {
        ProofAnswer answer = ProofAnswer.Of(Prover.Report(), all: false);
        Assert.Equal(States.Length, answer.Evidence.Count);
        EvidenceAnswer used = answer.Evidence.Single(one => one.Condition == "used");
        Assert.Equal("tooLow", used.Finding);
        Assert.Equal(85.1, answer.Evidence.Single(one => one.Condition == "rusted").Figures.Single(one => one.Key == "rust").HighPercentile!.Value, 0.2);
    }
}
