using Leverage.Probability;
using Leverage.Friction;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Torque against friction for one preload, and the torque at which the bolt yields: what a chart of tightening shows.</summary>
public sealed record FrictionCurve
{
    /// <summary>Frictions, rising.</summary>
    public required IReadOnlyList<double> Friction { get; init; }

    /// <summary>Torque that makes the preload at each friction, N·mm.</summary>
    public required IReadOnlyList<double> TorqueNmm { get; init; }

    /// <summary>Torque at which the bolt yields at each friction, tension and torsion together, N·mm.</summary>
    public required IReadOnlyList<double> YieldNmm { get; init; }

    /// <summary>The preload.</summary>
    public required Force Preload { get; init; }

    /// <summary>The torque chosen: what makes the preload at the likely friction.</summary>
    public required Torque Chosen { get; init; }

    /// <summary>Torques that make the preload at the low and the high friction.</summary>
    public required (Torque Low, Torque High) Spread { get; init; }

    /// <summary>The friction and how far it scatters.</summary>
    public required FrictionRange Range { get; init; }

    /// <summary>Friction below which the chosen torque yields the bolt; null where it never does on the curve.</summary>
    public double? YieldsBelow { get; init; }
}

/// <summary>Draws up the curve of a tightening.</summary>
public static class FrictionCurveMaker
{
    private const int Points = 121;
    private const double LeastFriction = 0.02;

    /// <summary>The curve of an assessment, from well below its low friction to well above its high one.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The curve for the preload of the torque asked about, else for the preload worked out.</returns>
    public static FrictionCurve Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var joint = BoltedJoint.Of(
            assessment.Setup.Thread, assessment.Bearing.Diameter.Millimeters, assessment.Grade.YieldMpa, assessment.Setup.TorsionFactor);
        double preloadN = assessment.Result.FirstStage.Likely.Newtons;
        FrictionRange range = assessment.Friction;
        double chosenNmm = joint.AtPreload(preloadN, range.Likely).TorqueNmm;
        double[] friction = Frictions(range);
        return new FrictionCurve
        {
            Friction = friction,
            TorqueNmm = [.. friction.Select(mu => joint.AtPreload(preloadN, mu).TorqueNmm)],
            YieldNmm = [.. friction.Select(mu => joint.AtYieldShare(1, mu).TorqueNmm)],
            Preload = Force.FromNewtons(preloadN),
            Chosen = Torque.FromNewtonMillimeters(chosenNmm),
            Spread = (At(joint, preloadN, range.Low), At(joint, preloadN, range.High)),
            Range = range,
            YieldsBelow = YieldsBelow(joint, chosenNmm, friction),
        };
    }

    private static double[] Frictions(FrictionRange range)
    {
        double from = Math.Max(LeastFriction, 0.5 * range.Low);
        double to = Math.Max(1.25 * range.High, range.Likely + 0.06);
        return [.. Enumerable.Range(0, Points).Select(i => from + (to - from) * i / (Points - 1))];
    }

    private static Torque At(BoltedJoint joint, double preloadN, double friction) =>
        Torque.FromNewtonMillimeters(joint.AtPreload(preloadN, friction).TorqueNmm);

    /// <summary>Halves the range of friction until the torque that yields the bolt is the one given: it rises with friction.</summary>
    private static double? YieldsBelow(BoltedJoint joint, double torqueNmm, double[] friction)
    {
        double low = friction[0];
        double high = friction[^1];
        if (joint.AtYieldShare(1, low).TorqueNmm > torqueNmm)
        {
            return null;
        }

        if (joint.AtYieldShare(1, high).TorqueNmm <= torqueNmm)
        {
            return high;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = joint.AtYieldShare(1, middle).TorqueNmm > torqueNmm ? (low, middle) : (middle, high);
        }

        return high;
    }
}
