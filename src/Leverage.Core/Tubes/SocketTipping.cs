namespace Leverage.Tubes;

/// <summary>A lever whose plane stands off the nut's.</summary>
public static class SocketTipping
{
    /// <summary>Ratio of stand-off to engagement, h/e: the push on the socket's rim over the hand force.</summary>
    /// <param name="standOffMm">h, lever's plane to the nut's, mm, 0 or more.</param>
    /// <param name="engagementMm">e, how deep the socket sits on the nut, mm, above 0.</param>
    /// <returns>h/e; above 1 support the head.</returns>
    /// <remarks>
    /// Valid for: an unsupported head; a hand or stand under the head takes the moment.
    /// Source: statics.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Ratio(double standOffMm, double engagementMm) =>
        Require.NotNegative(standOffMm, nameof(standOffMm)) / Require.Positive(engagementMm, nameof(engagementMm));

    /// <summary>Moment that tips the socket off the nut, M = F·h.</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="standOffMm">h, lever's plane to the nut's, mm, 0 or more.</param>
    /// <returns>M, N·mm.</returns>
    /// <remarks>
    /// Valid for: an unsupported head.
    /// Source: statics.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Moment(double forceN, double standOffMm) =>
        Require.NotNegative(forceN, nameof(forceN)) * Require.NotNegative(standOffMm, nameof(standOffMm));
}
