using Leverage.Corners;
using Leverage.Levers;
using Leverage.Preload;
using Leverage.Stiffness;
using Leverage.Threads;
using Leverage.Tubes;

namespace Leverage.Proof;

/// <summary>
/// What a row puts into a formula, by name, in N, mm, MPa, N·mm, rad, kg, K; what it leaves out follows from the rest.
/// </summary>
public sealed class CheckInputs
{
    private readonly (string Name, double Value, string Unit)[] _given;

    internal CheckInputs((string Name, double Value, string Unit)[] given) => _given = given;

    /// <summary>The names given, with value in coherent units and unit as written, in the order of the row.</summary>
    public IReadOnlyList<(string Name, double Value, string Unit)> Given => _given;

    /// <summary>Thread and bearing face of a joint.</summary>
    public Joint Joint => new(this["pitchDiameter"], this["lead"], this["halfAngle"], this["bearingDiameter"]);

    /// <summary>Friction of thread and face.</summary>
    public JointFriction Friction => new(this["threadFriction"], this["faceFriction"]);

    /// <summary>The bolt's section under tension and torsion.</summary>
    public TensionAndTorsion Section => new(
        this["stressDiameter"], this["pitchDiameter"], this["leadAngle"], this["frictionAngle"], this["torsionFactor"]);

    /// <summary>A tubed lever as a beam.</summary>
    public LeverBeam Beam => new(
        this["reach"], this["handToTip"], this["overlap"], this["tubeStiffness"], this["barStiffness"]);

    /// <summary>A tube as the slide-off check sees it.</summary>
    public TubeHold Hold => new(this["friction"], this["handToTip"], this["overlap"], this["tilt"], this["taper"]);

    /// <summary>A value given, or what follows from the values given.</summary>
    /// <param name="name">Name of the input: the parameter's without its unit.</param>
    /// <exception cref="KeyNotFoundException">It is neither given nor does it follow.</exception>
    public double this[string name] => Find(name) ?? Following(name);

    /// <summary>A value given, or null.</summary>
    internal double? Find(string name)
    {
        foreach (var (given, value, _) in _given)
        {
            if (given == name)
            {
                return value;
            }
        }

        return null;
    }

    private double Following(string name) => name switch
    {
        "per" => 1,
        "coefficient" => CornerHold.RigidJaw(this["play"], this["wear"]),
        "threadFriction" or "faceFriction" => this["friction"],
        "lead" => this["pitch"],
        "halfAngle" => ThreadFriction.HalfAngle60Rad,
        "torsionFactor" => TensionAndTorsion.Plastic,
        "pitchDiameter" => ThreadGeometry.PitchDiameter(this["diameter"], this["pitch"]),
        "stressDiameter" => ThreadGeometry.StressDiameter(this["diameter"], this["pitch"]),
        "area" => ThreadGeometry.StressArea(this["diameter"], this["pitch"]),
        "leadAngle" => ThreadGeometry.LeadAngle(this["pitchDiameter"], this["lead"]),
        "frictionAngle" => ThreadFriction.Angle(this["threadFriction"], this["halfAngle"]),
        "bearingDiameter" => BearingFace.MeanDiameter(this["face"], this["hole"]),
        "preload" when Find("stress") is { } stress => ProofLoad.Force(stress, this["area"]),
        "preload" => AssemblyPreload.AtYieldShare(this["yieldShare"], this["yield"], Section),
        "torque" => JointTorque.Tightening(this["preload"], Joint, Friction),
        "shearAreaPerMm" => ThreadStrip.InternalShearArea(
            1, this["pitch"], this["externalMajor"], this["internalPitchDiameter"]),
        "shank" => 0,
        "threaded" => this["grip"] - this["shank"],
        "stressArea" => this["area"],
        "boltStiffness" => BoltStiffness.InGrip(
            this["diameter"], this["stressArea"], this["threaded"], this["shank"], BoltStiffness.SteelModulusMpa),
        "clampedStiffness" => ClampedParts.Stiffness(
            this["diameter"], this["grip"], this["modulus"], this["factor"], this["exponent"]),
        "complianceRatio" => JointStiffness.ComplianceRatio(this["boltStiffness"], this["clampedStiffness"]),
        "barStiffness" => this["modulus"] * RoundBar.Inertia(this["barDiameter"]),
        "tubeStiffness" => this["modulus"] * TubeSection.Inertia(this["outside"], this["wall"]),
        _ => throw new KeyNotFoundException($"the row gives no {name}, and nothing it follows from"),
    };
}
