using Leverage.Preload;

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

    /// <summary>Speed of the hands after the reaction time, v = F·(1 − q)·0.25 s/m.</summary>
    /// <param name="forceN">F, force of the hands, N, 0 or more.</param>
    /// <param name="runningShare">q, torque still there over torque at break-loose, 0 to 1.</param>
    /// <param name="massKg">m, body mass, kg, above 0.</param>
    /// <returns>v, m/s.</returns>
    /// <remarks>
    /// Valid for: the body goes on pushing as before until it reacts.
    /// Source: impulse and momentum; a quarter of a second is the usual textbook reaction time.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double HandSpeed(double forceN, double runningShare, double massKg) =>
        Require.NotNegative(forceN, nameof(forceN)) * (1 - Require.Between(runningShare, 0, 1, nameof(runningShare)))
            * ReactionS / Require.Positive(massKg, nameof(massKg));

    /// <summary>Height from which a 1 kg hammer falls with the same energy, h = E/(1 kg·g).</summary>
    /// <param name="energyJ">E, energy, J, 0 or more.</param>
    /// <returns>h, mm.</returns>
    /// <remarks>
    /// Valid for: a picture for the mind, no injury model.
    /// Source: statics; standard gravity of CGPM 1901.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double HammerDrop(double energyJ) =>
        1000 * Require.NotNegative(energyJ, nameof(energyJ)) / HangingWeight.StandardGravity;
}
