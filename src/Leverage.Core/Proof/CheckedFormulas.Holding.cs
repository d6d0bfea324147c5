using Leverage.BreakLoose;
using Leverage.Holding;
using Leverage.Probability;

namespace Leverage.Proof;

/// <content>Restraints, heat, thread locker, breaking loose, spread, chances and the printed units themselves.</content>
public static partial class CheckedFormulas
{
    private static CheckedFormula[] Holding =>
    [
        new("ParkingBrake.WheelTorque", "Nmm", i => ParkingBrake.WheelTorque(
            i["mass"], i["wheelRadius"], i["brakedWheels"])),
        new("TyreGrip.Torque", "Nmm", i => TyreGrip.Torque(i["friction"], i["wheelLoad"], i["wheelRadius"])),
        new("OpenDifferential.Torque", "Nmm", i => OpenDifferential.Torque(
            i["friction"], i["wheelLoad"], i["wheelRadius"])),
        new("FootBrake.WheelTorque", "Nmm", i => FootBrake.WheelTorque(i["mass"], i["wheelRadius"], i["axleShare"])),
        new("StoppedEngine.Torque", "Nmm", i => StoppedEngine.Torque(i["wholeRatio"])),
        new("WheelChock.SlippingTorque", "Nmm", i => WheelChock.SlippingTorque(
            i["friction"], i["wheelLoad"], i["wheelRadius"], i["height"])),
        new("WheelChock.Torque", "Nmm", i => WheelChock.Torque(i["wheelLoad"], i["wheelRadius"], i["height"])),
        new("SupportStand.TippingForce", "N", i => SupportStand.TippingForce(i["load"], i["halfBase"], i["height"])),
        new("LoadShift.Force", "N", i => LoadShift.Force(i["torque"], i["wheelbase"])),
        new("HeatedJoint.ReleaseTemperature", "K", i => HeatedJoint.ReleaseTemperature(
            i["stress"], i["complianceRatio"])),
        new("HeatedJoint.PreloadRise", "MPa", i => HeatedJoint.PreloadRise(i["difference"], i["complianceRatio"])),
        new("HeatedJoint.DiametralGrowth", "mm", i => HeatedJoint.DiametralGrowth(i["pitchDiameter"], i["difference"])),
        new("HeatedJoint.AluminiumClearance", "mm", i => HeatedJoint.AluminiumClearance(
            i["pitchDiameter"], i["rise"])),
        new("ThreadLocker.Torque", "Nmm", i => ThreadLocker.Torque(i["measured"], i["diameter"])),
        new("AssemblyFriction.Believed", "", i => AssemblyFriction.Believed(
            i["torque"], i.Joint, i["stressDiameter"], i["yield"], i["friction"])),
        new("Shank.Torque", "Nmm", i => Shank.Torque(
            i["torque"], i["loosening"], i["threadShare"], i["grownShare"], i["extra"])),
        new("Shank.Stands", "Nmm", i => Shank.Stands(i["plastic"], i["stress"], i["tensile"])),
        new("Shank.LimitAtNut", "Nmm", i => Shank.LimitAtNut(
            i["stands"], i["loosening"], i["threadShare"], i["grownShare"], i["extra"])),
        new("TorqueLeft.Share", "", i => TorqueLeft.Share(i["runningShare"], i["clampShare"], i["turned"], i["unclamped"])),
    ];

    private static CheckedFormula[] Spread =>
    [
        new("LogNormalSpread.SigmaFromP10P90", "", i => LogNormalSpread.SigmaFromP10P90(i["p10"], i["p90"])),
        new("LogNormalSpread.SigmaFromP5P95", "", i => LogNormalSpread.SigmaFromP5P95(i["p5"], i["p95"])),
        new("LogNormalSpread.Quantile", "", i => LogNormalSpread.Quantile(i["median"], i["sigma"], i["share"])),
        new("CompetingRisks.ComesLoose", "", i => ChanceInputs.Chances(i).ComesLoose),
        new("CompetingRisks.StaysTight", "", i => ChanceInputs.Chances(i).StaysTight),
        new("CompetingRisks.ToolGives", "", i => ChanceInputs.Chances(i).ToolGives),
        new("CompetingRisks.StudTwistsOff", "", i => ChanceInputs.Chances(i).StudTwistsOff),
        new("CompetingRisks.CornersRound", "", i => ChanceInputs.Chances(i).CornersRound),
        new("CompetingRisks.SlidesOff", "", i => ChanceInputs.Chances(i).SlidesOff),
        new("CompetingRisks.WheelTurns", "", i => ChanceInputs.Chances(i).WheelTurns),
        new("CompetingRisks.SlidesAsItTurns", "", i => ChanceInputs.Chances(i).SlidesAsItTurns),
        new("BreakLooseTorque.Quantile", "Nmm", i => ShownInputs.Torque(i).Quantile(i["share"])),
        new("BreakLooseTorque.Survival", "", i => ShownInputs.Torque(i).Survival(i["torque"])),
        new("PullSequence.ComesLoose", "", i => SequenceInputs.By(i).ComesLoose),
        new("PullSequence.Breaks", "", i => SequenceInputs.By(i).Breaks),
        new("PrintedUnit.Coherent", "", i => i["value"]),
    ];
}
