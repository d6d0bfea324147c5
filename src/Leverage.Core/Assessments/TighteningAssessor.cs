using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out a <see cref="TighteningAssessment"/>.</summary>
public static class TighteningAssessor
{
    /// <summary>Assesses a tightening.</summary>
    /// <param name="setup">What is tightened and what is asked.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">The usual grade has no figures at this size.</exception>
    public static TighteningAssessment Assess(TighteningSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        Grade grade = setup.Grade ?? TighteningSetup.UsualGrade(setup.Thread);
        FrictionRange friction = setup.Friction ?? FrictionRange.About(FrictionRange.Default);
        BearingBasis bearing = Bearing(setup.Thread, setup.Face);
        var joint = BoltedJoint.Of(setup.Thread, bearing.Diameter.Millimeters, grade.YieldMpa, setup.TorsionFactor);
        TighteningPoint point = joint.AtYieldShare(setup.YieldShare, friction.Likely);
        InverseTightening? inverse = setup.Torque is { } asked ? Inverse(joint, asked, friction) : null;
        Force aim = inverse?.PreloadLikely ?? Force.FromNewtons(point.PreloadN);
        double target = setup.Torque?.NewtonMillimeters ?? point.TorqueNmm;
        return new TighteningAssessment
        {
            Setup = setup,
            Grade = grade,
            Friction = friction,
            Bearing = bearing,
            Preload = Force.FromNewtons(point.PreloadN),
            Torque = Newton(point.TorqueNmm),
            TorqueLow = Newton(joint.AtPreload(point.PreloadN, friction.Low).TorqueNmm),
            TorqueHigh = Newton(joint.AtPreload(point.PreloadN, friction.High).TorqueNmm),
            Split = new TorqueSplit(Newton(point.PitchPartNmm), Newton(point.ThreadPartNmm), Newton(point.FacePartNmm)),
            NutFactor = NutFactor.FromTorque(point.TorqueNmm, point.PreloadN, setup.Thread.DiameterMm),
            YieldShareAtLowFriction = joint.AtTorque(point.TorqueNmm, friction.Low).YieldShare,
            Loosening = Newton(point.LooseningNmm),
            Inverse = inverse,
            Strip = setup.Tapped is { } hole ? StripAssessment.Of(setup.Thread, grade, hole, aim) : null,
            HangAt = setup.HungMass is { } mass ? Hang(target, mass) : null,
            AdapterSetting = setup.Adapter is { } adapter ? Setting(target, adapter) : null,
        };
    }

    /// <summary>The mean diameter of a bearing face: from a given ring, else the tables, else 1.25·d.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="face">The ring, if given.</param>
    /// <returns>The diameter and where it comes from.</returns>
    public static BearingBasis Bearing(ScrewThread thread, FaceRing? face)
    {
        if (face is not null)
        {
            double mean = BearingFace.MeanDiameter(face.WasherFace.Millimeters, face.Hole.Millimeters);
            return new BearingBasis(Length.FromMillimeters(mean), BearingSource.Given);
        }

        var (bearingMm, fromTables) = HexagonCatalog.Bearing(thread);
        return new BearingBasis(
            Length.FromMillimeters(bearingMm), fromTables ? BearingSource.Tables : BearingSource.Assumed);
    }

    /// <summary>What a torque buys over the range of friction.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="torque">The torque.</param>
    /// <param name="friction">The friction.</param>
    /// <returns>Preloads and shares of yield.</returns>
    public static InverseTightening Inverse(BoltedJoint joint, Torque torque, FrictionRange friction)
    {
        TighteningPoint low = joint.AtTorque(torque.NewtonMillimeters, friction.High);
        TighteningPoint likely = joint.AtTorque(torque.NewtonMillimeters, friction.Likely);
        TighteningPoint high = joint.AtTorque(torque.NewtonMillimeters, friction.Low);
        return new InverseTightening(
            torque,
            Force.FromNewtons(low.PreloadN),
            Force.FromNewtons(likely.PreloadN),
            Force.FromNewtons(high.PreloadN),
            new ShareRange(low.YieldShare, likely.YieldShare, high.YieldShare));
    }

    private static Length Hang(double torqueNmm, Mass mass) =>
        Length.FromMillimeters(HangingWeight.Distance(torqueNmm, mass.Kilograms));

    private static Torque Setting(double torqueNmm, AdapterFitting fitting) => Newton(WrenchAdapter.Setting(
        torqueNmm, fitting.Wrench.Millimeters, fitting.Adapter.Millimeters, fitting.Angle.Radians));

    private static Torque Newton(double torqueNmm) => Torque.FromNewtonMeters(torqueNmm / 1000);
}
