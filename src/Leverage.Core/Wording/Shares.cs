using System.Globalization;

namespace Leverage.Wording;

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
        int[] whole = [Floor(exact[0]), Floor(exact[1]), Floor(exact[2])];
        int left = (int)Math.Round(exact[0] + exact[1] + exact[2]) - (whole[0] + whole[1] + whole[2]);
        for (left = Math.Min(left, whole.Length); left > 0; left--)
        {
            whole[LargestRemainder(exact, whole)]++;
        }

        return (Text(whole[0]), Text(whole[1]), Text(whole[2]));
    }

    private static int Floor(double percent) => (int)Math.Floor(percent + 1e-9);

    /// <summary>The first of the largest; one rounded up already has none left.</summary>
    private static int LargestRemainder(double[] exact, int[] whole)
    {
        int largest = 0;
        for (int i = 1; i < exact.Length; i++)
        {
            largest = exact[i] - whole[i] > exact[largest] - whole[largest] ? i : largest;
        }

        return largest;
    }

    private static string Text(int percent) => percent.ToString(CultureInfo.InvariantCulture);
}
