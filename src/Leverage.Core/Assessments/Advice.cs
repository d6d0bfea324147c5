using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A change worth making.</summary>
public enum AdviceKind
{
    /// <summary>Next square up.</summary>
    NextSquare,

    /// <summary>Next square up, with a bar long enough for the likely case.</summary>
    BiggerSet,

    /// <summary>A longer lever.</summary>
    LongerLever,

    /// <summary>Hold it nearer: less reach, so that the hands cannot overload the path.</summary>
    ShorterReach,

    /// <summary>A tube of thicker wall.</summary>
    ThickerTube,

    /// <summary>Another overlap.</summary>
    Overlap,

    /// <summary>Degrease handle and tube.</summary>
    Degrease,

    /// <summary>Start above level, stop before the bar sinks so low.</summary>
    StartAboveLevel,

    /// <summary>Put a chock at the wheel.</summary>
    Chock,

    /// <summary>A helper on the foot brake.</summary>
    Helper,

    /// <summary>A chock at the wheel and a helper on the foot brake.</summary>
    ChockAndHelper,

    /// <summary>Soak it overnight.</summary>
    Soak,

    /// <summary>Heat the stud and let it cool: the clamp slackens while hot.</summary>
    HeatStud,

    /// <summary>Lower the vehicle: do it with the wheels on the ground.</summary>
    OnTheGround,
}

/// <summary>A change and what it gains, by judging the set-up again with it made.</summary>
/// <param name="Kind">The change.</param>
/// <param name="Value">Its size, if it has one.</param>
/// <param name="Name">Its name, if it is a part: "3/4".</param>
/// <param name="Before">The assessment as it is.</param>
/// <param name="After">The assessment with the change.</param>
public sealed record Advice(
    AdviceKind Kind, IQuantity? Value, string? Name, LooseningAssessment Before, LooseningAssessment After);
