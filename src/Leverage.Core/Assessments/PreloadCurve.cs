using Leverage.Preload;
using Leverage.Stiffness;

namespace Leverage.Assessments;

/// <summary>Preload at one friction, over the torques and then over the turns of a <see cref="PreloadCurve"/>.</summary>
/// <param name="Friction">μ of thread and face.</param>
/// <param name="ByTorqueN">Preload at each torque, N; flat where the bolt yields.</param>
/// <param name="ByTurnN">Preload at each turn after the first torque, N; empty where none follows.</param>
public sealed record PreloadLine(double Friction, IReadOnlyList<double> ByTorqueN, IReadOnlyList<double> ByTurnN);

/// <summary>Preload against torque, and against the turn that follows it, with where the bolt yields: what a chart of tightening shows.</summary>
public sealed record PreloadCurve
{
    private const int Points = 121;
    private const double LeastFriction = 0.02;
    private const double MostFriction = 1;

    /// <summary>Torques, rising from 0, N·mm.</summary>
    public required IReadOnlyList<double> TorqueNmm { get; init; }

    /// <summary>Turns after the first torque, rising from 0, rad; empty where none follows.</summary>
    public required IReadOnlyList<double> TurnRad { get; init; }

    /// <summary>At the low, the likely and the high friction; one line where there is no range.</summary>
    public required IReadOnlyList<PreloadLine> Lines { get; init; }

    /// <summary>Torques at which the bolt yields at one friction after another, rising, N·mm.</summary>
    public required IReadOnlyList<double> YieldTorqueNmm { get; init; }

    /// <summary>Preloads at those, N.</summary>
    public required IReadOnlyList<double> YieldN { get; init; }

    /// <summary>What it was worked out for.</summary>
    public required JointAssessment Result { get; init; }

    /// <summary>The least and the most preload of the way of tightening, N: the likely one less and more its scatter, never past yield.</summary>
    public required (double Least, double Most) Scatter { get; init; }

    /// <summary>The curve of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The curve of the torque asked about, else of the torque set.</returns>
    public static PreloadCurve Of(TighteningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        JointAssessment result = assessment.Result;
        var (_, friction, _, joint) = JointAssessor.Basis(assessment.Setup, assessment.Setup.TorsionFactor);
        BoltedGrip grip = BoltedGrip.Of(assessment.Setup.Thread, assessment.Setup.Request.Grip, assessment.Setup.Clamped);
        double most = Math.Max(1.3 * result.Torque.NewtonMillimeters, 1.08 * joint.AtYieldShare(1, friction.Likely).TorqueNmm);
        double[] torques = Even(most);
        double[] turns = result.Angle is { } angle ? Even(angle.Turn.Radians) : [];
        double snug = assessment.Setup.Request.SnugByHand ? TurnedJoint.SnugFactor : 1;
        PreloadLine Line(double mu, double factor)
        {
            double yieldN = joint.AtYieldShare(1, mu).PreloadN;
            double first = joint.AtTorque(result.Torque.NewtonMillimeters, mu).PreloadN * factor;
            return new PreloadLine(
                mu,
                [.. torques.Select(torque => Math.Min(yieldN, joint.AtTorque(torque, mu).PreloadN))],
                [.. turns.Select(turn => TurnedJoint.After(joint, grip, first, turn, mu).PreloadN)]);
        }

        TighteningPoint[] yields =
        [
            .. Enumerable.Range(0, Points)
                .Select(i => LeastFriction * Math.Pow(MostFriction / LeastFriction, i / (Points - 1.0)))
                .Select(mu => joint.AtYieldShare(1, mu)),
        ];
        double likely = result.End.Likely.Newtons;
        return new PreloadCurve
        {
            TorqueNmm = torques,
            TurnRad = turns,
            Lines = friction.Low < friction.High || snug > 1
                ? [Line(friction.Low, snug), Line(friction.Likely, 1), Line(friction.High, 1 / snug)]
                : [Line(friction.Likely, 1)],
            YieldTorqueNmm = [.. yields.Select(point => point.TorqueNmm)],
            YieldN = [.. yields.Select(point => point.PreloadN)],
            Result = result,
            Scatter = (
                likely * (1 - result.Method.High),
                Math.Min(likely * (1 + result.Method.High), joint.AtYieldShare(1, friction.Low).PreloadN)),
        };
    }

    private static double[] Even(double most) => [.. Enumerable.Range(0, Points).Select(i => most * i / (Points - 1))];
}
