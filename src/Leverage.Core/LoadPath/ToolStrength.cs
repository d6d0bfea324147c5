using Leverage.Tables;

namespace Leverage.LoadPath;

/// <summary>A torque a tool must stand, with where the figure comes from.</summary>
/// <param name="TorqueNm">Limit, N·m.</param>
/// <param name="Source">Standard or estimate behind it.</param>
/// <param name="Confirmed">False for a recalled or editable figure.</param>
public readonly record struct ToolLimit(double TorqueNm, LimitSource Source, bool Confirmed);

/// <summary>Test torques of tools, from the tables.</summary>
public static class ToolStrength
{
    /// <summary>Median strength over a least value: a test torque, a smallest legal section at its least hardness (judgement).</summary>
    public const double MedianOverLeast = 1.25;

    /// <summary>Scatter of what a part with a least value really stands, σ of the logarithm (judgement).</summary>
    public const double LeastScatter = 0.08;

    /// <summary>Scatter of what a part of likely sizes and steel really stands, σ of the logarithm (judgement).</summary>
    public const double LikelyScatter = 0.10;

    /// <summary>Sizes nearer than this are the same, mm.</summary>
    private const double SameMm = 0.02;

    /// <summary>Test torque of a socket, spanner or hexagon key.</summary>
    /// <param name="tool">Its name in the table <c>tool-torques</c>: socket, ring, open, key.</param>
    /// <param name="acrossFlatsMm">Width across flats, mm.</param>
    /// <returns>The limit: as tabled, by the law of series A, or between two tabled sizes; null where none reaches.</returns>
    public static ToolLimit? Test(string tool, double acrossFlatsMm)
    {
        TableRow? below = null;
        TableRow? above = null;
        foreach (TableRow row in TableCatalog.Tables["tool-torques"].Rows)
        {
            if (!row.IsNamed(tool))
            {
                continue;
            }

            double size = row.Number("size_mm");
            if (Math.Abs(size - acrossFlatsMm) < SameMm)
            {
                return new ToolLimit(Torque(row), LimitSource.TestTorque, row.Status == ValueStatus.Published);
            }

            below = size < acrossFlatsMm ? row : below;
            above ??= size > acrossFlatsMm ? row : null;
        }

        return tool is "socket" or "ring" ? ByLaw(acrossFlatsMm) : Between(below, above, acrossFlatsMm);
    }

    /// <summary>Torque a drive square stands: an editable figure that is unconfirmed.</summary>
    /// <param name="drive">Its name in inches: 1/4, 3/8, 1/2, 3/4, 1.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="Reading.InputException">No such drive.</exception>
    public static ToolLimit Square(string drive)
    {
        TableRow row = RowLookup.Named("drive-squares", drive, "a drive square");
        bool recalled = row.OptionalText("memory_columns")?.Contains("default_nm", StringComparison.Ordinal) ?? false;
        return new ToolLimit(row.Number("default_nm"), recalled ? LimitSource.RecalledTest : LimitSource.LeastSquare, false);
    }

    /// <summary>The drive squares of the table, smallest first.</summary>
    /// <returns>Their names in inches.</returns>
    public static IReadOnlyList<string> Drives() => [.. TableCatalog.Tables["drive-squares"].Rows.Select(row => row.Key)];

    private static ToolLimit? ByLaw(double acrossFlatsMm) => acrossFlatsMm is >= SpannerTest.LeastMm and <= SpannerTest.MostMm
        ? new ToolLimit(SpannerTest.SeriesA(acrossFlatsMm) / 1000, LimitSource.SeriesLaw, true)
        : null;

    /// <summary>Straight between two sizes on logarithmic scales.</summary>
    private static ToolLimit? Between(TableRow? below, TableRow? above, double acrossFlatsMm)
    {
        if (below is null || above is null)
        {
            return null;
        }

        double from = below.Number("size_mm");
        double share = Math.Log(acrossFlatsMm / from) / Math.Log(above.Number("size_mm") / from);
        return new ToolLimit(
            Torque(below) * Math.Pow(Torque(above) / Torque(below), share), LimitSource.BetweenSizes, true);
    }

    private static double Torque(TableRow row) => row.Number("test_torque_nm");
}
