namespace Leverage.Workshop.Jobs;

/// <summary>In which order several alike are tightened, and in which stages (common practice).</summary>
public static class TighteningSequence
{
    /// <summary>Shares of the torque that a group is taken to, one round each (common practice).</summary>
    public static IReadOnlyList<double> Stages { get; } = [0.5, 0.75, 1];

    /// <summary>
    /// The order: on a circle each next one lies across, an odd count making a star; in a row from the middle outwards.
    /// </summary>
    /// <param name="count">How many, 1 or more.</param>
    /// <param name="pattern">How they stand.</param>
    /// <returns>Their numbers, counted from 1 round the circle along the row, or along one row and then the other.</returns>
    public static IReadOnlyList<int> Of(int count, TighteningPattern pattern)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return pattern switch
        {
            TighteningPattern.Circle when count % 2 == 1 => Star(count),
            TighteningPattern.Circle => Crosswise(count),
            TighteningPattern.Row => FromTheMiddle(count),
            TighteningPattern.TwoRows => InTwoRows(count),
            _ => [.. Enumerable.Range(1, count)],
        };
    }

    /// <summary>Steps of just under half the circle reach every one, because an odd count shares no factor with them.</summary>
    private static List<int> Star(int count)
    {
        int step = Math.Max(1, (count - 1) / 2);
        return [.. Enumerable.Range(0, count).Select(i => i * step % count + 1)];
    }

    /// <summary>Pairs across the circle, each next pair as far from those before as can be: the pairs' bits reversed.</summary>
    private static List<int> Crosswise(int count)
    {
        int pairs = count / 2;
        int bits = pairs <= 1 ? 0 : int.Log2(pairs - 1) + 1;
        return
        [
            .. Enumerable.Range(0, 1 << bits).Select(i => Reversed(i, bits)).Where(pair => pair < pairs)
                .SelectMany(pair => (int[])[pair + 1, pair + pairs + 1]),
        ];
    }

    private static int Reversed(int value, int bits)
    {
        int reversed = 0;
        for (int i = 0; i < bits; i++)
        {
            reversed |= (value >> i & 1) << (bits - 1 - i);
        }

        return reversed;
    }

    /// <summary>
    /// Two rows, counted along the one and then along the other: each row from the middle outwards, by turns. An odd one
    /// is the last of the first row.
    /// </summary>
    private static List<int> InTwoRows(int count)
    {
        int first = (count + 1) / 2;
        List<int> one = FromTheMiddle(first);
        List<int> other = [.. FromTheMiddle(count - first).Select(i => i + first)];
        return [.. one.SelectMany((number, i) => i < other.Count ? (int[])[number, other[i]] : [number])];
    }

    private static List<int> FromTheMiddle(int count) =>
        [.. Enumerable.Range(1, count).OrderBy(i => Math.Abs(2 * i - count - 1)).ThenBy(i => i)];
}
