using Leverage.Tables;

namespace Leverage.Corners;

/// <summary>Play of a tool on a nut, shares of the nut's width across flats.</summary>
/// <param name="Low">Tightest tool on the largest nut, 0 or more.</param>
/// <param name="High">Widest tool on the smallest nut.</param>
public readonly record struct PlayRange(double Low, double High)
{
    /// <summary>Midway: what is taken where one value is asked for.</summary>
    public double Likely => At(0.5);

    /// <summary>The play at a share of the way from the low to the high end.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>Play, share of the width across flats.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double At(double share) => Low + Require.Between(share, 0, 1, nameof(share)) * (High - Low);
}

/// <summary>How a tool fits a nut: openings of JIS B 4632 on nuts of ISO grade A, from the table <c>ring-fit</c>.</summary>
public static class ToolFit
{
    /// <summary>Play by sizes, p = (opening − nut)/s.</summary>
    /// <param name="openingMm">Opening of the tool, mm, the nut's width or more.</param>
    /// <param name="nutMm">The nut's own width across flats, mm, above 0.</param>
    /// <param name="acrossFlatsMm">s, nominal width across flats, mm, above 0.</param>
    /// <returns>p, share of s.</returns>
    /// <remarks>
    /// Valid for: any driver with flat faces.
    /// Source: definition.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Play(double openingMm, double nutMm, double acrossFlatsMm) =>
        Require.NotNegative(openingMm - Require.Positive(nutMm, nameof(nutMm)), nameof(openingMm))
            / Require.Positive(acrossFlatsMm, nameof(acrossFlatsMm));

    /// <summary>
    /// Play of a tool on a nut, both by their nominal sizes: allowances run straight between the sizes of the table and in proportion
    /// to the size beyond them (judgement), so that an inch tool, or one a size over, adds what it is wider.
    /// </summary>
    /// <param name="nutAcrossFlatsMm">Nominal width across flats of the nut, mm.</param>
    /// <param name="toolAcrossFlatsMm">Nominal width across flats of the tool, mm; the nut's where it has the right size.</param>
    /// <returns>The range, or null where even the widest tool does not go on the smallest nut.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is not a finite number above 0.</exception>
    public static PlayRange? Of(double nutAcrossFlatsMm, double toolAcrossFlatsMm)
    {
        double least = toolAcrossFlatsMm + Allowance(toolAcrossFlatsMm, "opening_min_mm");
        double most = toolAcrossFlatsMm + Allowance(toolAcrossFlatsMm, "opening_max_mm");
        double nut = nutAcrossFlatsMm + Allowance(nutAcrossFlatsMm, "nut_min_mm");
        return most < nut
            ? null
            : new PlayRange(
                least > nutAcrossFlatsMm ? Play(least, nutAcrossFlatsMm, nutAcrossFlatsMm) : 0, Play(most, nut, nutAcrossFlatsMm));
    }

    /// <summary>Least width across corners over width across flats of a hexagon (ISO 4014, ISO 4032: e min = 1.13 s min): a wider tool holds nothing.</summary>
    internal const double CornersOverFlats = 1.13;

    /// <summary>How much wider than the nut a tool of another measure may be marked, mm: 24 mm on 15/16 in (judgement).</summary>
    internal const double NearMm = 0.3;

    /// <summary>How much narrower it may be marked and still be the same, mm: 19 mm on 3/4 in (judgement).</summary>
    internal const double SameMm = 0.1;

    /// <summary>Whether a tool of this marked size goes on the nut and holds it nearly as well as its own.</summary>
    /// <param name="nutMm">Width across flats of the nut, mm.</param>
    /// <param name="toolMm">Marked size of the tool, mm.</param>
    /// <returns>True within 0.1 mm under and 0.3 mm over.</returns>
    internal static bool IsNear(double nutMm, double toolMm) => toolMm - nutMm > -SameMm && toolMm - nutMm <= NearMm + 1e-6;

    /// <summary>What a column stands above the nominal size, mm.</summary>
    private static double Allowance(double acrossFlatsMm, string column)
    {
        double size = Require.Positive(acrossFlatsMm, nameof(acrossFlatsMm));
        (double Size, double Over)? below = null;
        foreach (TableRow row in TableCatalog.Tables["ring-fit"].Rows)
        {
            double nominal = row.Number("across_flats_mm");
            var here = (Size: nominal, Over: row.Number(column) - nominal);
            if (size <= nominal)
            {
                return below is { } under
                    ? under.Over + (here.Over - under.Over) * (size - under.Size) / (here.Size - under.Size)
                    : here.Over * size / here.Size;
            }

            below = here;
        }

        return below!.Value.Over * size / below.Value.Size;
    }
}
