using Leverage.Friction;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;
using static System.FormattableString;
using F = Leverage.Requests.Field<Leverage.Requests.TighteningRequest>;

namespace Leverage.Requests;

/// <summary>Every question about a joint that is tightened, each defined once; every door is made of these.</summary>
internal static class TighteningFields
{
    internal static readonly Field<TighteningRequest, TorqueAndTurn> Quoted = F.Of(
        "torque", Kinds.TorqueAndTurn("130Nm"), "the torque quoted: 130Nm, 96ft-lb, '90Nm + 90deg'", Both, Torqued, inPlace: true);

    internal static readonly Field<TighteningRequest, ScrewThread> Thread = F.Of(
        "thread", Kinds.Thread with { Example = "M12x1.25" }, "size: M12x1.25, M12 (coarse), 1/2-20",
        r => r.Thread, (r, v) => r with { Thread = v });

    internal static readonly Field<TighteningRequest, string> Grade = F.Of(
        "grade", Kinds.Grade, "of the bolt: 8.8, SAE 5, A2-70",
        r => r.Grade, (r, v) => r with { Grade = v }, leftOut: Kinds.UsualGrade, needs: [Thread]);

    internal static readonly Field<TighteningRequest, double> Friction = F.Of(
        "friction", Kinds.Number("0.14", AcceptedRange.JointFriction), "of thread and face",
        r => r.Friction, (r, v) => r with { Friction = v }, leftOut: Invariant($"{FrictionRange.Default}; {FrictionRange.Unknown.Low:0.00} to {FrictionRange.Unknown.High:0.000}"));

    internal static readonly Field<TighteningRequest, string> Lubrication = F.Of(
        "lubrication", Kinds.Row("friction", "a lubrication", "oiled"), "what is on the thread: table friction",
        r => r.Lubrication, (r, v) => r with { Lubrication = v });

    internal static readonly Field<TighteningRequest, Length> WasherFace = F.Of(
        "dw", Kinds.Length("16.6mm"), "washer face's outer diameter",
        r => r.WasherFace, (r, v) => r with { WasherFace = v }, leftOut: "ISO 4014");

    internal static readonly Field<TighteningRequest, Length> Hole = F.Of(
        "dh", Kinds.Length("13.5mm"), "clearance hole", r => r.Hole, (r, v) => r with { Hole = v }, leftOut: "ISO 273 medium");

    internal static readonly Field<TighteningRequest, double> YieldShare = F.Of(
        "yield-share", Kinds.Share("90%"), "share of yield to tighten to",
        r => r.YieldShare, (r, v) => r with { YieldShare = v }, leftOut: Invariant($"{100 * UsualValues.YieldShare}%"));

    internal static readonly Field<TighteningRequest, double> Torsion = F.Of(
        "torsion", Kinds.Choice(("plastic", TensionAndTorsion.Plastic), ("elastic", TensionAndTorsion.Elastic)), "how twisting the bolt counts",
        r => r.Torsion, (r, v) => r with { Torsion = v }, leftOut: "plastic; older tables elastic");

    internal static readonly Field<TighteningRequest, TorqueAndTurn> Torque = F.Of(
        "torque", Kinds.TorqueAndTurn("90Nm"), "what preload does this torque make?", Both, Torqued);

    internal static readonly Field<TighteningRequest, Angle> Then = F.Of(
        "then", Kinds.Turn("90deg"), "turn after that torque", r => r.Then, Turned, needs: [Torque]);

    internal static readonly Field<TighteningRequest, bool> SnugByHand = F.Flag(
        "snug-by-hand", "that torque is a pull by hand, no wrench", r => r.SnugByHand, (r, v) => r with { SnugByHand = v }, [Then]);

    internal static readonly Field<TighteningRequest, string> With = F.Of(
        "with", Kinds.Choice(("wrench", "wrench"), ("angle", "angle"), ("feel", "feel"), ("impact", "impact")), "what tightens it",
        r => r.With, (r, v) => r with { With = v }, leftOut: "wrench; angle after a turn");

    internal static readonly Field<TighteningRequest, int> Castle = F.Of(
        "castle", Kinds.Count("6", new AcceptedRange(3, 24, "")), "slots of a castle nut; 6 if not counted",
        r => r.CastleSlots, (r, v) => r with { CastleSlots = v });

    internal static readonly Field<TighteningRequest, Length> ClampedLength = F.Of(
        "grip", Kinds.Length("45mm"), "length the bolt clamps", r => r.Grip, (r, v) => r with { Grip = v }, leftOut: Kinds.UsualGrip, needs: [Then, Castle]);

    internal static readonly Field<TighteningRequest, string> Clamped = F.Of(
        "clamped", Kinds.Row("clamped-materials", "a clamped material", "steel"), "what it clamps",
        r => r.Clamped, (r, v) => r with { Clamped = v }, leftOut: "steel", needs: [Then, Castle]);

    internal static readonly Field<TighteningRequest, bool> LeftHand = F.Flag(
        "left-hand", "left-hand thread", r => r.LeftHand, (r, v) => r with { LeftHand = v });

    internal static readonly Field<TighteningRequest, bool> Staked = F.Flag(
        "staked", "the nut has a collar to stake", r => r.Staked, (r, v) => r with { Staked = v });

    internal static readonly Field<TighteningRequest, bool> Locker = F.Flag(
        "locker", "thread locker goes on it", r => r.Locker, (r, v) => r with { Locker = v });

    internal static readonly Field<TighteningRequest, bool> Adjustable = F.Flag(
        "adjustable", "the nut sets the play of a bearing", r => r.AdjustableBearing, (r, v) => r with { AdjustableBearing = v });

    internal static readonly Field<TighteningRequest, bool> RoughThread = F.Flag(
        "rough-thread", "thread dirty, rusty or damaged", r => r.RoughThread, (r, v) => r with { RoughThread = v });

    internal static readonly Field<TighteningRequest, bool> NewBolt = F.Flag(
        "new-bolt", "bolt and nut are new", r => r.NewBolt, (r, v) => r with { NewBolt = v });

    internal static readonly Field<TighteningRequest, Mass> ByWeight = F.Of(
        "by-weight", Kinds.Mass("20kg", AcceptedRange.HungWeight), "a weight instead of a wrench: where on a level bar?",
        r => r.ByWeight, (r, v) => r with { ByWeight = v });

    internal static readonly Field<TighteningRequest, Length> Adapter = F.Of(
        "adapter", Kinds.Length("60mm", AcceptedRange.LengthOrZero), "length of an adapter, wrench square to nut: what to set?",
        r => r.Adapter, (r, v) => r with { Adapter = v });

    internal static readonly Field<TighteningRequest, Length> Wrench = F.Of(
        "wrench", Kinds.Length("450mm"), "wrench square to middle of its grip",
        r => r.Wrench, (r, v) => r with { Wrench = v }, needs: [Adapter]);

    internal static readonly Field<TighteningRequest, Angle> Angle = F.Of(
        "angle", Kinds.Angle("90deg", 180), "angle between adapter and wrench",
        r => r.Angle, (r, v) => r with { Angle = v }, leftOut: "0deg", needs: [Adapter]);

    internal static readonly Field<TighteningRequest, Length> Engagement = F.Of(
        "engagement", Kinds.Length("18mm"), "length of thread in a tapped hole: will it strip?",
        r => r.Engagement, (r, v) => r with { Engagement = v });

    internal static readonly Field<TighteningRequest, string> Tapped = F.Of(
        "tapped", Kinds.Tapped, "what the hole is in: aluminium, iron, … : table tapped-materials",
        r => r.Tapped, (r, v) => r with { Tapped = v }, needs: [Engagement]);

    /// <summary>The joint itself.</summary>
    internal static readonly IReadOnlyList<F> Joint = [Thread, Grade, Friction, Lubrication, WasherFace, Hole];

    /// <summary>How it is tightened, and what is odd about it.</summary>
    internal static readonly IReadOnlyList<F> How =
    [
        Then, SnugByHand, With, ClampedLength, Clamped, Engagement, Tapped, Castle, LeftHand, Staked, Locker, Adjustable, RoughThread,
    ];

    /// <summary>Everything asked of a tightening, in the order that help and forms show it.</summary>
    internal static readonly IReadOnlyList<F> All =
        [.. Joint, YieldShare, Torsion, Torque, .. How, NewBolt, ByWeight, Adapter, Wrench, Angle];

    /// <summary>Everything asked of a quoted torque.</summary>
    internal static readonly IReadOnlyList<F> Check = [Quoted, .. Joint, .. How];

    private static readonly Angle AngleTolerance = UnitsNet.Angle.FromDegrees(1e-6);

    private static TorqueAndTurn? Both(TighteningRequest request) =>
        request.Torque is { } torque ? new TorqueAndTurn(torque, request.Then) : null;

    private static TighteningRequest Torqued(TighteningRequest request, TorqueAndTurn both) =>
        (both.Turn is { } turn ? Turned(request, turn) : request) with { Torque = both.Torque };

    private static TighteningRequest Turned(TighteningRequest request, Angle turn) => request.Then is { } first && !first.Equals(turn, AngleTolerance)
        ? throw new InputException("then", $"the turn is said twice: {QuantityWriter.Text(first)} and {QuantityWriter.Text(turn)}. Say it once.")
        : request with { Then = turn };
}
