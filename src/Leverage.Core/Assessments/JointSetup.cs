using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A joint that is tightened, and how: the request with what it names looked up. Blanks are assumed and told.</summary>
/// <param name="Request">What was said and asked.</param>
/// <param name="Thread">The thread.</param>
public sealed record JointSetup(TighteningRequest Request, ScrewThread Thread)
{
    /// <summary>Strength of the bolt or stud; null for the usual one, <see cref="UsualGrade"/>.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Friction of thread and face; null for 0.14 with its usual scatter.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>The face the head or nut turns on; null for the tables' face.</summary>
    public FaceRing? Face { get; init; }

    /// <summary>What is clamped; null for steel.</summary>
    public ClampedMaterial? Clamped { get; init; }

    /// <summary>What it is tightened with; null for a torque wrench, or torque and angle where there is a turn.</summary>
    public TighteningMethod? With { get; init; }

    /// <summary>The tapped hole it goes into, if its thread is to be judged.</summary>
    public TappedHole? Tapped { get; init; }

    /// <summary>An adapter between torque wrench and nut.</summary>
    public AdapterFitting? Adapter { get; init; }

    /// <summary>1.5 for torsion taken plastic, 2 elastic as the older tables took it.</summary>
    public double TorsionFactor => Request.Torsion ?? TensionAndTorsion.Plastic;

    /// <summary>Share of yield to tighten to at the likely friction, tension and torsion together.</summary>
    public double YieldShare => Request.YieldShare ?? UsualValues.YieldShare;

    /// <summary>A mass to hang on a level bar instead of using a torque wrench.</summary>
    public Mass? HungMass => Request.ByWeight;

    /// <summary>The torque as quoted, in the unit it was quoted in.</summary>
    public Torque Quoted => Request.Torque ?? throw new InputException("torque", "is missing: the torque quoted.", TighteningFields.Quoted.Cure);

    /// <summary>The grade taken when none is given: 8.8, or SAE 5 for an inch thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The grade at this size.</returns>
    public static Grade UsualGrade(ScrewThread thread) => GradeCatalog.Bolt(GradeCatalog.Usual(thread), thread);
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
