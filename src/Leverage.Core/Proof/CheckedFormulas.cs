namespace Leverage.Proof;

/// <summary>
/// The formulas the checks can call, one entry each, by topic; no reflection, so that it works compiled ahead of time.
/// </summary>
public static partial class CheckedFormulas
{
    private static readonly CheckedFormula[] Listed =
        [.. Threads, .. Tightening, .. Stiffness, .. TubeSections, .. Tubes, .. Levers, .. LoadPath, .. Corners, .. Holding, .. Spread];

    private static readonly Dictionary<string, CheckedFormula>.AlternateLookup<ReadOnlySpan<char>> ByName =
        Listed.ToDictionary(f => f.Name, StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CheckedFormula> All => Listed;

    /// <summary>The formula of a name.</summary>
    /// <param name="name">Class and method, such as <c>TubeSection.Area</c>.</param>
    /// <returns>The formula, or null when there is none.</returns>
    public static CheckedFormula? Find(ReadOnlySpan<char> name) => ByName.TryGetValue(name, out var found) ? found : null;
}
