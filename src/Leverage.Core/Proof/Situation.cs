using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>A whole situation and what a careful mechanic would say of it, from the table of verdicts.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Arguments">The question, as words of <c>loosen</c>, or of <c>slip</c> where it begins so.</param>
/// <param name="Verdicts">Verdicts a mechanic would sign; none where any is.</param>
/// <param name="Must">What must hold: comparisons on the answer, or words of its parts.</param>
/// <param name="Never">What no move may be about.</param>
/// <param name="NoWords">What the text may not say.</param>
/// <param name="Why">The reason.</param>
/// <param name="Source">Common practice, or where the reason is from.</param>
public sealed record Situation(
    string Key,
    string Arguments,
    IReadOnlyList<string> Verdicts,
    IReadOnlyList<string> Must,
    IReadOnlyList<string> Never,
    IReadOnlyList<string> NoWords,
    string Why,
    string Source)
{
    /// <summary>The situations of the table.</summary>
    /// <returns>All of them.</returns>
    /// <exception cref="TableFormatException">The table cannot be read.</exception>
    public static IReadOnlyList<Situation> All() => [.. TableCatalog.Checks[Prover.SituationsFile].Rows.Select(Of)];

    private static Situation Of(TableRow row) => new(
        row.Key,
        row.Text("arguments"),
        Parts(row, "verdict", '|'),
        Parts(row, "must", ';'),
        Parts(row, "never", '|'),
        Parts(row, "nowords", '|'),
        row.Text("why"),
        row.Source);

    private static string[] Parts(TableRow row, string column, char between) =>
        row.OptionalText(column)?.Split(between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [];
}
