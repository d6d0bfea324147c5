using System.Globalization;
using Leverage.Tables;

namespace Leverage.LoadPath;

/// <summary>A torque a tool must stand, with where the figure comes from.</summary>
/// <param name="TorqueNm">Limit, N·m.</param>
/// <param name="Source">Standard or estimate behind it.</param>
/// <param name="Confirmed">False for a recalled or editable figure.</param>
public readonly record struct ToolLimit(double TorqueNm, string Source, bool Confirmed);

/// <summary>Test torques of tools, from the tables.</summary>
public static class ToolStrength
{
    /// <summary>Median a tool really stands over its test torque (judgement, for the outcome split only).</summary>
    public const double MedianOverTest = 1.25;

    /// <summary>Scatter of what a tool or a section really stands, σ of the logarithm (judgement).</summary>
    public const double Scatter = 0.08;

    /// <summary>Test torque of a socket, spanner or hexagon key.</summary>
    /// <param name="tool">Its name in the table <c>tool-torques</c>: socket, ring, open, key.</param>
    /// <param name="acrossFlatsMm">Width across flats, mm.</param>
    /// <returns>The limit, or null where the table has no such size.</returns>
    public static ToolLimit? Test(string tool, double acrossFlatsMm)
    {
        TableRow? below = null;
        foreach (TableRow row in TableCatalog.Tables["tool-torques"].Rows)
        {
            if (!row.IsNamed(tool))
            {
                continue;
            }

            double size = row.Number("size_mm");
            if (Math.Abs(size - acrossFlatsMm) < 0.02)
            {
                return Limit(row, $"{row.Text("standard")} test torque");
            }

            if (size < acrossFlatsMm && acrossFlatsMm - size < 3 && (below is null || size > below.Number("size_mm")))
            {
                below = row;
            }
        }

        return below is null ? null : Limit(below, string.Create(
            CultureInfo.InvariantCulture,
            $"{below.Text("standard")} test torque of the next smaller size, {below.Number("size_mm")} mm"));
    }

    /// <summary>Torque a drive square stands: an editable figure that is unconfirmed.</summary>
    /// <param name="drive">Its name in inches: 1/4, 3/8, 1/2, 3/4, 1.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="Reading.InputException">No such drive.</exception>
    public static ToolLimit Square(string drive)
    {
        TableRow row = RowLookup.Named("drive-squares", drive, "a drive square");
        bool recalled = row.OptionalText("memory_columns")?.Contains("default_nm", StringComparison.Ordinal) ?? false;
        return new ToolLimit(
            row.Number("default_nm"), recalled ? "recalled test torque, unconfirmed" : "plastic at 39 HRC, unconfirmed", false);
    }

    /// <summary>The drive squares of the table, smallest first.</summary>
    /// <returns>Their names in inches.</returns>
    public static IReadOnlyList<string> Drives() => [.. TableCatalog.Tables["drive-squares"].Rows.Select(row => row.Key)];

    private static ToolLimit Limit(TableRow row, string words) =>
        new(row.Number("test_torque_nm"), words, row.Status == ValueStatus.Published);
}
