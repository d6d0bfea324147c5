using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Jobs;

/// <summary>Where a refitting torque comes from.</summary>
public enum TorqueBasis
{
    /// <summary>The maker's book.</summary>
    Book,

    /// <summary>Worked out from thread, grade and lubricant.</summary>
    WorkedOut,
}

/// <summary>A torque wrench for one fastener.</summary>
/// <param name="Wrench">The wrench.</param>
/// <param name="Setting">What to set: the torque, or less with an adapter.</param>
/// <param name="Scatter">How far the torque at the nut scatters each way by the wrench alone.</param>
public sealed record WrenchChoice(TorqueWrench Wrench, Torque Setting, Torque Scatter);

/// <summary>A mass hung on a level bar in place of a torque wrench.</summary>
/// <param name="Mass">The mass.</param>
/// <param name="Distance">From the nut's axis along the level bar.</param>
/// <param name="Person">Whose mass it is; null for a weight.</param>
public sealed record HungWeight(Mass Mass, Length Distance, string? Person);

/// <summary>How one kind of fastener goes back.</summary>
public sealed record PlannedTightening
{
    /// <summary>The fastener.</summary>
    public required JobFastener Fastener { get; init; }

    /// <summary>The torque.</summary>
    public required Torque Torque { get; init; }

    /// <summary>Where it comes from.</summary>
    public required TorqueBasis Basis { get; init; }

    /// <summary>Friction it was worked out or checked for.</summary>
    public required FrictionRange Friction { get; init; }

    /// <summary>Whether the book's torque is believable; null where there is no thread or no book.</summary>
    public CheckingAssessment? Check { get; init; }

    /// <summary>The torque wrench whose range fits best; null where none does.</summary>
    public WrenchChoice? Wrench { get; init; }

    /// <summary>What to hang instead; null where no mass is known or the bar would be absurd.</summary>
    public HungWeight? Hang { get; init; }

    /// <summary>Whether it is too small for a torque wrench: it is turned home by hand.</summary>
    public bool IsByHand => Torque.NewtonMeters < RefitPlanner.SmallestNm;

    /// <summary>Torques of the rounds, in steps a wrench can be set to; one for a single or small fastener.</summary>
    public required IReadOnlyList<Torque> Stages { get; init; }

    /// <summary>The order within a round; empty where there is none.</summary>
    public required IReadOnlyList<int> Sequence { get; init; }
}
