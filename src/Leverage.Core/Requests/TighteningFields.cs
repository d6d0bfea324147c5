using Leverage.Preload;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;
using F = Leverage.Requests.Field<Leverage.Requests.TighteningRequest>;

namespace Leverage.Requests;

/// <summary>Every question about a joint that is tightened, each defined once; every door is made of these.</summary>
internal static class TighteningFields
{
    internal static readonly Field<TighteningRequest, Torque> Quoted = F.Of(
        "torque", Kinds.Torque("130Nm"), "the torque quoted, such as 130Nm or 96ft-lb",
        r => r.Torque, (r, v) => r with { Torque = v }, inPlace: true);

    internal static readonly Field<TighteningRequest, ScrewThread> Thread = F.Of(
        "thread", Kinds.Thread with { Example = "M12x1.25" }, "size: M12x1.25, M12 (coarse), 1/2-20",
        r => r.Thread, (r, v) => r with { Thread = v });

    internal static readonly Field<TighteningRequest, string> Grade = F.Of(
        "grade", Kinds.Grade, "of the bolt: 8.8, SAE 5, A2-70",
        r => r.Grade, (r, v) => r with { Grade = v }, leftOut: "8.8; inch SAE 5", needs: [Thread]);

    internal static readonly Field<TighteningRequest, double> Friction = F.Of(
        "friction", Kinds.Number("0.14", AcceptedRange.JointFriction), "coefficient, thread and face",
        r => r.Friction, (r, v) => r with { Friction = v }, leftOut: "0.14; 0.10 to 0.196");

    internal static readonly Field<TighteningRequest, string> Lubrication = F.Of(
        "lubrication", Kinds.Row("friction", "a lubrication", "oiled"), "its range by lubricant: table friction",
        r => r.Lubrication, (r, v) => r with { Lubrication = v });

    internal static readonly Field<TighteningRequest, Length> WasherFace = F.Of(
        "dw", Kinds.Length("16.6mm"), "washer face's outer diameter",
        r => r.WasherFace, (r, v) => r with { WasherFace = v }, leftOut: "ISO 4014");

    internal static readonly Field<TighteningRequest, Length> Hole = F.Of(
        "dh", Kinds.Length("13.5mm"), "clearance hole", r => r.Hole, (r, v) => r with { Hole = v }, leftOut: "ISO 273 medium");

    internal static readonly Field<TighteningRequest, double> YieldShare = F.Of(
        "yield-share", Kinds.Share("90%"), "share of yield to tighten to",
        r => r.YieldShare, (r, v) => r with { YieldShare = v }, leftOut: "90%");

    internal static readonly Field<TighteningRequest, double> Torsion = F.Of(
        "torsion", Kinds.Choice(("plastic", TensionAndTorsion.Plastic), ("elastic", TensionAndTorsion.Elastic)), "how torsion counts",
        r => r.Torsion, (r, v) => r with { Torsion = v }, leftOut: "plastic; older tables elastic");

    internal static readonly Field<TighteningRequest, Torque> Torque = F.Of(
        "torque", Kinds.Torque("90Nm"), "what preload does this torque make?", r => r.Torque, (r, v) => r with { Torque = v });

    internal static readonly Field<TighteningRequest, Mass> ByWeight = F.Of(
        "by-weight", Kinds.Mass("20kg", AcceptedRange.Body), "where on a level bar to hang this mass?",
        r => r.ByWeight, (r, v) => r with { ByWeight = v });

    internal static readonly Field<TighteningRequest, Length> Adapter = F.Of(
        "adapter", Kinds.Length("60mm", AcceptedRange.LengthOrZero), "wrench square to nut: what to set?",
        r => r.Adapter, (r, v) => r with { Adapter = v });

    internal static readonly Field<TighteningRequest, Length> Wrench = F.Of(
        "wrench", Kinds.Length("450mm"), "wrench square to middle of its grip",
        r => r.Wrench, (r, v) => r with { Wrench = v }, needs: [Adapter]);

    internal static readonly Field<TighteningRequest, Angle> Angle = F.Of(
        "angle", Kinds.Angle("90deg", 180), "adapter against the wrench",
        r => r.Angle, (r, v) => r with { Angle = v }, leftOut: "0deg", needs: [Adapter]);

    internal static readonly Field<TighteningRequest, Length> Engagement = F.Of(
        "engagement", Kinds.Length("18mm"), "thread engaged in a tapped hole: will it strip?",
        r => r.Engagement, (r, v) => r with { Engagement = v });

    internal static readonly Field<TighteningRequest, string> Tapped = F.Of(
        "tapped", Kinds.Row("tapped-materials", "a tapped material", "cast-aluminium"), "what it is tapped into: table tapped-materials",
        r => r.Tapped, (r, v) => r with { Tapped = v }, needs: [Engagement]);

    /// <summary>The joint itself.</summary>
    internal static readonly IReadOnlyList<F> Joint = [Thread, Grade, Friction, Lubrication, WasherFace, Hole];

    /// <summary>Everything asked of a tightening, in the order that help and forms show it.</summary>
    internal static readonly IReadOnlyList<F> All =
        [.. Joint, YieldShare, Torsion, Torque, ByWeight, Adapter, Wrench, Angle, Engagement, Tapped];

    /// <summary>Everything asked of a quoted torque.</summary>
    internal static readonly IReadOnlyList<F> Check = [Quoted, .. Joint];
}
