namespace Leverage.Corners;

/// <summary>Geometry of a hexagon whose corners are worn, in a driver that has play. Play and wear are shares.</summary>
public static class HexagonShape
{
    /// <summary>Wear up to which corners are judged; at 1 − √3/2 = 0.134 the nut is round.</summary>
    public const double MostWear = 0.13;

    private static readonly double CornersOverFlats = 2 / Math.Sqrt(3);

    /// <summary>Play at which the hexagon spins freely, pm = 2/√3·(1 − w) − 1.</summary>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>pm, share of the width across flats.</returns>
    /// <remarks>
    /// Valid for: a regular hexagon in any straight-sided driver.
    /// Source: geometry, the width across corners is 2/√3 of that across flats.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wear is outside its range.</exception>
    public static double SpinningPlay(double wear) => CornersOverFlats * (1 - Worn(wear)) - 1;

    /// <summary>Radius of the rounded corner, ρ = w·(1/√3)/(2/√3 − 1).</summary>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>ρ, share of the width across flats.</returns>
    /// <remarks>
    /// Valid for: corners rounded to an arc that meets the flats smoothly.
    /// Source: geometry, an arc between two faces at 120°.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wear is outside its range.</exception>
    public static double CornerRadius(double wear) => Worn(wear) * CornersOverFlats / 2 / (CornersOverFlats - 1);

    /// <summary>Swing of the driver before it touches the corners, φ = 30° − acos(((1 + p)/2 − ρ)/(1/√3 − 2·ρ/√3)).</summary>
    /// <param name="play">p, opening less nut over the width across flats, 0 or more.</param>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>φ, rad; 30° where it spins.</returns>
    /// <remarks>
    /// Valid for: a driver whose faces lie a sixth of a turn apart, from flat on flat.
    /// Source: geometry, the distance of a turned face from the centre of the corner's arc.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FreeSwing(double play, double wear)
    {
        double radius = CornerRadius(wear);
        double face = (1 + Require.NotNegative(play, nameof(play))) / 2 - radius;
        return Math.PI / 6 - Math.Acos(Math.Min(1, face / (CornersOverFlats / 2 - CornersOverFlats * radius)));
    }

    private static double Worn(double wear) => Require.Between(wear, 0, MostWear, nameof(wear));
}
