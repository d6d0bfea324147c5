using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What a step takes in hand, by kinds and sizes; what a step leaves as it is, is null.</summary>
public sealed record LadderTool
{
    /// <summary>What turns the nut.</summary>
    public ToolKind Kind { get; init; }

    /// <summary>Its width across flats.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>Drive square, in inches as the trade says it.</summary>
    public string? Drive { get; init; }

    /// <summary>Length of bar or spanner; null where it stays.</summary>
    public Length? Bar { get; init; }

    /// <summary>Tube over the bar.</summary>
    public TubeText? Tube { get; init; }

    /// <summary>How far it goes on, where that is the step.</summary>
    public Length? Overlap { get; init; }

    /// <summary>What holds the wheel besides.</summary>
    public Restraint? Hold { get; init; }

    /// <summary>Height of a chock.</summary>
    public Length? Height { get; init; }

    /// <summary>How to stand, a name of the table <c>stances</c>.</summary>
    public string? Stance { get; init; }

    /// <summary>What its owner calls the tools; null for what a shop sells.</summary>
    public string? Name { get; init; }

    /// <summary>Whether it is to be borrowed or bought: there is a chest, and it is not in it.</summary>
    public bool ToGet { get; init; }
}

/// <summary>One step against a nut that stays tight.</summary>
/// <param name="Key">Its name: <c>now</c>, a key of the table <c>moves</c>, or what it clears.</param>
/// <param name="Move">The move of the table; null for the pull as asked and for what only clears a stop.</param>
/// <param name="Tool">What to take; null where nothing is taken.</param>
/// <param name="ComesLooseBy">Chance that the nut has come loose by then; null where no figure is known.</param>
/// <param name="BreaksBy">Chance that something has broken, slid off or turned by then; null where no figure is known.</param>
/// <param name="Request">The set-up that is pulled; null where nothing is.</param>
/// <param name="Setup">The same with every blank filled.</param>
/// <param name="Alone">What that pull would be judged by itself.</param>
public sealed record LadderStep(
    string Key,
    Move? Move,
    LadderTool? Tool,
    double? ComesLooseBy = null,
    double? BreaksBy = null,
    LooseningRequest? Request = null,
    LooseningSetup? Setup = null,
    Judgement? Alone = null);

/// <summary>Tools that could be taken instead.</summary>
/// <param name="Request">The request with them, hands and all.</param>
/// <param name="Pieces">Pieces to put together.</param>
/// <param name="Name">What their owner calls them; null for what a shop sells.</param>
/// <param name="ToGet">Whether they are to be borrowed or bought.</param>
public sealed record ToolOption(LooseningRequest Request, int Pieces, string? Name = null, bool ToGet = false)
{
    /// <summary>How much there is to put together, to lift and to swing: pieces, length of tube, drive square, length of the whole lever, mm.</summary>
    internal (int Pieces, double TubeMm, double DriveNm, double ToolMm) Size =>
        (Pieces, Request.Tube?.Length.Millimeters ?? 0, Request.Drive is { } drive ? LoadPath.ToolStrength.Square(drive).TorqueNm : 0, LeverDefaults.ToolMm(Request) ?? 0);

    /// <summary>What is taken in hand instead of what was there before.</summary>
    internal LadderTool InPlaceOf(LooseningRequest before, Length? acrossFlats) => new()
    {
        Kind = Request.Tool ?? ToolKind.Socket,
        AcrossFlats = acrossFlats,
        Drive = Request.Drive,
        Bar = Name is null && Request.Drive == before.Drive && Request.Bar?.Equals(before.Bar) == true ? null : Request.Bar,
        Tube = Request.Tube,
        Overlap = Request.Overlap,
        Stance = Request.Stance,
        Name = Name,
        ToGet = ToGet,
    };
}

/// <summary>What of a chest can hold the wheel.</summary>
/// <param name="By">How it holds.</param>
/// <param name="Height">Height of a chock.</param>
/// <param name="Diameter">Diameter of a bar across the studs.</param>
/// <param name="Name">What its owner calls it.</param>
public sealed record HoldOption(Restraint By, Length? Height, Length? Diameter, string Name);
