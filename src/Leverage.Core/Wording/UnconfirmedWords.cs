using Leverage.Friction;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Tables;

namespace Leverage.Wording;

/// <summary>Something an answer rests on that is recalled or our own judgement.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Status">How far it may be trusted.</param>
public readonly record struct Unconfirmed(string Name, ValueStatus Status)
{
    /// <summary>Both: "grade 8.8 (memory)".</summary>
    public string Words => $"{Name} ({Status.Word()})";
}

/// <summary>What an answer rests on that is recalled or our own judgement: told by name in JSON, marked with a star in words.</summary>
public static class UnconfirmedWords
{
    /// <summary>The mark of an unconfirmed or assumed figure.</summary>
    public const string Mark = "*";

    /// <summary>What the mark means.</summary>
    public const string Meaning = "unconfirmed or assumed figure";

    /// <summary>Words of what was assumed, ended by what the mark means.</summary>
    /// <param name="words">The words.</param>
    /// <returns>The words with the meaning of the mark.</returns>
    public static string Explained(string words) => $"{words}; {Mark} {Meaning}";

    /// <summary>The line of an answer on one screen that says where the rest is.</summary>
    internal const string Listed = $"{Mark} assumed or not confirmed: --more lists them";

    /// <summary>What an answer about tightening rests on.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="friction">The friction.</param>
    /// <returns>Each by name, with its status.</returns>
    public static IReadOnlyList<Unconfirmed> Of(Grade grade, FrictionRange friction)
    {
        ArgumentNullException.ThrowIfNull(grade);
        Unconfirmed range = new($"friction {UnitStyle.Trim(friction.Low, 3)} to {UnitStyle.Trim(friction.High, 3)}", ValueStatus.Judgement);
        return
        [
            .. friction.Low < friction.High ? (Unconfirmed[])[range] : [],
            .. grade.Status.IsUnconfirmed() ? (Unconfirmed[])[new($"grade {grade.Name}", grade.Status)] : [],
        ];
    }

    /// <summary>The mark for what a restraint holds: none where it is statics.</summary>
    /// <param name="part">The restraint and what it holds.</param>
    /// <returns>The mark, or nothing.</returns>
    public static string MarkOf(RestraintCapacity part) => MarkOf(part.Status);

    /// <summary>The mark of a figure of this status: none for a published one.</summary>
    internal static string MarkOf(ValueStatus status) => status.IsUnconfirmed() ? Mark : "";
}
