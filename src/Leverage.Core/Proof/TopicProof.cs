using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>The checks of one topic, worked out.</summary>
/// <param name="Topic">Name of the topic, such as <c>threads</c>.</param>
/// <param name="Title">What it is about, in words.</param>
/// <param name="Outcomes">Every row's outcome, in the order of the file; at least one.</param>
public sealed record TopicProof(string Topic, string Title, IReadOnlyList<CheckOutcome> Outcomes)
{
    /// <summary>Whether every row holds.</summary>
    public bool Holds => Outcomes.All(o => o.Holds);

    /// <summary>The row that uses most of its tolerance.</summary>
    public CheckOutcome Worst => Outcomes.MaxBy(o => o.ToleranceShare);

    /// <summary>The largest deviation in percent, without sign.</summary>
    public double WorstPercent => Outcomes.Max(o => Math.Abs(o.DeviationPercent));

    /// <summary>The sources the rows name, each once, in the order of the file.</summary>
    public IEnumerable<string> Sources => Outcomes.Select(o => o.Row.Source).Distinct(StringComparer.Ordinal);

    /// <summary>The source most of the rows name.</summary>
    public string MainSource => Outcomes.CountBy(o => o.Row.Source, StringComparer.Ordinal).MaxBy(s => s.Value).Key;

    /// <summary>How many rows have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of rows.</returns>
    public int Count(ValueStatus status) => Outcomes.Count(o => o.Row.Status == status);
}
