using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A joint that is tightened, and how: what <c>tighten</c> and <c>check</c> are both asked about. Blanks are assumed and told.</summary>
public abstract record JointSetup
{
    /// <summary>The thread.</summary>
    public required ScrewThread Thread { get; init; }

    /// <summary>Strength of the bolt or stud; null for the usual one, <see cref="UsualGrade"/>.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Friction of thread and face; null for 0.14 with its usual scatter.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>The face the head or nut turns on; null for the tables' face.</summary>
    public FaceRing? Face { get; init; }

    /// <summary>The turn after the first torque; null for none.</summary>
    public Angle? Then { get; init; }

    /// <summary>Whether the first torque is a snug pull by hand, which scatters far more than a wrench.</summary>
    public bool SnugByHand { get; init; }

    /// <summary>Length of what is clamped; null for three diameters.</summary>
    public Length? Grip { get; init; }

    /// <summary>What is clamped; null for steel.</summary>
    public ClampedMaterial? Clamped { get; init; }

    /// <summary>What it is tightened with; null for a torque wrench, or torque and angle where there is a turn.</summary>
    public TighteningMethod? With { get; init; }

    /// <summary>The tapped hole it goes into, if its thread is to be judged.</summary>
    public TappedHole? Tapped { get; init; }

    /// <summary>Slots of a castle nut; null for another nut. Six when it is one and nobody counted.</summary>
    public int? CastleSlots { get; init; }

    /// <summary>Whether the thread is left-handed.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Whether its collar is staked.</summary>
    public bool Staked { get; init; }

    /// <summary>Whether thread locker goes on it.</summary>
    public bool Locker { get; init; }

    /// <summary>Whether it sets the play of an adjustable bearing: then no preload is judged.</summary>
    public bool AdjustableBearing { get; init; }

    /// <summary>Whether the thread is dirty, rusty or damaged.</summary>
    public bool RoughThread { get; init; }

    /// <summary>Whether bolt and nut are new.</summary>
    public bool NewBolt { get; init; }

    /// <summary>The grade taken when none is given: 8.8, or SAE 5 for an inch thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The grade at this size.</returns>
    public static Grade UsualGrade(ScrewThread thread) => GradeCatalog.Bolt(GradeCatalog.Usual(thread), thread);
}

/// <summary>The ring a head or nut turns on.</summary>
/// <param name="WasherFace">dw, its outer diameter.</param>
/// <param name="Hole">dh, the clearance hole.</param>
public sealed record FaceRing(Length WasherFace, Length Hole);
