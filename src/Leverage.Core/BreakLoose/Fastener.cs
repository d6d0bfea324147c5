using Leverage.Friction;
using Leverage.Grades;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.BreakLoose;

/// <summary>A nut or bolt to undo.</summary>
public sealed record Fastener
{
    /// <summary>What it was tightened to.</summary>
    public required Torque BookTorque { get; init; }

    /// <summary>The turn that followed it; null for none. It needs <see cref="Thread"/> and <see cref="Grade"/>.</summary>
    public Angle? Then { get; init; }

    /// <summary>σ of the logarithm of <see cref="BookTorque"/>; 0 where it is given, more where it is judged by sight.</summary>
    public double BookTorqueSigma { get; init; }

    /// <summary>State of the joint now.</summary>
    public required Condition Condition { get; init; }

    /// <summary>Friction when it was tightened.</summary>
    public required FrictionRange Friction { get; init; }

    /// <summary>A solid paste went on the thread (anti-seize, moly): it stays where oil and grease go.</summary>
    public bool Paste { get; init; }

    /// <summary>Whether the friction now is still that of assembly.</summary>
    public bool KeepsLubricant => Condition.Lubricant switch
    {
        LubricantNow.Stays => true,
        LubricantNow.PasteStays => Paste,
        _ => false,
    };

    /// <summary>Its thread, if known.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Strength of the bolt or stud, if known.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Width across flats, if known.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>Torque a locknut's own grip adds.</summary>
    public Torque Prevailing { get; init; }

    /// <summary>Torque this nut has stood and not moved, N·mm; 0 for none.</summary>
    public double HeldNmm { get; init; }

    /// <summary>Torques at which like nuts of the machine came loose, N·mm.</summary>
    public IReadOnlyList<double> CameNmm { get; init; } = [];

    /// <summary>Left-hand thread: turn clockwise to undo.</summary>
    public bool LeftHand { get; init; }

    /// <summary>Soaked in penetrant for a day.</summary>
    public bool Soaked { get; init; }

    /// <summary>Length of what it clamps; null for three diameters.</summary>
    public Length? Grip { get; init; }

    /// <summary>What it clamps; null for steel.</summary>
    public ClampedMaterial? Clamped { get; init; }

    /// <summary>Heat put into it, if any.</summary>
    public Heating? Heating { get; init; }
}
