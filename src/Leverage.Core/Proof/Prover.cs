using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>Works out every published check the program carries.</summary>
public static class Prover
{
    /// <summary>The file of published rows that do not agree; shown, never counted as held.</summary>
    public const string DisagreementsFile = "disagreements";

    /// <summary>The file of situations a mechanic would agree on; asked apart, never counted among published figures.</summary>
    public const string SituationsFile = "verdicts";

    /// <summary>Names of the topics, in alphabetical order; each is a file of <c>shared/checks</c>.</summary>
    public static IEnumerable<string> Topics => TableCatalog.Checks.Names.Where(n => n is not (DisagreementsFile or SituationsFile));

    /// <summary>Everything: all topics, and the rows known not to agree.</summary>
    /// <returns>The report.</returns>
    /// <exception cref="TableFormatException">A row cannot be read.</exception>
    public static ProofReport Report()
    {
        TopicProof[] proofs = Run([.. Topics, DisagreementsFile]);
        return new(proofs[..^1], KnownDisagreement.Gather(proofs[^1].Outcomes))
        {
            Evidence = ConditionEvidence.All(),
            Situations = [.. Situation.All().Select(SituationProof.Of)],
        };
    }

    /// <summary>All topics worked out.</summary>
    /// <returns>One result a topic.</returns>
    /// <exception cref="TableFormatException">A row cannot be read.</exception>
    public static IReadOnlyList<TopicProof> Run() => Run([.. Topics]);

    /// <summary>One topic worked out.</summary>
    /// <param name="topic">Name of the topic, such as <c>threads</c>.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentException">There is no such topic.</exception>
    /// <exception cref="TableFormatException">A row cannot be read.</exception>
    public static TopicProof Run(string topic) => Run(topic, new CheckReader());

    /// <summary>The published rows known not to agree, worked out.</summary>
    /// <returns>Their outcomes, with the reason in the note.</returns>
    public static TopicProof Disagreements() => Run(DisagreementsFile);

    // On one thread: a second one took as long to start and to make room for as it saved.
    private static TopicProof[] Run(string[] topics)
    {
        var reader = new CheckReader();
        return Array.ConvertAll(topics, topic => Run(topic, reader));
    }

    private static TopicProof Run(string topic, CheckReader reader)
    {
        var table = TableCatalog.Checks[topic];
        var outcomes = new CheckOutcome[table.Rows.Count];
        for (int i = 0; i < outcomes.Length; i++)
        {
            outcomes[i] = reader.Read(table.Rows[i]).WorkOut();
        }

        return new TopicProof(table.Name, table.Title, outcomes);
    }
}
