using Leverage.Friction;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What can be taken for granted, or left unjudged, for want of being said.</summary>
public enum AssumptionKind
{
    /// <summary>A right-hand thread.</summary>
    RightHandThread,

    /// <summary>Friction at assembly, a range.</summary>
    AssemblyFriction,

    /// <summary>The state of the joint, by name.</summary>
    Condition,

    /// <summary>How the torque splits where no thread tells.</summary>
    TorqueSplit,

    /// <summary>The bearing face, as a multiple of the diameter.</summary>
    BearingFace,

    /// <summary>The clamped length.</summary>
    ClampedLength,

    /// <summary>The grade, by name.</summary>
    Grade,

    /// <summary>The torque of others of its kind.</summary>
    StartAsOthers,

    /// <summary>The torque by the size of its thread.</summary>
    StartByThread,

    /// <summary>The width across flats.</summary>
    AcrossFlats,

    /// <summary>The hexagon is not judged: its width is not said.</summary>
    HexagonNotJudged,

    /// <summary>The state of the corners, in the words of its table.</summary>
    CornerWear,

    /// <summary>The steel of the hexagon.</summary>
    HexagonSteel,

    /// <summary>The drive square is not judged: its size is not said.</summary>
    DriveNotJudged,

    /// <summary>How the person stands, in the words of its table.</summary>
    Stance,

    /// <summary>A man.</summary>
    Man,

    /// <summary>The body mass.</summary>
    BodyMass,

    /// <summary>The lever's own weight is left out, by the way the hands push.</summary>
    LeverWeight,

    /// <summary>The diameter of the bar usual for a drive, by name.</summary>
    BarDiameter,

    /// <summary>The bar's bending is not judged: its diameter is not said.</summary>
    BarNotJudged,

    /// <summary>The yield of the bar.</summary>
    BarYield,

    /// <summary>The yield of the tube.</summary>
    TubeYield,

    /// <summary>What a jack handle carries at its end.</summary>
    JackHandle,

    /// <summary>Denting is not judged: the wall of a jack handle is not known.</summary>
    DentNotJudged,

    /// <summary>How far the tube is pushed on.</summary>
    Overlap,

    /// <summary>The straight part of the handle.</summary>
    StraightHandle,

    /// <summary>The end of the swing, past square.</summary>
    SwingEnd,

    /// <summary>The state of the bar's surface, by name, and its friction.</summary>
    Surface,

    /// <summary>The share of the torque left once the nut turns, by the condition's name.</summary>
    TorqueLeft,

    /// <summary>The hold is not judged: nothing is said to hold it.</summary>
    HoldNotJudged,

    /// <summary>The ground, by name.</summary>
    Ground,

    /// <summary>The mass of a vehicle on stands.</summary>
    VehicleMass,

    /// <summary>The load on the wheel.</summary>
    WheelLoad,

    /// <summary>The loaded radius of the wheel.</summary>
    TyreRadius,

    /// <summary>The height of a chock.</summary>
    Chock,

    /// <summary>The thread that has this hexagon, by name.</summary>
    ThreadBySight,

    /// <summary>How much more two pull than one.</summary>
    TwoPull,

    /// <summary>Both half shafts in, both wheels down.</summary>
    HalfShafts,

    /// <summary>The mean of the bearing face, of a standard head on a standard hole.</summary>
    BearingMean,

    /// <summary>That steel is clamped.</summary>
    ClampsSteel,

    /// <summary>How torsion counts, as the factor.</summary>
    Torsion,

    /// <summary>The share of what strips the thread that a torque is set to.</summary>
    ShareOfStrip,
}

/// <summary>Something the person did not say and the answer took for granted.</summary>
/// <param name="Kind">What was assumed.</param>
/// <param name="Value">Its value, if it is a quantity.</param>
/// <param name="Status">How far the value may be trusted; a recalled or judged one is marked in every answer.</param>
public sealed record Assumption(AssumptionKind Kind, IQuantity? Value = null, ValueStatus Status = ValueStatus.Published)
{
    /// <summary>What was taken, by its name in a table; null where the kind or the value says it.</summary>
    public string? Name { get; init; }

    /// <summary>The same in the table's own words; null where there are none.</summary>
    public string? Words { get; init; }

    /// <summary>The friction that was taken; null for anything else.</summary>
    public FrictionRange? Friction { get; init; }

    /// <summary>The share or multiple that was taken; null for anything else.</summary>
    public double? Share { get; init; }
}
