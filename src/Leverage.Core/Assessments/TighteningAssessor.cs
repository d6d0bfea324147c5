using Leverage.Preload;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out a <see cref="TighteningAssessment"/>.</summary>
public static class TighteningAssessor
{
    /// <summary>Assesses a tightening.</summary>
    /// <param name="setup">What is tightened and what is asked.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="InputException">The usual grade has no figures at this size, or a turn follows no torque.</exception>
    public static TighteningAssessment Assess(JointSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        if (setup.Request is { Then: not null, Torque: null })
        {
            throw new InputException("a turn follows a first torque: give that too, such as 60Nm.");
        }

        var (_, friction, _, joint) = JointAssessor.Basis(setup, setup.TorsionFactor);
        var (set, by) = JointAssessor.ToSet(setup, setup.YieldShare, setup.TorsionFactor);
        JointAssessment result = JointAssessor.Of(setup, setup.Request.Torque ?? set, setup.TorsionFactor);
        double target = result.Torque.NewtonMillimeters;
        TighteningPoint point = joint.AtTorque(target, friction.Likely);
        return new TighteningAssessment
        {
            Setup = setup,
            Result = result,
            Torque = set,
            SetBy = by,
            Split = new TorqueSplit(Newton(point.PitchPartNmm), Newton(point.ThreadPartNmm), Newton(point.FacePartNmm)),
            NutFactor = NutFactor.FromTorque(target, point.PreloadN, setup.Thread.DiameterMm),
            HangAt = setup.HungMass is { } mass ? Hang(target, mass) : null,
            AdapterSetting = setup.Adapter is { } adapter ? Setting(target, adapter) : null,
        };
    }

    private static Length Hang(double torqueNmm, Mass mass) =>
        Length.FromMillimeters(HangingWeight.Distance(torqueNmm, mass.Kilograms));

    private static Torque Setting(double torqueNmm, AdapterFitting fitting) => Newton(WrenchAdapter.Setting(
        torqueNmm, fitting.Wrench.Millimeters, fitting.Adapter.Millimeters, fitting.Angle.Radians));

    private static Torque Newton(double torqueNmm) => Torque.FromNewtonMeters(torqueNmm / 1000);
}
