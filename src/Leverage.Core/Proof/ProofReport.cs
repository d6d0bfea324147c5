using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>Every published check worked out, and the published rows that are known not to agree.</summary>
/// <param name="Topics">One result a topic.</param>
/// <param name="Disagreements">The rows that do not agree, gathered by reason.</param>
public sealed record ProofReport(IReadOnlyList<TopicProof> Topics, IReadOnlyList<KnownDisagreement> Disagreements)
{
    /// <summary>Every state of a joint beside what was measured or stated of it.</summary>
    public IReadOnlyList<ConditionEvidence> Evidence { get; init; } = [];

    /// <summary>Situations a mechanic would agree on, asked apart from the published figures.</summary>
    public IReadOnlyList<SituationProof> Situations { get; init; } = [];

    /// <summary>How many rows were worked out; known disagreements not counted.</summary>
    public int Rows => Topics.Sum(t => t.Outcomes.Count);

    /// <summary>How many of them do not hold.</summary>
    public int Failed => Topics.Sum(t => t.Failed);

    /// <summary>Whether every row holds and every situation is agreed on.</summary>
    public bool Holds => Failed == 0 && Situations.All(situation => situation.Agrees);

    /// <summary>How many rows have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of rows.</returns>
    public int Count(ValueStatus status) => Topics.Sum(t => t.Count(status));
}
