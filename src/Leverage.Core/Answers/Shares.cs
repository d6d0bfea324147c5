using System.Globalization;

namespace Leverage.Answers;

/// <summary>Whole percentages that sum to 100: the largest remainders are rounded up.</summary>
public static class Shares
{
    /// <summary>Three shares as whole percentages.</summary>
    /// <param name="first">First share, 0 to 1.</param>
    /// <param name="second">Second share, 0 to 1.</param>
    /// <param name="third">Third share, 0 to 1.</param>
    /// <returns>Texts of whole numbers that sum to 100 when the shares sum to 1.</returns>
    public static (string First, string Second, string Third) Percent(double first, double second, double third)
    {
        double[] exact = [100 * first, 100 * second, 100 * third];
        int[] whole = [.. exact.Select(share => (int)Math.Floor(share + 1e-9))];
        int left = (int)Math.Round(exact.Sum()) - whole.Sum();
        foreach (int i in Enumerable.Range(0, 3).OrderByDescending(i => exact[i] - whole[i]).Take(Math.Clamp(left, 0, 3)))
        {
            whole[i]++;
        }

        return (Text(whole[0]), Text(whole[1]), Text(whole[2]));
    }

    private static string Text(int percent) => percent.ToString(CultureInfo.InvariantCulture);
}
