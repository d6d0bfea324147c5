using Leverage.Tables;
using UnitsNet;

namespace Leverage.Grades;

/// <summary>Lasting stretch at which a whole bolt breaks.</summary>
/// <param name="Stretch">The stretch.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record StretchLimit(Length Stretch, ValueStatus Status);

/// <summary>How far a whole bolt stretches for good before it breaks, from the table <c>bolt-stretch</c>.</summary>
public static class BoltStretch
{
    /// <summary>Share of that stretch past which a turn is no longer taken for a usual one (judgement: structural turns on square faces take at most 0.35 of it).</summary>
    public const double MostShare = 0.5;

    /// <summary>Lasting stretch at which a bolt of a grade breaks.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="diameterMm">d, thread diameter, mm, above 0.</param>
    /// <returns>The stretch; null where the table has none for the grade.</returns>
    /// <remarks>
    /// Valid for: at least one diameter of free thread in the grip; less breaks sooner.
    /// Source: ISO 898-1, elongation after fracture of full-size fasteners.
    /// Checked by: Grades/BoltStretchTests, by the turns from snug at which structural bolts broke and those that standards ask for.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static StretchLimit? AtBreaking(Grade grade, double diameterMm)
    {
        ArgumentNullException.ThrowIfNull(grade);
        Require.Positive(diameterMm, nameof(diameterMm));
        return TableCatalog.Tables["bolt-stretch"].Rows.FirstOrDefault(row => row.IsNamed(grade.Name)) is { } row
            ? new StretchLimit(Length.FromMillimeters(row.Number("stretch_d") * diameterMm), row.Status)
            : null;
    }
}
