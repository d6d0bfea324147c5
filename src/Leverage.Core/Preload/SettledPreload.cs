using Leverage.Tables;

namespace Leverage.Preload;

/// <summary>What is left of a preload once the joint has settled, from the table <c>preload-lost</c>.</summary>
public static class SettledPreload
{
    /// <summary>Shares of the preload still there days later: the most and the least that published tests of sound joints lost.</summary>
    public static (double Least, double Most) Left =>
        (1 - Row("settle-screw").Number("high"), 1 - Row("settle-plain").Number("typical"));

    private static TableRow Row(string key) => RowLookup.Named("preload-lost", key, "a loss of preload");
}
