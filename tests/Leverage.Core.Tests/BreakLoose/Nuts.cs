using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.BreakLoose;

/// <summary>Fasteners for the laws of breaking loose.</summary>
internal static class Nuts
{
    /// <summary>Every condition of the table.</summary>
    internal static IReadOnlyList<string> Conditions { get; } = [.. TableCatalog.Tables["conditions"].Rows.Select(row => row.Key)];

    /// <summary>The conditions that say what the joint has become, not what glues it.</summary>
    internal static IReadOnlyList<string> Unlocked { get; } = [.. Conditions.Where(key => Condition.Named(key).LockerNm == 0)];

    internal static Fastener Of(string condition, double bookNm, string? thread, double friction = 0.14, string? grade = null) => new()
    {
        BookTorque = Torque.FromNewtonMeters(bookNm),
        Condition = Condition.Named(condition),
        Friction = FrictionRange.About(friction),
        Thread = thread is null ? null : ThreadCatalog.Named(thread),
        Grade = grade is null ? null : GradeCatalog.Bolt(grade, ThreadCatalog.Named(thread!)),
    };

    internal static (double Low, double Likely, double High) Quantiles(Fastener fastener)
    {
        BreakLooseTorque spread = BreakLooseSpread.Torque(fastener);
        return (spread.Quantile(0.1) / 1000, spread.Quantile(0.5) / 1000, spread.Quantile(0.9) / 1000);
    }
}
