using Leverage.Assessments;
using Leverage.Tables;

namespace Leverage.Wording;

/// <summary>Words of what was taken for granted.</summary>
public static class AssumedWords
{
    /// <summary>Each assumption as a phrase.</summary>
    /// <param name="assumed">The assumptions.</param>
    /// <param name="style">Units.</param>
    /// <returns>Phrases without a full stop.</returns>
    public static IReadOnlyList<string> Of(IReadOnlyList<Assumption> assumed, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assumed);
        ArgumentNullException.ThrowIfNull(style);
        return [.. assumed.Select(a => Phrase(a, style))];
    }

    /// <summary>The same in short, without the why, for a terminal.</summary>
    /// <param name="assumed">The assumptions.</param>
    /// <param name="style">Units.</param>
    /// <returns>One line.</returns>
    public static string Brief(IReadOnlyList<Assumption> assumed, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(assumed);
        ArgumentNullException.ThrowIfNull(style);
        return string.Join("; ", assumed.Select(a => Phrase(a with { Why = null }, style)));
    }

    private static string Phrase(Assumption assumption, UnitStyle style)
    {
        string value = assumption.Value is { } quantity ? $" {style.Any(quantity)}" : "";
        string why = assumption.Why is { } reason ? $" ({reason})" : "";
        return $"{assumption.What}{value}{(assumption.Status.IsUnconfirmed() ? UnconfirmedWords.Mark : "")}{why}";
    }
}
