using Leverage.Tables;

namespace Leverage.Tests.Tables;

/// <summary>What the tests know about columns: which hold numbers, and which together name a row.</summary>
internal static class TableColumns
{
    private static readonly string[] Units =
    [
        "mm", "in", "mm2", "in2", "mpa", "psi", "n", "nm", "kg_per_m", "cm3", "cm4", "p5", "p10", "p50", "p90", "p95",
        "share", "exponent", "per_k", "c", "low", "likely", "typical", "high", "factor", "friction", "tpi", "hrc",
    ];

    private static readonly Dictionary<string, string[]> Keys = new(StringComparer.Ordinal)
    {
        ["grades"] = ["grade", "kind", "from_mm"],
        ["loads"] = ["size", "grade", "quantity"],
        ["hexagons"] = ["size", "item"],
        ["tool-torques"] = ["tool", "size_mm"],
        ["square-dimensions"] = ["drive", "side", "standard"],
        ["spanner-lengths"] = ["sizes", "form"],
        ["tubes"] = ["designation", "standard"],
        ["prevailing"] = ["size", "quantity"],
        ["shop-tools"] = ["kind", "drive", "length_mm"],
        ["large-nuts"] = ["application", "thread", "grade", "lubrication"],
    };

    public static bool HasUnit(string column) => Units.Any(u => column == u || column.EndsWith("_" + u, StringComparison.Ordinal));

    public static IReadOnlyList<string> KeysOf(Table table) =>
        Keys.TryGetValue(table.Name, out var keys) ? keys : [table.Columns[0]];
}
