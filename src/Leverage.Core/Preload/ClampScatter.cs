namespace Leverage.Preload;

/// <summary>How far the clamp force differs between joints tightened alike.</summary>
public static class ClampScatter
{
    /// <summary>Largest over smallest clamp force, α_A = (1 + s)/(1 − s).</summary>
    /// <param name="scatter">s, share of the mean either way, 0 to 0.99.</param>
    /// <returns>α_A, 1 or more.</returns>
    /// <remarks>
    /// Valid for: scatter even about the mean.
    /// Source: VDI 2230-1, tightening factor.
    /// Checked by: shared/checks/scatter.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LargestOverSmallest(double scatter) =>
        (1 + Require.Between(scatter, 0, 0.99, nameof(scatter))) / (1 - scatter);
}
