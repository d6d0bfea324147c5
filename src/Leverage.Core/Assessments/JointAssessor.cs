using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Works out what a torque, or a torque and then a turn, makes of a joint.</summary>
public static class JointAssessor
{
    /// <summary>Largest turn after a first torque: two whole turns, twice what any standard asks for.</summary>
    private const double MostTurns = 2;

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

    /// <summary>Preload and share of yield of a torque over the range of friction.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="torque">The torque.</param>
    /// <param name="friction">The friction.</param>
    /// <returns>Preloads as if nothing yielded, and shares of yield.</returns>
    public static PreloadFigures Preloads(BoltedJoint joint, Torque torque, FrictionRange friction)
    {
        TighteningPoint At(double mu) => joint.AtTorque(torque.NewtonMillimeters, mu);
        var (low, likely, high) = (At(friction.High), At(friction.Likely), At(friction.Low));
        return new PreloadFigures(
            Force.FromNewtons(low.PreloadN),
            Force.FromNewtons(likely.PreloadN),
            Force.FromNewtons(high.PreloadN),
            new ShareRange(low.YieldShare, likely.YieldShare, high.YieldShare));
    }

    /// <summary>The grade, friction and joint of a set-up, with its blanks filled.</summary>
    internal static (Grade Grade, FrictionRange Friction, BearingBasis Bearing, BoltedJoint Joint) Basis(
        JointSetup setup, double torsionFactor = TensionAndTorsion.Plastic)
    {
        Grade grade = setup.Grade ?? JointSetup.UsualGrade(setup.Thread);
        BearingBasis bearing = Bearing(setup.Thread, setup.Face);
        return (
            grade,
            setup.Friction ?? FrictionRange.Unknown,
            bearing,
            BoltedJoint.Of(setup.Thread, bearing.Diameter.Millimeters, grade.YieldMpa, torsionFactor));
    }

    /// <summary>The torque to set for a set-up, and what sets it.</summary>
    internal static (Torque Torque, TorqueLimit By) ToSet(JointSetup setup, double yieldShare, double torsionFactor = TensionAndTorsion.Plastic)
    {
        var (grade, friction, _, joint) = Basis(setup, torsionFactor);
        var (torqueNmm, by) = TighteningRule.Set(joint, friction, yieldShare, Strip(setup, grade)?.StripLoad);
        return (Torque.FromNewtonMeters(torqueNmm / 1000), by);
    }

    /// <summary>What a torque makes of the joint of a set-up.</summary>
    internal static JointAssessment Of(JointSetup setup, Torque torque, double torsionFactor = TensionAndTorsion.Plastic)
    {
        var (grade, friction, bearing, joint) = Basis(setup, torsionFactor);
        BoltedGrip grip = BoltedGrip.Of(setup.Thread, setup.Request.Grip, setup.Clamped);
        PreloadFigures first = Preloads(joint, torque, friction);
        double turn = Turn(setup);
        double snug = setup.Request.SnugByHand ? TurnedJoint.SnugFactor : 1;
        TurnedJoint After(Force force, double factor, double mu) =>
            TurnedJoint.After(joint, grip, force.Newtons * factor, turn, mu);
        var (low, likely, high) = (
            After(first.Low, 1 / snug, friction.High), After(first.Likely, 1, friction.Likely), After(first.High, snug, friction.Low));
        var end = new PreloadFigures(
            Force.FromNewtons(low.PreloadN),
            Force.FromNewtons(likely.PreloadN),
            Force.FromNewtons(high.PreloadN),
            new ShareRange(low.YieldShare, likely.YieldShare, high.YieldShare));
        BoltedJoint atBreak = joint with { YieldMpa = grade.TensileMpa, TorsionFactor = TensionAndTorsion.Plastic };
        var (breaksAtLow, breaks) = (atBreak.AtYieldShare(1, friction.Low), atBreak.AtYieldShare(1, friction.Likely));
        var result = new JointAssessment
        {
            Setup = setup,
            Grade = grade,
            Friction = friction,
            Bearing = bearing,
            Torque = torque,
            FirstStage = first,
            End = end,
            Angle = setup.Request.Then is null ? null : Figures(turn, likely, grip, BoltStretch.AtBreaking(grade, setup.Thread.DiameterMm)),
            Method = setup.With ?? (setup.Request.Then is null ? TighteningMethod.Wrench : TighteningMethod.Angle),
            Castle = setup.Request.CastleSlots is { } slots ? Castle(slots, likely, joint, grip, friction.Likely) : null,
            Strip = Strip(setup, grade),
            MostPreload = Force.FromNewtons(Math.Max(end.High.Newtons, Math.Min(first.High.Newtons, breaksAtLow.PreloadN))),
            Breaking = (Torque.FromNewtonMeters(breaksAtLow.TorqueNmm / 1000), Torque.FromNewtonMeters(breaks.TorqueNmm / 1000)),
            Loosening = Torque.FromNewtonMeters(likely.LooseningNmm / 1000),
            Assumed = [.. Assumed(setup, grade, friction, bearing, grip)],
        };
        return setup.Request.AdjustableBearing ? result : result with
        {
            Quote = result.StripMargin < 1 ? TorqueVerdict.Strips
                : torque >= result.Breaking.Likely || result.TurnBreaks ? TorqueVerdict.Breaks
                : TighteningRule.Judge(end.YieldShare),
        };
    }

    private static StripAssessment? Strip(JointSetup setup, Grade grade) =>
        setup.Tapped is { } hole ? StripAssessment.Of(setup.Thread, grade, hole) : null;

    private static IEnumerable<Assumption> Assumed(JointSetup setup, Grade grade, FrictionRange friction, BearingBasis bearing, BoltedGrip grip)
    {
        if (setup.Grade is null)
        {
            yield return new Assumption(AssumptionKind.Grade) { Name = grade.Name };
        }

        if (setup.Friction is null)
        {
            yield return new Assumption(AssumptionKind.AssemblyFriction, null, ValueStatus.Judgement) { Friction = friction };
        }

        if (setup.Request is { Then: not null, Grip: null })
        {
            yield return new Assumption(AssumptionKind.ClampedLength, Length.FromMillimeters(grip.GripMm), ValueStatus.Judgement) { Share = BoltedGrip.UsualDiameters };
        }

        if (setup is { Request.Then: not null, Clamped: null })
        {
            yield return new Assumption(AssumptionKind.ClampsSteel);
        }

        if (bearing.Source != BearingSource.Given)
        {
            yield return bearing.Source == BearingSource.Tables
                ? new Assumption(AssumptionKind.BearingMean, bearing.Diameter)
                : new Assumption(AssumptionKind.BearingFace, bearing.Diameter) { Share = HexagonCatalog.FaceOverDiameter };
        }
    }

    private static double Turn(JointSetup setup)
    {
        if (setup.Request.Then is not { } then)
        {
            return 0;
        }

        return then.Radians > 0 && then.Radians <= MostTurns * 2 * Math.PI
            ? then.Radians
            : throw new InputException("a turn after the first torque is above 0 and at most 720 degrees. Write for example 90deg.");
    }

    private static AngleFigures Figures(double turnRad, TurnedJoint likely, BoltedGrip grip, StretchLimit? breaksAt) => new(
        Angle.FromRadians(turnRad),
        Angle.FromRadians(likely.ElasticRad),
        Force.FromNewtons(likely.PreloadN),
        likely.Yields,
        Length.FromMillimeters(likely.StretchMm),
        likely.StretchShare,
        Length.FromMillimeters(grip.GripMm),
        breaksAt);

    private static CastleFigures Castle(int slots, TurnedJoint likely, BoltedJoint joint, BoltedGrip grip, double friction)
    {
        if (slots is < 3 or > 24)
        {
            throw new InputException("a castle nut has 3 to 24 slots. Write for example 6.");
        }

        TurnedJoint next = TurnedJoint.After(joint, grip, likely.PreloadN, 2 * Math.PI / slots, friction);
        return new CastleFigures(
            slots, Angle.FromRadians(2 * Math.PI / slots), Force.FromNewtons(next.PreloadN - likely.PreloadN), next.YieldShare);
    }
}
