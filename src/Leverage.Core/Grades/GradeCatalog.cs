using System.Globalization;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.Grades;

/// <summary>Property classes and grades of the tables.</summary>
public static class GradeCatalog
{
    /// <summary>Grade a metric bolt or stud is taken for when none is known (judgement).</summary>
    internal const string UsualMetric = "8.8";

    /// <summary>Grade an inch bolt or stud is taken for when none is known (judgement).</summary>
    internal const string UsualInch = "SAE 5";

    /// <summary>Stronger grades met on vehicles, weakest first (judgement).</summary>
    private static readonly string[] UsualStronger = ["10.9", "12.9", "SAE 8"];

    /// <summary>The stronger grades a bolt of a thread may have, weakest first.</summary>
    internal static IEnumerable<Grade> StrongerFor(ScrewThread thread) => BoltsFor(thread).Where(grade => UsualStronger.Contains(grade.Name, StringComparer.Ordinal));

    /// <summary>The grade a bolt or stud of a thread is taken for when none is known.</summary>
    internal static string Usual(ScrewThread thread) => thread.Family == ThreadFamily.Unified ? UsualInch : UsualMetric;

    /// <summary>Strength of a bolt or stud grade at a thread's size.</summary>
    /// <param name="text">The grade as written: <c>8.8</c>, <c>SAE 5</c>, <c>A2-70</c>; case and spaces are ignored.</param>
    /// <param name="thread">The thread, whose diameter picks the row.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="InputException">No such grade, a nut class, or none at this size.</exception>
    public static Grade Bolt(string text, ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(text);
        Table table = TableCatalog.Tables["grades"];
        string wanted = Plain(text);
        TableRow? otherSize = null;
        TableRow? nut = null;
        foreach (TableRow row in table.Rows)
        {
            if (Plain(row.Key) != wanted)
            {
                continue;
            }

            if (row.Says("kind", "nut"))
            {
                nut = row;
            }
            else if (Holds(row, thread.DiameterMm))
            {
                return Read(row);
            }
            else
            {
                otherSize = row;
            }
        }

        throw Refusal(text, thread, otherSize, nut, table);
    }

    /// <summary>All bolt grades that have a yield at a thread's size, weakest first.</summary>
    /// <param name="thread">The thread, whose diameter picks the rows.</param>
    /// <returns>The grades.</returns>
    public static IReadOnlyList<Grade> BoltsFor(ScrewThread thread) =>
    [
        .. TableCatalog.Tables["grades"].Rows
            .Where(row => row.Says("kind", "bolt") && Holds(row, thread.DiameterMm) && Suits(row, thread))
            .Select(Read)
            .OrderBy(grade => grade.YieldMpa),
    ];

    private static bool Suits(TableRow row, ScrewThread thread) =>
        row.Part("standard").StartsWith("ISO") == (thread.Family == ThreadFamily.Metric);

    private static bool Holds(TableRow row, double diameterMm) =>
        diameterMm >= (row.OptionalNumber("from_mm") ?? 0) - 0.01
            && diameterMm <= (row.OptionalNumber("to_mm") ?? double.MaxValue) + 0.01;

    private static Grade Read(TableRow row) => new(
        row.Key,
        row.Text("standard"),
        row.OptionalNumber("proof_mpa") ?? 0,
        row.OptionalNumber("yield_mpa") ?? 0,
        row.OptionalNumber("tensile_mpa") ?? 0,
        row.Status);

    private static string Plain(string text) =>
        text.Trim().Replace(" ", "", StringComparison.Ordinal).Replace("GRADE", "", StringComparison.OrdinalIgnoreCase)
            .ToUpperInvariant();

    private static InputException Refusal(string text, ScrewThread thread, TableRow? otherSize, TableRow? nut, Table table)
    {
        if (otherSize is not null)
        {
            string range = string.Create(
                CultureInfo.InvariantCulture,
                $"{otherSize.OptionalText("from_mm") ?? "0"} to {otherSize.OptionalText("to_mm") ?? "any"} mm");
            return new InputException($"grade {otherSize.Key} has no figures at {thread.Printed}: {otherSize.Text("standard")} "
                + $"gives {range}. See table grades.");
        }

        string sae = $"SAE {Plain(text)}";
        if (thread.Family == ThreadFamily.Unified && table.Rows.Any(row => row.IsNamed(sae)))
        {
            return new InputException($"'{text}' on an inch thread is written {sae}: grades of metric bolts are written 8.8, 10.9.");
        }

        return nut is not null
            ? new InputException($"'{text}' is a nut class: a nut strips, its bolt yields. Give the bolt's grade, such as {table.Rows.First(row => row.Key.StartsWith($"{nut.Key}.", StringComparison.Ordinal)).Key}.")
            : RowLookup.Unknown(text, "a bolt grade", table.Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal), "grades");
    }
}
