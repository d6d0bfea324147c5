namespace Leverage.LoadPath;

/// <summary>Test torques of spanners and sockets as a law of their size.</summary>
public static class SpannerTest
{
    /// <summary>Smallest and largest width across flats the law is used for, mm.</summary>
    public const double LeastMm = 5.5;

    /// <inheritdoc cref="LeastMm"/>
    public const double MostMm = 60;

    /// <summary>Test torque of series A, T = 0.2659·s^2.3405 N·m.</summary>
    /// <param name="acrossFlatsMm">s, across flats, mm, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: ring spanners and hand sockets; within 0.6 % of the 24 sizes from 8 to 41 mm in print, carried on to 60 mm.
    /// Source: fitted to the test torques of DIN ISO 1711-1, series A, as a tool catalogue restates them.
    /// Checked by: shared/checks/squares.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double SeriesA(double acrossFlatsMm) =>
        265.9 * Math.Pow(Require.Positive(acrossFlatsMm, nameof(acrossFlatsMm)), 2.3405);
}
