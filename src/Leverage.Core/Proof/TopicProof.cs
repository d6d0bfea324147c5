using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>The checks of one topic, worked out.</summary>
public sealed class TopicProof
{
    private readonly CheckOutcome[] _outcomes;
    private readonly int[] _counts = new int[(int)ValueStatus.Engine + 1];

    /// <summary>Sums outcomes up.</summary>
    /// <param name="topic">Name of the topic, such as <c>threads</c>.</param>
    /// <param name="title">What it is about, in words.</param>
    /// <param name="outcomes">Every row's outcome, in the order of the file; at least one.</param>
    public TopicProof(string topic, string title, CheckOutcome[] outcomes)
    {
        (Topic, Title, _outcomes, Worst) = (topic, title, outcomes, outcomes[0]);
        foreach (CheckOutcome outcome in outcomes)
        {
            _counts[(int)outcome.Row.Status]++;
            Failed += outcome.Holds ? 0 : 1;
            Worst = outcome.ToleranceShare > Worst.ToleranceShare ? outcome : Worst;
        }
    }

    /// <summary>Name of the topic, such as <c>threads</c>.</summary>
    public string Topic { get; }

    /// <summary>What it is about, in words.</summary>
    public string Title { get; }

    /// <summary>Every row's outcome, in the order of the file.</summary>
    public IReadOnlyList<CheckOutcome> Outcomes => _outcomes;

    /// <summary>How many rows do not hold.</summary>
    public int Failed { get; }

    /// <summary>Whether every row holds.</summary>
    public bool Holds => Failed == 0;

    /// <summary>The row that uses most of its tolerance.</summary>
    public CheckOutcome Worst { get; }

    /// <summary>The largest deviation in percent, without sign.</summary>
    public double WorstPercent => _outcomes.Max(o => Math.Abs(o.DeviationPercent));

    /// <summary>The sources the rows name, each once, in the order of the file.</summary>
    public IEnumerable<string> Sources => _outcomes.Select(o => o.Row.Source).Distinct(StringComparer.Ordinal);

    /// <summary>The source most of the rows name.</summary>
    public string MainSource => _outcomes.CountBy(o => o.Row.Source, StringComparer.Ordinal).MaxBy(s => s.Value).Key;

    /// <summary>How many rows have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of rows.</returns>
    public int Count(ValueStatus status) => _counts[(int)status];
}
