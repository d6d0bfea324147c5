using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Tubes;

namespace Leverage.Proof;

/// <content>Levers, tubes, tubes, squares and keys.</content>
public static partial class CheckedFormulas
{
    private static CheckedFormula[] TubeSections =>
    [
        new("TubeSection.Area", "mm2", i => TubeSection.Area(i["outside"], i["wall"])),
        new("TubeSection.Inertia", "mm4", i => TubeSection.Inertia(i["outside"], i["wall"])),
        new("TubeSection.ElasticModulus", "mm3", i => TubeSection.ElasticModulus(i["outside"], i["wall"])),
        new("TubeSection.PlasticModulus", "mm3", i => TubeSection.PlasticModulus(i["outside"], i["wall"])),
        new("TubeSection.MassPerMetre", "kg/m", i => TubeSection.MassPerMetre(i["outside"], i["wall"])),
    ];

    private static CheckedFormula[] Tubes =>
    [
        new("TubeBearing.TipReaction", "N", i => TubeBearing.TipReaction(i["force"], i["handToTip"], i["overlap"])),
        new("TubeBearing.MouthReaction", "N", i => TubeBearing.MouthReaction(
            i["force"], i["handToTip"], i["overlap"])),
        new("TubeBearing.TubeMoment", "Nmm", i => TubeBearing.TubeMoment(i["force"], i["handToTip"])),
        new("TubeBearing.BarMomentAtMouth", "Nmm", i => TubeBearing.BarMomentAtMouth(
            i["force"], i["handToTip"], i["overlap"])),
        new("TubePlay.Tilt", "rad", i => TubePlay.Tilt(i["bore"], i["bar"], i["overlap"])),
        new("SlipLimit.CloseFitTangent", "", i => SlipLimit.CloseFitTangent(
            i["friction"], i["handToTip"], i["overlap"])),
        new("SlipLimit.Tangent", "", i => SlipLimit.Tangent(i.Hold)),
        new("SlipLimit.SafeAngle", "rad", i => SlipLimit.SafeAngle(
            i["tangent"], i["tilt"], i["torqueShare"])),
        new("SlipLimit.OutwardPull", "N", i => SlipLimit.OutwardPull(i["force"], i["pastSquare"], i["tilt"])),
        new("SlipLimit.NeededFriction", "", i => SlipLimit.NeededFriction(
            i["tangent"], i["handToTip"], i["overlap"], i["lean"])),
        new("TubeDent.Resistance", "N", i => TubeDent.Resistance(
            i["yield"], i["outside"], i["wall"], i["contact"], i["depthShare"])),
        new("TubeDent.MarkForce", "N", i => TubeDent.MarkForce(i["yield"], i["wall"])),
        new("LeverDeflection.AtHand", "mm", i => LeverDeflection.AtHand(i["force"], i.Beam)),
        new("SocketTipping.Ratio", "", i => SocketTipping.Ratio(i["standOff"], i["engagement"])),
        new("SocketTipping.Moment", "Nmm", i => SocketTipping.Moment(i["force"], i["standOff"])),
        new("Release.Energy", "J", i => Release.Energy(i["force"], i["deflection"])),
        new("Release.Freed", "J", i => Release.Freed(i["energy"] / PrintedUnit.Factor("J"), i["torqueShare"])),
        new("Release.ArmsSpeed", "m/s", i => Release.ArmsSpeed(i["energy"] / PrintedUnit.Factor("J"), i["mass"])),
        new("Release.PushSpeed", "m/s", i => Release.PushSpeed(i["force"], i["torqueShare"], i["mass"])),
    ];

    private static CheckedFormula[] Levers =>
    [
        new("Lever.Torque", "Nmm", i => Lever.Torque(i["force"], i["reach"], i["angle"])),
        new("Lever.NeededReach", "mm", i => Lever.NeededReach(i["torque"], i["force"], i["angle"])),
        new("Lever.Reach", "mm", i => Lever.Reach(i["bar"], i["tube"], i["overlap"], i["gripOffset"])),
        new("Lever.GripOffset", "mm", i => Lever.GripOffset(i["gripOffset"], i["tool"])),
        new("Lever.NeededLength", "mm", i => Lever.NeededLength(i["reach"], i["gripOffset"])),
        new("Lever.WeightTorque", "Nmm", i => Lever.WeightTorque(i["mass"], i["centre"])),
        new("RoundBar.Inertia", "mm4", i => RoundBar.Inertia(i["diameter"])),
        new("RoundBar.ElasticModulus", "mm3", i => RoundBar.ElasticModulus(i["diameter"])),
        new("RoundBar.PlasticModulus", "mm3", i => RoundBar.PlasticModulus(i["diameter"])),
        new("RoundBar.PlasticTorque", "Nmm", i => RoundBar.PlasticTorque(i["diameter"], i["shear"])),
        new("RoundBar.Mass", "kg", i => RoundBar.Mass(i["diameter"], i["length"])),
        new("HandForce.Scaled", "N", i => HandForce.Scaled(i["table"], i["mass"], i["referenceMass"], i["exponent"])),
        new("HandForce.Repeated", "N", i => HandForce.Repeated(i["once"])),
        new("HandForce.Together", "N", i => HandForce.Together(i["one"])),
        new("HandForce.PushDownCap", "N", i => HandForce.PushDownCap(i["mass"])),
    ];

    private static CheckedFormula[] LoadPath =>
    [
        new("DriveSquare.ElasticTorque", "Nmm", i => DriveSquare.ElasticTorque(i["side"], i["shearYield"])),
        new("DriveSquare.PlasticTorque", "Nmm", i => DriveSquare.PlasticTorque(i["side"], i["shearYield"])),
        new("SpannerTest.SeriesA", "Nmm", i => SpannerTest.SeriesA(i["acrossFlats"])),
        new("HingePin.Torque", "Nmm", i => HingePin.Torque(i["diameter"], i["planesApart"], i["shear"])),
        new("HexagonKey.PlasticTorque", "Nmm", i => HexagonKey.PlasticTorque(i["acrossFlats"], i["shear"])),
    ];
}
