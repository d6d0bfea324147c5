namespace Leverage.Corners;

/// <summary>An open jaw on a nut.</summary>
/// <param name="EngagedHeightMm">h, height of the nut the jaw holds, mm, above 0.</param>
/// <param name="AcrossFlatsMm">s, width across flats, mm, above 0.</param>
/// <param name="YieldMpa">Re, yield of the nut, MPa, above 0.</param>
/// <param name="Play">p0, play of the jaw before it spreads, share of s, 0 or more.</param>
/// <param name="Wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
/// <param name="TestTorqueNmm">Torque the spanner must stand in its test, N·mm, above 0.</param>
public readonly record struct JawGrip(
    double EngagedHeightMm, double AcrossFlatsMm, double YieldMpa, double Play, double Wear, double TestTorqueNmm);

/// <summary>Torque at which the corners of a hexagon round off, T = m·h·s²·Re, with m by the kind of driver.</summary>
public static class CornerHold
{
    /// <summary>m at which the nut shears round its bore of 0.62 s, 2π·0.31²/√3: no driver gets more out of it.</summary>
    public const double Most = 0.349;

    /// <summary>m of one contact of a driver without play, from our own solids.</summary>
    public const double OneContact = 0.097;

    /// <summary>m of twelve points that touch at once, from our own solids.</summary>
    public const double TwelveAtOnce = 0.38;

    /// <summary>m that twelve points lose for each degree of free swing, from our own solids.</summary>
    public const double TwelvePerDegree = 0.032;

    /// <summary>Play a jaw gains by spreading at its own test torque, share of the width across flats (judgement).</summary>
    public const double SpreadAtTest = 0.02;

    /// <summary>m of a socket or ring of six points, min(0.349, 6·0.097·(1 − p/pm)).</summary>
    /// <param name="play">p, share of the width across flats, 0 or more.</param>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>m; 0 where the nut spins in it.</returns>
    /// <remarks>
    /// Valid for: a rigid driver, square on the nut, friction about 0.15; as a real torque a factor of 1.5 either way.
    /// Source: our own plane-strain solids, tests/Engines/corner.py; no published figure was found.
    /// Checked by: shared/checks/corners.csv, shared/checks/corner-solids.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SixPoints(double play, double wear) => Math.Min(Most, 6 * OneContact * Bite(play, wear));

    /// <summary>m of a jaw that does not spread, 2·0.097·(1 − p/pm).</summary>
    /// <param name="play">p, share of the width across flats, 0 or more.</param>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>m; 0 where the nut spins in it.</returns>
    /// <remarks>
    /// Valid for: a rigid jaw, square on the nut: a real one gives at no more than this.
    /// Source: our own plane-strain solids, tests/Engines/corner.py; no published figure was found.
    /// Checked by: shared/checks/corners.csv, shared/checks/corner-solids.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double RigidJaw(double play, double wear) => 2 * OneContact * Bite(play, wear);

    /// <summary>m of a socket or ring of twelve points, min(0.349, 0.38 − 0.032·φ), φ the free swing in degrees.</summary>
    /// <param name="play">p, share of the width across flats, 0 or more.</param>
    /// <param name="wear">w, share of the width across corners that is gone, 0 to 0.13.</param>
    /// <returns>m; 0 where nothing is left of it.</returns>
    /// <remarks>
    /// Valid for: a rigid driver, square on the nut, friction about 0.15; as a real torque a factor of 1.5 either way.
    /// Source: our own plane-strain solids, tests/Engines/corner.py; no published figure was found.
    /// Checked by: shared/checks/corners.csv, shared/checks/corner-solids.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TwelvePoints(double play, double wear) => Math.Clamp(
        TwelveAtOnce - TwelvePerDegree * 180 / Math.PI * HexagonShape.FreeSwing(play, wear), 0, Most);

    /// <summary>Torque at the limit, T = m·h·s²·Re.</summary>
    /// <param name="coefficient">m, 0 to 0.349.</param>
    /// <param name="engagedHeightMm">h, height of the nut the tool really holds, mm, above 0.</param>
    /// <param name="acrossFlatsMm">s, width across flats, mm, above 0.</param>
    /// <param name="yieldMpa">Re, yield of the nut, MPa, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a height that is held evenly; steel far stiffer than strong (Re/E up to 0.003).
    /// Source: similarity of plastic solids; our own solids hold it, tests/Engines/corner.py.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double coefficient, double engagedHeightMm, double acrossFlatsMm, double yieldMpa) =>
        Require.Between(coefficient, 0, Most, nameof(coefficient)) * Require.Positive(engagedHeightMm, nameof(engagedHeightMm))
            * Require.Positive(acrossFlatsMm, nameof(acrossFlatsMm)) * acrossFlatsMm * Require.Positive(yieldMpa, nameof(yieldMpa));

    /// <summary>
    /// Torque at the limit of a jaw that spreads by 0.02·s at its test torque: T = T1/(1 + 0.02·T0/(pm·T_test)), T1 that of the rigid
    /// jaw with its play, T0 that of one without; p = p0 + 0.02·T/T_test put into the rigid jaw and solved for T.
    /// </summary>
    /// <param name="jaw">Jaw and nut.</param>
    /// <returns>T, N·mm; 0 where the nut spins in it.</returns>
    /// <remarks>
    /// Valid for: an open spanner square on the nut; how far it spreads is our own estimate.
    /// Source: our own plane-strain solids, tests/Engines/corner.py; test torques of ISO 1711-1.
    /// Checked by: shared/checks/corners.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SpreadingJaw(JawGrip jaw)
    {
        double whole = Torque(2 * OneContact, jaw.EngagedHeightMm, jaw.AcrossFlatsMm, jaw.YieldMpa);
        double softer = SpreadAtTest * whole / Require.Positive(jaw.TestTorqueNmm, nameof(jaw.TestTorqueNmm));
        return whole * Bite(jaw.Play, jaw.Wear) / (1 + softer / HexagonShape.SpinningPlay(jaw.Wear));
    }

    /// <summary>What is left of one contact, 1 − p/pm, 0 where it spins.</summary>
    private static double Bite(double play, double wear) =>
        Math.Max(0, 1 - Require.NotNegative(play, nameof(play)) / HexagonShape.SpinningPlay(wear));
}
