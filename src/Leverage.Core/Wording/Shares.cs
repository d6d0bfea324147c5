namespace Leverage.Wording;

/// <summary>Whole hundredths that sum to 100: the largest remainders are rounded up.</summary>
public static class Shares
{
    /// <summary>Shares as whole hundredths.</summary>
    /// <param name="shares">The shares, each 0 to 1.</param>
    /// <returns>Whole numbers that sum to 100 when the shares sum to 1.</returns>
    public static int[] Hundreds(IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        int[] whole = [.. shares.Select(share => (int)Math.Floor(100 * share + 1e-9))];
        int left = Math.Clamp((int)Math.Round(100 * shares.Sum()) - whole.Sum(), 0, whole.Length);
        foreach (int i in Enumerable.Range(0, whole.Length).OrderByDescending(i => 100 * shares[i] - whole[i]).Take(left))
        {
            whole[i]++;
        }

        return whole;
    }
}
