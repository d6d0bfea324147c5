using System.Globalization;
using Leverage.Proof;
using Leverage.Tables;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage prove</c> in words.</summary>
internal sealed class ProveWords
{
    /// <summary>Statuses in the order of their weight.</summary>
    private static readonly ValueStatus[] Statuses =
        [ValueStatus.Published, ValueStatus.Engine, ValueStatus.Derived, ValueStatus.Memory];

    private readonly ProofReport _report;
    private readonly bool _all;

    /// <summary>Words for a report; all rows, or a summary.</summary>
    internal ProveWords(ProofReport report, bool all) => (_report, _all) = (report, all);

    /// <summary>Lays the answer out.</summary>
    internal void Write(TextPage page)
    {
        page.Title("Every published check, worked out again on this machine");
        foreach (TopicProof topic in _all ? _report.Topics : [])
        {
            Rows(page, topic);
        }

        Topics(page);
        Failures(page);
        Disagreements(page);
        EvidenceWords.Write(page, _report.Evidence);
        Situations(page);
        page.Space();
        page.Line(Counts());
    }

    /// <summary>The last line: what the rows stand on, and whether all hold.</summary>
    private string Counts()
    {
        string kinds = string.Join(", ", Statuses.Select(status => $"{Number(_report.Count(status))} {Kind(status)}"));
        string result = _report.Holds ? $"All {Number(_report.Rows)} hold" : $"{Number(_report.Failed)} of {Number(_report.Rows)} FAIL";
        return $"{result}: {kinds}";
    }

    private void Topics(TextPage page)
    {
        var table = new Columns("lrrrrrr").Row("topic", "published", "engine", "derived", "memory", "worst", "allowed");
        foreach (TopicProof topic in _report.Topics)
        {
            CheckOutcome worst = topic.Worst;
            table.Row(
                [topic.Topic, .. Statuses.Select(s => topic.Count(s) is > 0 and var n ? Number(n) : ""), Percent(worst.DeviationPercent), Allowed(worst)]);
        }

        string[] lines = [.. table.Lines()];
        page.Line(lines[0]);
        for (int i = 1; i < lines.Length; i++)
        {
            page.Line(lines[i]);
            TopicProof topic = _report.Topics[i - 1];
            int others = topic.Sources.Count() - 1;
            string more = others > 0 ? $" (and {Number(others)} more)" : "";
            page.Under(topic.MainSource + more);
        }
    }

    private static void Rows(TextPage page, TopicProof topic)
    {
        page.Line($"{topic.Topic}: {topic.Title}");
        foreach (CheckOutcome outcome in topic.Outcomes)
        {
            CheckRow row = outcome.Row;
            string mark = outcome.Holds ? "holds" : "FAILS";
            page.Line($"{mark}  {row.Id}: {row.Formula.Name} gives {Value(outcome)}, printed {row.Expected} {row.Unit}".TrimEnd());
            page.Under($"{Percent(outcome.DeviationPercent)} of {Allowed(outcome)} allowed; {row.Status.Word()}: {row.Source}");
        }

        page.Space();
    }

    private void Failures(TextPage page)
    {
        foreach (CheckOutcome outcome in _report.Topics.Where(t => !t.Holds).SelectMany(t => t.Outcomes).Where(o => !o.Holds))
        {
            CheckRow row = outcome.Row;
            page.Space();
            page.Note("FAILS", $"{row.Id}: {row.Formula.Name} gives {Value(outcome)}, {row.Source} prints {row.Expected} {row.Unit}, "
                + $"{Percent(outcome.DeviationPercent)} of {Allowed(outcome)} allowed");
        }
    }

    private void Disagreements(TextPage page)
    {
        if (_report.Disagreements.Count == 0)
        {
            return;
        }

        page.Space();
        page.Line($"Known not to agree, never counted as held: {Number(_report.Disagreements.Sum(d => d.Outcomes.Count))} rows (formula over print)");
        foreach (KnownDisagreement known in _report.Disagreements)
        {
            string most = Percent(known.MostPercent);
            string least = Percent(known.LeastPercent);
            string range = most == least ? most : $"{least} to {most}";
            string rows = known.Outcomes.Count == 1 ? known.Outcomes[0].Row.Id : $"{Number(known.Outcomes.Count)} rows";
            page.Entry("·", $"{known.Formula}, {rows}, {range}: {known.Reason}");
        }
    }

    /// <summary>Whole situations, judged as a mechanic would: common practice, no published figures.</summary>
    private void Situations(TextPage page)
    {
        if (_report.Situations.Count == 0)
        {
            return;
        }

        page.Space();
        page.Line($"Situations a mechanic would agree on: {Number(_report.Situations.Count(one => one.Agrees))} of {Number(_report.Situations.Count)}");
        foreach (SituationProof one in _report.Situations.Where(one => _all || !one.Agrees))
        {
            page.Entry("·", $"{one.Situation.Key}: {one.Verdict}. {one.Situation.Why} {string.Join("; ", one.Faults)}".TrimEnd());
        }
    }

    private static string Kind(ValueStatus status) => status == ValueStatus.Engine ? "independent engine" : status.Word();

    private static string Value(CheckOutcome outcome) => outcome.Value.ToString("G6", CultureInfo.InvariantCulture);

    private static string Allowed(CheckOutcome outcome) => outcome.Printed == 0
        ? $"±{UnitStyle.Figures(outcome.Row.Tolerance)}"
        : 100 * outcome.Row.Tolerance / Math.Abs(outcome.Printed) is var percent && percent < 0.0005
            ? "< 0.001 %"
            : $"±{Short(percent)} %";

    /// <summary>A deviation in percent; one that rounds to nothing has no sign, which differs between machines.</summary>
    private static string Percent(double percent) =>
        Math.Abs(percent) < 0.0005 ? "0 %" : string.Create(CultureInfo.InvariantCulture, $"{(percent < 0 ? '−' : '+')}{Short(Math.Abs(percent))} %");

    /// <summary>Two figures, at most three decimals.</summary>
    private static string Short(double value) =>
        UnitStyle.Trim(value, Math.Clamp(1 - (int)Math.Floor(Math.Log10(value)), 0, 3));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
