using Leverage.Preload;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What is tightened and what is asked about it.</summary>
public sealed record TighteningSetup : JointSetup
{
    /// <summary>Share of yield to tighten to at the likely friction, tension and torsion together.</summary>
    public double YieldShare { get; init; } = UsualValues.YieldShare;

    /// <summary>1.5 for torsion taken plastic, 2 elastic as the older tables took it.</summary>
    public double TorsionFactor { get; init; } = TensionAndTorsion.Plastic;

    /// <summary>A torque whose preload is asked for; hung weight and adapter then aim at it, and a turn follows it.</summary>
    public Torque? Torque { get; init; }

    /// <summary>A mass to hang on a level bar instead of using a torque wrench.</summary>
    public Mass? HungMass { get; init; }

    /// <summary>An adapter between torque wrench and nut.</summary>
    public AdapterFitting? Adapter { get; init; }
}

/// <summary>A torque wrench with an adapter that moves the nut off its square.</summary>
/// <param name="Adapter">Wrench square to nut.</param>
/// <param name="Wrench">Wrench square to the middle of its grip.</param>
/// <param name="Angle">Adapter against the wrench: 0 straight out, 90° no change.</param>
public sealed record AdapterFitting(Length Adapter, Length Wrench, Angle Angle);
