using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Tables;

namespace Leverage.Wording;

/// <summary>What an answer rests on that is recalled or our own judgement: told by name in JSON, marked with a star in words.</summary>
internal static class UnconfirmedWords
{
    /// <summary>The mark of an unconfirmed or assumed figure.</summary>
    internal const string Mark = "*";

    /// <summary>What the mark means.</summary>
    internal const string Meaning = "unconfirmed or assumed figure";

    /// <summary>Words of what was assumed, ended by what the mark means.</summary>
    internal static string Explained(string words) => $"{words}; {Mark} {Meaning}";

    /// <summary>The line of an answer on one screen that says where the rest is.</summary>
    internal const string Listed = $"{Mark} assumed or not confirmed: --more lists them";

    /// <summary>What an answer about tightening rests on: "grade 8.8 (memory)".</summary>
    internal static IReadOnlyList<string> Of(Grade grade, FrictionRange friction) =>
    [
        .. friction.Low < friction.High ? [$"friction {UnitStyle.Trim(friction.Low, 3)} to {UnitStyle.Trim(friction.High, 3)} ({ValueStatus.Judgement.Word()})"] : (string[])[],
        .. grade.Status.IsUnconfirmed() ? [$"grade {grade.Name} ({grade.Status.Word()})"] : (string[])[],
    ];

    /// <summary>The same with the stretch at which the bolt breaks, where a turn was judged by it.</summary>
    internal static IReadOnlyList<string> Of(JointAssessment result) =>
    [
        .. Of(result.Grade, result.Friction),
        .. result.Angle?.BreaksAt is { } limit && limit.Status.IsUnconfirmed() ? [$"stretch at which grade {result.Grade.Name} breaks ({limit.Status.Word()})"] : (string[])[],
    ];

    /// <summary>The mark of a figure of this status: none for a published one.</summary>
    internal static string MarkOf(ValueStatus status) => status.IsUnconfirmed() ? Mark : "";
}
