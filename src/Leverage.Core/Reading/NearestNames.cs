namespace Leverage.Reading;

/// <summary>The names spelt most like one that was not found, for error messages that name the cure.</summary>
public static class NearestNames
{
    /// <summary>
    /// The known names nearest to a text by the number of letters to insert, drop, change or swap; case is ignored. A name
    /// that starts with the text, or holds it when it has four letters or more, counts as near however long it is.
    /// </summary>
    /// <param name="text">What was written.</param>
    /// <param name="names">The known names.</param>
    /// <param name="most">The most names to give, at least 1.</param>
    /// <returns>Names at most a third of their letters (and at least two) away, nearest first, then in their own order.</returns>
    public static IReadOnlyList<string> Of(string text, IEnumerable<string> names, int most)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        var near = new List<(int Distance, string Name)>();
        foreach (var name in names)
        {
            var distance = Begins(name, text) ? 1 : Holds(name, text) ? 2 : Distance(text.ToUpperInvariant(), name.ToUpperInvariant());
            if (distance <= Math.Max(2, Math.Max(text.Length, name.Length) / 3))
            {
                near.Add((distance, name));
            }
        }

        return [.. near.OrderBy(n => n.Distance).Select(n => n.Name).Distinct(StringComparer.Ordinal).Take(most)];
    }

    /// <summary>Edit distance: letters to insert, drop, change or swap with their neighbour to turn one text into the other.</summary>
    /// <param name="from">One text.</param>
    /// <param name="to">The other.</param>
    /// <returns>0 for equal texts.</returns>
    public static int Distance(string from, string to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var (before, last, row) = (new int[to.Length + 1], new int[to.Length + 1], new int[to.Length + 1]);
        for (var j = 0; j <= to.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= from.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var change = from[i - 1] == to[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j], row[j - 1]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last, row) = (last, row, before);
        }

        return last[to.Length];
    }

    /// <summary>Whether a name has the whole text in it: cast-aluminium for aluminium.</summary>
    private static bool Holds(string name, string text) =>
        text.Length > 3 && name.Contains(text, StringComparison.OrdinalIgnoreCase);

    private static bool Begins(string name, string text) =>
        text.Length > 0 && name.StartsWith(text, StringComparison.OrdinalIgnoreCase);
}
