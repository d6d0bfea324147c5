using Leverage.Friction;
using Leverage.Grades;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What torque a thread takes, and what preload that or another torque makes.</summary>
public sealed record TighteningAssessment
{
    /// <summary>What was asked.</summary>
    public required JointSetup Setup { get; init; }

    /// <summary>What the torque aimed at makes of the joint: the one asked about, else the one set by the rule.</summary>
    public required JointAssessment Result { get; init; }

    /// <summary>Torque to set, by <see cref="TighteningRule"/>.</summary>
    public required Torque Torque { get; init; }

    /// <summary>What holds it down.</summary>
    public required TorqueLimit SetBy { get; init; }

    /// <summary>Where the torque aimed at goes, at the likely friction.</summary>
    public required TorqueSplit Split { get; init; }

    /// <summary>K = T/(F·d) at the likely friction.</summary>
    public required double NutFactor { get; init; }

    /// <summary>Where to hang the mass, if one was given.</summary>
    public Length? HangAt { get; init; }

    /// <summary>What to set on the wrench, if an adapter was given.</summary>
    public Torque? AdapterSetting { get; init; }

    /// <summary>Everything taken for granted.</summary>
    public IReadOnlyList<Assumption> Assumed =>
    [
        .. Result.Assumed, new Assumption(AssumptionKind.Torsion) { Share = Setup.TorsionFactor },
        .. SetBy == TorqueLimit.Thread ? (Assumption[])[new Assumption(AssumptionKind.ShareOfStrip, null, ValueStatus.Judgement) { Share = TighteningRule.MostOfStrip }] : [],
    ];

    /// <summary>The torque that hung weight and adapter aim at.</summary>
    public Torque Target => Result.Torque;

    /// <summary>The grade it was worked out for.</summary>
    public Grade Grade => Result.Grade;

    /// <summary>The friction it was worked out for.</summary>
    public FrictionRange Friction => Result.Friction;

    /// <summary>Db, mean diameter of the bearing face, and where it comes from.</summary>
    public BearingBasis Bearing => Result.Bearing;

    /// <summary>As, stress area.</summary>
    public Area StressArea => Area.FromSquareMillimeters(Setup.Thread.StressAreaMm2);

    /// <summary>d2, pitch diameter.</summary>
    public Length PitchDiameter => Length.FromMillimeters(Setup.Thread.PitchDiameterMm);

    /// <summary>Whether to pull.</summary>
    public Verdict Verdict => Result.Verdict;
}

/// <summary>Where a tightening torque goes.</summary>
/// <param name="Pitch">What stretches the bolt, F·P/2π.</param>
/// <param name="Thread">Friction in the thread.</param>
/// <param name="Face">Friction under the head or nut.</param>
public sealed record TorqueSplit(Torque Pitch, Torque Thread, Torque Face);
