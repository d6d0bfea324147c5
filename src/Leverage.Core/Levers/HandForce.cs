using Leverage.Preload;

namespace Leverage.Levers;

/// <summary>Force a person puts on a lever.</summary>
public static class HandForce
{
    /// <summary>Force scaled to a body mass, F = F_table·(m/m_ref)^n.</summary>
    /// <param name="tableN">F_table, force of the reference person, N, above 0.</param>
    /// <param name="massKg">m, body mass, kg, above 0.</param>
    /// <param name="referenceMassKg">m_ref, reference body mass, kg, above 0.</param>
    /// <param name="exponent">n, 1 where body weight does the work, 0.67 where muscle does, 0 to 1.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: adults; the spread between people of one mass is far larger than this correction.
    /// Source: judgement, after the scaling of strength with the square of length.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Scaled(double tableN, double massKg, double referenceMassKg, double exponent) =>
        Require.Positive(tableN, nameof(tableN)) * Math.Pow(
            Require.Positive(massKg, nameof(massKg)) / Require.Positive(referenceMassKg, nameof(referenceMassKg)),
            Require.Between(exponent, 0, 1, nameof(exponent)));

    /// <summary>Force left for pulls repeated more than once in half a minute, F = 0.7·F_once.</summary>
    /// <param name="onceN">F_once, force of a single short pull, N, above 0.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: short strong pulls with hardly a rest between them.
    /// Source: Human Factors Design Standard of the FAA, chapter 14.5.2.2, from MIL-HDBK-759B and MIL-STD-1472D: decrease by 0.30.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double Repeated(double onceN) => 0.7 * Require.Positive(onceN, nameof(onceN));

    /// <summary>Force of two like persons on one lever, F = 2/3·2·F_one.</summary>
    /// <param name="oneN">F_one, force of one of them alone, N, above 0.</param>
    /// <returns>F, N.</returns>
    /// <remarks>
    /// Valid for: two persons alike; published for lifting a load, taken for a lever too (judgement).
    /// Source: safety guidance of a railway after the British safety executive: a team of two, two thirds of the sum of both.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double Together(double oneN) => TwoOverOne * Require.Positive(oneN, nameof(oneN));

    /// <summary>What two do together over what one does: two thirds of the sum.</summary>
    internal const double TwoOverOne = 2 * 2.0 / 3;

    /// <summary>The most a person can push down without holding on to something: body weight, m·g.</summary>
    /// <param name="massKg">m, body mass, kg, above 0.</param>
    /// <returns>Force, N.</returns>
    /// <remarks>
    /// Valid for: feet free, no jumping.
    /// Source: statics; standard gravity of CGPM 1901.
    /// Checked by: shared/checks/levers.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PushDownCap(double massKg) =>
        Require.Positive(massKg, nameof(massKg)) * HangingWeight.StandardGravity;
}
