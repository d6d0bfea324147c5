namespace Leverage.LoadPath;

/// <summary>A solid drive square in torsion.</summary>
public static class DriveSquare
{
    /// <summary>Torque at first yield, T = 0.20817·a³·τ.</summary>
    /// <param name="sideMm">a, across flats, mm, above 0.</param>
    /// <param name="shearYieldMpa">τ, shear yield, MPa, above 0: 0.577 times the tensile yield.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a solid square without detent hole; cut corners cost under 1 %.
    /// Source: Saint-Venant torsion; Timoshenko and Goodier, Theory of Elasticity, table for rectangular bars.
    /// Checked by: shared/checks/squares.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double ElasticTorque(double sideMm, double shearYieldMpa) =>
        0.20817 * Cube(sideMm) * Require.Positive(shearYieldMpa, nameof(shearYieldMpa));

    /// <summary>Fully plastic torque, T = a³·τ/3.</summary>
    /// <param name="sideMm">a, across flats, mm, above 0.</param>
    /// <param name="shearYieldMpa">τ, shear yield, MPa, above 0: 0.577 times the tensile yield.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a solid square without detent hole; an upper estimate of what it stands.
    /// Source: sand-heap analogy; Timoshenko and Goodier, Theory of Elasticity, plastic torsion.
    /// Checked by: shared/checks/squares.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double PlasticTorque(double sideMm, double shearYieldMpa) =>
        Cube(sideMm) * Require.Positive(shearYieldMpa, nameof(shearYieldMpa)) / 3;

    private static double Cube(double sideMm) => Math.Pow(Require.Positive(sideMm, nameof(sideMm)), 3);
}
