using Leverage.Preload;
using Leverage.Stiffness;
using Leverage.Threads;

namespace Leverage.Proof;

/// <content>Threads, preload, torque and stiffness.</content>
public static partial class CheckedFormulas
{
    private static CheckedFormula[] Threads =>
    [
        new("ThreadGeometry.PitchDiameter", "mm", i => ThreadGeometry.PitchDiameter(i["diameter"], i["pitch"])),
        new("ThreadGeometry.RootDiameter", "mm", i => ThreadGeometry.RootDiameter(i["diameter"], i["pitch"])),
        new("ThreadGeometry.MinorDiameterInternal", "mm", i => ThreadGeometry.MinorDiameterInternal(
            i["diameter"], i["pitch"])),
        new("ThreadGeometry.StressDiameter", "mm", i => ThreadGeometry.StressDiameter(i["diameter"], i["pitch"])),
        new("ThreadGeometry.StressArea", "mm2", i => ThreadGeometry.StressArea(i["diameter"], i["pitch"])),
        new("ThreadGeometry.UnifiedStressArea", "mm2", i => ThreadGeometry.UnifiedStressArea(
            i["diameter"], i["pitch"])),
        new("ThreadGeometry.LeadAngle", "rad", i => ThreadGeometry.LeadAngle(i["pitchDiameter"], i["lead"])),
        new("ThreadTolerance.LeastMajorExternal", "mm", i => ThreadTolerance.LeastMajorExternal(
            i["diameter"], i["pitch"])),
        new("ThreadTolerance.LeastPitchExternal", "mm", i => ThreadTolerance.LeastPitchExternal(
            i["diameter"], i["pitch"])),
        new("ThreadTolerance.MostPitchInternal", "mm", i => ThreadTolerance.MostPitchInternal(
            i["diameter"], i["pitch"])),
        new("ThreadTolerance.MostMinorInternal", "mm", i => ThreadTolerance.MostMinorInternal(
            i["diameter"], i["pitch"])),
        new("ThreadFriction.Angle", "rad", i => ThreadFriction.Angle(i["friction"], i["halfAngle"])),
    ];

    private static CheckedFormula[] Tightening =>
    [
        new("AssemblyPreload.AtYieldShare", "N", i => AssemblyPreload.AtYieldShare(
            i["yieldShare"], i["yield"], i.Section)),
        new("AssemblyPreload.YieldShare", "", i => AssemblyPreload.YieldShare(i["preload"], i["yield"], i.Section)),
        new("JointTorque.Tightening", "Nmm", i => JointTorque.Tightening(i["preload"], i.Joint, i.Friction)),
        new("JointTorque.Loosening", "Nmm", i => JointTorque.Loosening(i["preload"], i.Joint, i.Friction)),
        new("JointTorque.Preload", "N", i => JointTorque.Preload(i["torque"], i.Joint, i.Friction)),
        new("JointTorque.PitchPart", "Nmm", i => JointTorque.PitchPart(i["preload"], i["lead"])),
        new("JointTorque.FacePart", "Nmm", i => JointTorque.FacePart(
            i["preload"], i["faceFriction"], i["bearingDiameter"])),
        new("JointTorque.Efficiency", "", i => JointTorque.Efficiency(i["preload"], i["lead"], i["torque"])),
        new("JointTorque.LooseningShare", "", i => JointTorque.LooseningShare(i.Joint, i.Friction)),
        new("BearingFace.MeanDiameter", "mm", i => BearingFace.MeanDiameter(i["face"], i["hole"])),
        new("ProofLoad.Force", "N", i => ProofLoad.Force(i["stress"], i["area"])),
        new("NutFactor.Torque", "Nmm", i => NutFactor.Torque(i["nutFactor"], i["preload"], i["diameter"])),
        new("NutFactor.FromTorque", "", i => NutFactor.FromTorque(i["torque"], i["preload"], i["diameter"])),
        new("ClampScatter.LargestOverSmallest", "", i => ClampScatter.LargestOverSmallest(i["scatter"])),
        new("WrenchAdapter.Setting", "Nmm", i => WrenchAdapter.Setting(
            i["torque"], i["wrench"], i["adapter"], i["angle"])),
        new("HangingWeight.Distance", "mm", i => HangingWeight.Distance(i["torque"], i["mass"])),
        new("ThreadStrip.InternalShearArea", "mm2", i => ThreadStrip.InternalShearArea(
            i["engagement"], i["pitch"], i["externalMajor"], i["internalPitchDiameter"])),
        new("ThreadStrip.ExternalShearArea", "mm2", i => ThreadStrip.ExternalShearArea(
            i["engagement"], i["pitch"], i["internalMinor"], i["externalPitchDiameter"])),
        new("ThreadStrip.EngagementToBreak", "mm", i => ThreadStrip.EngagementToBreak(
            i["boltForce"], i["shearStrength"], i["shearAreaPerMm"])),
    ];

    private static CheckedFormula[] Stiffness =>
    [
        new("BoltStiffness.InGrip", "N/mm", i => BoltStiffness.InGrip(
            i["diameter"], i["stressArea"], i["threaded"], i["shank"], i["modulus"])),
        new("ClampedParts.Stiffness", "N/mm", i => ClampedParts.Stiffness(
            i["diameter"], i["grip"], i["modulus"], i["factor"], i["exponent"])),
        new("ClampedParts.FrustaStiffness", "N/mm", i => ClampedParts.FrustaStiffness(
            i["diameter"], i["grip"], i["modulus"])),
        new("JointStiffness.ComplianceRatio", "", i => JointStiffness.ComplianceRatio(
            i["boltStiffness"], i["clampedStiffness"])),
        new("TurnOfNut.Preload", "N", i => TurnOfNut.Preload(
            i["firstPreload"], i["angle"], i["pitch"], i["boltStiffness"], i["clampedStiffness"])),
        new("TurnOfNut.Angle", "rad", i => TurnOfNut.Angle(
            i["preload"], i["pitch"], i["boltStiffness"], i["clampedStiffness"])),
        new("TurnOfNut.Advance", "mm", i => TurnOfNut.Advance(i["angle"], i["pitch"])),
    ];
}
