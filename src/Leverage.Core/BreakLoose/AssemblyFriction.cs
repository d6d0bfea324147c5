using Leverage.Preload;
using Leverage.Probability;
using Leverage.Reading;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>Friction of a joint as it was tightened, when its torque asks for more than the bolt can give.</summary>
public static class AssemblyFriction
{
    /// <summary>Most friction that is believed: no torque can be explained by more.</summary>
    public const double Most = 1;

    /// <summary>The friction, raised until the torque just reaches yield: least μ ≥ μa with T0/[d2/2·tan(ρ'+φ) + μ·Db/2] ≤ F_yield(μ).</summary>
    /// <param name="torqueNmm">T0, tightening torque, N·mm, 0 or more.</param>
    /// <param name="joint">Thread and bearing face, mm.</param>
    /// <param name="stressDiameterMm">d0, diameter of the stress area, mm, above 0.</param>
    /// <param name="yieldMpa">Rp, yield or 0.2 % proof strength, MPa, above 0.</param>
    /// <param name="friction">μa, friction as far as it is known, 0 to 1.</param>
    /// <returns>μ, from μa to 1.</returns>
    /// <remarks>
    /// Valid for: thread and face alike, torsion fully plastic at yield.
    /// Source: VDI 2230-1, tightening torque against the yield in tension and torsion, solved for the friction.
    /// Checked by: shared/checks/breaking-loose.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="InputException">No friction up to 1 explains the torque.</exception>
    public static double Believed(double torqueNmm, Joint joint, double stressDiameterMm, double yieldMpa, double friction)
    {
        double least = Require.Between(friction, 0, Most, nameof(friction));
        if (Spare(torqueNmm, joint, stressDiameterMm, yieldMpa, least) >= 0)
        {
            return least;
        }

        if (Spare(torqueNmm, joint, stressDiameterMm, yieldMpa, Most) < 0)
        {
            throw new InputException("no bolt of this thread and grade takes that torque: even at a friction of 1 it would have yielded. Look the torque up again.");
        }

        return Root.Between(least, Most, tried => Spare(torqueNmm, joint, stressDiameterMm, yieldMpa, tried));
    }

    /// <summary>Preload at yield less the preload the torque buys, N.</summary>
    private static double Spare(double torqueNmm, Joint joint, double stressDiameterMm, double yieldMpa, double friction)
    {
        var section = new TensionAndTorsion(
            stressDiameterMm,
            joint.PitchDiameterMm,
            ThreadGeometry.LeadAngle(joint.PitchDiameterMm, joint.LeadMm),
            ThreadFriction.Angle(friction, joint.HalfAngleRad),
            TensionAndTorsion.Plastic);
        return AssemblyPreload.AtYieldShare(1, yieldMpa, section)
            - JointTorque.Preload(torqueNmm, joint, JointFriction.Same(friction));
    }
}
