namespace Leverage.LoadPath;

/// <summary>A solid hexagon key in torsion.</summary>
public static class HexagonKey
{
    /// <summary>Fully plastic torque, T = s³·τ/(2·√3).</summary>
    /// <param name="acrossFlatsMm">s, across flats, mm, above 0.</param>
    /// <param name="shearMpa">τ, shear strength, MPa, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a solid hexagon; test torques of ISO 2936 keys correspond to τ of 690 to 870 MPa.
    /// Source: sand-heap analogy, twice the volume of the heap on a hexagon.
    /// Checked by: shared/checks/hexagon-keys.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite and above 0.</exception>
    public static double PlasticTorque(double acrossFlatsMm, double shearMpa) =>
        Math.Pow(Require.Positive(acrossFlatsMm, nameof(acrossFlatsMm)), 3)
            * Require.Positive(shearMpa, nameof(shearMpa)) / (2 * Math.Sqrt(3));
}
