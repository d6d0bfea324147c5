using Leverage.Probability;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Threads;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What is tightened and what is asked about it. What is left out is assumed, and the assessment says so.</summary>
public sealed record TighteningSetup
{
    /// <summary>Share of yield tightened to when nothing is said; the published tables use it too.</summary>
    public const double UsualYieldShare = 0.9;

    /// <summary>The thread.</summary>
    public required ScrewThread Thread { get; init; }

    /// <summary>Strength of the bolt or stud; null for the usual one, <see cref="UsualGrade"/>.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Friction of thread and face; null for 0.14 with its usual scatter.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>The face the head or nut turns on; null for the tables' face.</summary>
    public FaceRing? Face { get; init; }

    /// <summary>Share of yield to tighten to, tension and torsion together.</summary>
    public double YieldShare { get; init; } = UsualYieldShare;

    /// <summary>1.5 for torsion taken plastic, 2 elastic as the older tables took it.</summary>
    public double TorsionFactor { get; init; } = TensionAndTorsion.Plastic;

    /// <summary>A torque whose preload is asked for; hung weight and adapter then aim at it.</summary>
    public Torque? Torque { get; init; }

    /// <summary>A mass to hang on a level bar instead of using a torque wrench.</summary>
    public Mass? HungMass { get; init; }

    /// <summary>An adapter between torque wrench and nut.</summary>
    public AdapterFitting? Adapter { get; init; }

    /// <summary>The tapped hole it goes into, if its thread is to be judged.</summary>
    public TappedHole? Tapped { get; init; }

    /// <summary>The grade taken when none is given: 8.8, or SAE 5 for an inch thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The grade at this size.</returns>
    public static Grade UsualGrade(ScrewThread thread) =>
        GradeCatalog.Bolt(thread.Family == ThreadFamily.Unified ? "SAE 5" : "8.8", thread);
}

/// <summary>The ring a head or nut turns on.</summary>
/// <param name="WasherFace">dw, its outer diameter.</param>
/// <param name="Hole">dh, the clearance hole.</param>
public sealed record FaceRing(Length WasherFace, Length Hole);

/// <summary>A torque wrench with an adapter that moves the nut off its square.</summary>
/// <param name="Adapter">Wrench square to nut.</param>
/// <param name="Wrench">Wrench square to the middle of its grip.</param>
/// <param name="Angle">Adapter against the wrench: 0 straight out, 90° no change.</param>
public sealed record AdapterFitting(Length Adapter, Length Wrench, Angle Angle);
