using System.Globalization;
using System.Text.Json;
using Leverage.Cli.Commands;
using Leverage.Cli.Output;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Cli.Tests.Commands;

public sealed class ProveTests
{
    private static readonly Ran Words = Ran.Here("prove");
    private static readonly ProofReport Report = Prover.Report();

    [Fact]
    public void It_ends_with_a_line_of_counts_and_all_hold()
    {
        string line = string.Create(
            CultureInfo.InvariantCulture,
            $"  All {Report.Rows} hold: {Report.Count(ValueStatus.Published)} published, {Report.Count(ValueStatus.Engine)} independent engine, ")
            + string.Create(
                CultureInfo.InvariantCulture,
                $"{Report.Count(ValueStatus.Derived)} derived, {Report.Count(ValueStatus.Memory)} memory\n");
        Assert.Equal((0, ""), (Words.Code, Words.Errors));
        Assert.EndsWith(line, Words.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_topic_and_every_known_disagreement_is_told_on_80_columns()
    {
        Assert.All(Prover.Topics, topic => Assert.Contains($"\n  {topic} ", Words.Answer, StringComparison.Ordinal));
        string words = string.Join(' ', Words.Answer.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.All(Report.Disagreements, known =>
            Assert.Contains(string.Join(' ', known.Reason.Split(' ', StringSplitOptions.RemoveEmptyEntries)), words, StringComparison.Ordinal));
        Assert.All(Words.Answer.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void All_lists_each_row_with_its_source_and_status()
    {
        string answer = Ran.Here("prove", "--all").Answer;
        Assert.Equal(Report.Rows, answer.Split('\n').Count(line => line.StartsWith("  holds  ", StringComparison.Ordinal)));
        Assert.All(Report.Topics.SelectMany(t => t.Outcomes), o =>
            Assert.Contains($" {o.Row.Id}: {o.Row.Formula.Name} gives", answer, StringComparison.Ordinal));
        Assert.EndsWith(Words.Answer[Words.Answer.LastIndexOf("  All ", StringComparison.Ordinal)..], answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Json_counts_the_same_and_lists_rows_only_when_asked(bool all)
    {
        Ran ran = all ? Ran.Here("prove", "--json", "--all") : Ran.Here("prove", "--json");
        JsonElement answer = JsonDocument.Parse(ran.Answer).RootElement;
        Assert.True(answer.GetProperty("holds").GetBoolean());
        Assert.Equal(Report.Rows, answer.GetProperty("rows").GetInt32());
        Assert.Equal(Report.Rows, answer.GetProperty("topics").EnumerateArray().Sum(t => t.GetProperty("rows").GetInt32()));
        Assert.Equal(Report.Count(ValueStatus.Memory), answer.GetProperty("counts").GetProperty("memory").GetInt32());
        Assert.Equal(Report.Disagreements.Count, answer.GetProperty("knownDisagreements").GetArrayLength());
        int listed = answer.GetProperty("topics").EnumerateArray()
            .Sum(t => t.TryGetProperty("checks", out JsonElement checks) ? checks.GetArrayLength() : 0);
        Assert.Equal(all ? Report.Rows : 0, listed);
    }

    [Fact]
    public void A_check_that_fails_is_named_with_how_far_and_the_program_exits_1()
    {
        TopicProof whole = Report.Topics[0];
        var broken = new TopicProof(
            whole.Topic, whole.Title, [.. whole.Outcomes.Select((o, i) => i == 0 ? o with { Value = o.Value * 1.02 } : o)]);
        var report = new ProofReport([broken, .. Report.Topics.Skip(1)], Report.Disagreements);
        using var answers = new StringWriter();
        using var errors = new StringWriter();
        using var terminal = new Terminal(answers, errors, false);
        int code = CommandLine.Run(["prove"], terminal, [new("prove", "", () => new ProveCommand(() => report))]);
        Assert.Equal((1, ""), (code, errors.ToString()));
        Assert.Contains($"  FAILS           {broken.Outcomes[0].Row.Id}: ", answers.ToString(), StringComparison.Ordinal);
        Assert.Contains("+2 % of", answers.ToString(), StringComparison.Ordinal);
        string counts = string.Create(CultureInfo.InvariantCulture, $"  1 of {Report.Rows} FAIL: ");
        Assert.StartsWith(counts, answers.ToString().Split('\n')[^2], StringComparison.Ordinal);
    }

    [Fact]
    public void Strict_changes_nothing()
    {
        Assert.Equal(Words, Ran.Here("prove", "--strict"));
    }
}
