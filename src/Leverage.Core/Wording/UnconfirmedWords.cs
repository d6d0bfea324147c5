using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.Wording;

/// <summary>What an answer rests on that is recalled or our own judgement: told by name in JSON, marked with a star in words.</summary>
public static class UnconfirmedWords
{
    /// <summary>The mark of an unconfirmed or assumed figure.</summary>
    public const string Mark = "*";

    /// <summary>What the mark means.</summary>
    public const string Meaning = "unconfirmed or assumed figure";

    /// <summary>Words of what was assumed, ended by what the mark means.</summary>
    /// <param name="words">The words.</param>
    /// <param name="rests">What the answer rests on; null to say only that figures are unconfirmed or assumed.</param>
    /// <returns>The words with the meaning of the mark.</returns>
    public static string Explained(string words, IReadOnlyList<string>? rests = null) => rests is null
        ? $"{words}; {Mark} {Meaning}"
        : rests.Count == 0 ? words
        : $"{words}; {Mark} unconfirmed: {string.Join(", ", rests.Select(one => one[..one.LastIndexOf(" (", StringComparison.Ordinal)]))}";

    /// <summary>What a slip answer rests on.</summary>
    /// <param name="setup">The set-up.</param>
    /// <param name="style">Units.</param>
    /// <returns>Each by name, with its status.</returns>
    public static IReadOnlyList<string> Of(SlipSetup setup, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var found = new List<string>();
        Row(found, "conditions", setup.Condition.Key, "condition");
        Row(found, "stances", setup.Hands.Stance.Key, "stance");
        Handle(found, setup.GripWords);
        Assumed(found, setup.Assumed, style);
        return found;
    }

    /// <summary>What an answer about tightening rests on.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="grade">The grade.</param>
    /// <param name="friction">The friction.</param>
    /// <returns>Each by name, with its status.</returns>
    public static IReadOnlyList<string> Of(ScrewThread thread, Grade grade, FrictionRange friction)
    {
        ArgumentNullException.ThrowIfNull(thread);
        string range = UnitStyle.Trim(friction.Low, 3) + " to " + UnitStyle.Trim(friction.High, 3);
        var found = new List<string>();
        if (friction.Low < friction.High)
        {
            found.Add($"friction {range} (judgement)");
        }

        Joint(found, thread, grade);
        return found;
    }

    /// <summary>The mark for what a restraint holds: none where it is statics.</summary>
    /// <param name="part">The restraint and what it holds.</param>
    /// <returns>The mark, or nothing.</returns>
    public static string MarkOf(RestraintCapacity part) => part.Status.IsUnconfirmed() ? Mark : "";

    private static void Joint(List<string> found, ScrewThread thread, Grade? grade)
    {
        Row(found, "clearance-holes", thread.Size, "clearance hole");
        if (grade is { } known && known.Status.IsUnconfirmed())
        {
            found.Add($"grade {known.Name} ({known.Status.Word()})");
        }
    }

    private static void Handle(List<string> found, string words) => Row(found, "handle-friction", words, "handle");

    private static void Assumed(List<string> found, IReadOnlyList<Assumption> assumed, UnitStyle style) => found.AddRange(assumed
        .Where(one => one.Value is not null && one.Status.IsUnconfirmed())
        .Select(one => $"{AssumedWords.Brief([one with { Status = ValueStatus.Published }], style)} ({one.Status.Word()})"));

    /// <summary>A row by its first cell, where the table has it and the row is unconfirmed.</summary>
    private static void Row(List<string> found, string table, string key, string what)
    {
        TableRow? row = TableCatalog.Tables[table].Rows.FirstOrDefault(one => one.IsNamed(key));
        if (row is not null && row.Status.IsUnconfirmed())
        {
            found.Add($"{what} {key} ({row.Status.Word()})");
        }
    }
}
