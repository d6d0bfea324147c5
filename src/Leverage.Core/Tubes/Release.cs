namespace Leverage.Tubes;

/// <summary>What happens in the quarter of a second after it lets go.</summary>
public static class Release
{
    /// <summary>Time before a person can react, s (judgement, within published reaction times).</summary>
    public const double ReactionS = 0.25;

    /// <summary>Elastic energy of bar and tube, E = ½·F·y.</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="deflectionMm">y, elastic deflection at the hand, mm, 0 or more.</param>
    /// <returns>E, J.</returns>
    /// <remarks>
    /// Valid for: straight-line elastic bending.
    /// Source: Gere, Mechanics of Materials, 7th ed., strain energy of bending.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Energy(double forceN, double deflectionMm) =>
        0.5e-3 * Require.NotNegative(forceN, nameof(forceN)) * Require.NotNegative(deflectionMm, nameof(deflectionMm));

    /// <summary>Share of the two arms in the body's mass.</summary>
    public const double ArmsShare = 0.10;

    /// <summary>Energy set free where a share of the torque is left, E_free = E·(1 − q²).</summary>
    /// <param name="energyJ">E, elastic energy at the pull, J, 0 or more.</param>
    /// <param name="torqueShare">q, torque still there over torque at break-loose, 0 to 1: 0 for a snap.</param>
    /// <returns>E_free, J.</returns>
    /// <remarks>
    /// Valid for: straight-line elastic bending: energy goes with the square of the torque.
    /// Source: Gere, Mechanics of Materials, 7th ed., strain energy of bending.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Freed(double energyJ, double torqueShare)
    {
        double share = Require.Between(torqueShare, 0, 1, nameof(torqueShare));
        return Require.NotNegative(energyJ, nameof(energyJ)) * (1 - share * share);
    }

    /// <summary>Speed of the hands if stored energy goes into the two arms, v = √(2·E/(0.10·m)).</summary>
    /// <param name="energyJ">E, energy set free, J, 0 or more.</param>
    /// <param name="massKg">m, body mass, kg, above 0.</param>
    /// <returns>v, m/s.</returns>
    /// <remarks>
    /// Valid for: an upper estimate: nothing is lost and the lever weighs nothing.
    /// Source: statics; an arm is 5 % of the body, Winter, Biomechanics and Motor Control of Human Movement (recalled).
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double ArmsSpeed(double energyJ, double massKg) => Math.Sqrt(
        2 * Require.NotNegative(energyJ, nameof(energyJ)) / (ArmsShare * Require.Positive(massKg, nameof(massKg))));

    /// <summary>Speed of the body if it pushes on until it reacts, v = F·(1 − q)·0.25 s/m.</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="torqueShare">q, torque still there over torque at break-loose, 0 to 1.</param>
    /// <param name="massKg">m, body mass, kg, above 0.</param>
    /// <returns>v, m/s.</returns>
    /// <remarks>
    /// Valid for: the body goes on pushing as before until it reacts.
    /// Source: impulse and momentum; a quarter of a second is the usual textbook reaction time.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PushSpeed(double forceN, double torqueShare, double massKg) =>
        Require.NotNegative(forceN, nameof(forceN)) * (1 - Require.Between(torqueShare, 0, 1, nameof(torqueShare)))
            * ReactionS / Require.Positive(massKg, nameof(massKg));
}
