using System.Globalization;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A lever with its blanks filled.</summary>
internal sealed record CompletedLever(
    string? Drive, Bar? Bar, bool BarAssumed, bool YieldAssumed, Tube? Tube, Length Overlap);

/// <summary>Fills the blanks of bar and tube, and refuses what does not fit together.</summary>
internal static class LeverDefaults
{
    internal static CompletedLever Complete(LooseningRequest request, Stance stance, List<Assumption> assumed)
    {
        string? drive = Drive(request);
        if (request.Bar is not { } length)
        {
            return new CompletedLever(drive, null, false, false, null, Length.Zero);
        }

        Bar bar = BarOf(request, length, drive, assumed);
        HeldNearItsEnd(request);
        Holdable(request.Tube, stance);
        Tube? tube = request.Tube is null ? null : TubeOf(request, request.Tube, assumed);
        Length overlap = tube is null ? Length.Zero : Overlap(request, bar, tube, stance, assumed);
        assumed.Add(new Assumption(AssumptionKind.LeverWeight) { Name = stance.Push.ToString() });
        return new CompletedLever(
            drive, bar, request.BarDiameter is null && bar.Diameter is not null, request.BarYield is null, tube, overlap);
    }

    /// <summary>Length of bar, or bar and tube less the overlap, mm; null with no bar.</summary>
    internal static double? ToolMm(LooseningRequest request) => request.Bar is not { } bar
        ? null
        : request.Tube is not { } tube
            ? bar.Millimeters
            : (bar + tube.Length - (request.Overlap ?? request.StraightHandle ?? UsualValues.StraightShare * bar)).Millimeters;

    /// <summary>Longest lever there is room to swing on one's back or at arm's length, where nothing is said of it, mm (judgement).</summary>
    private const double CrampedMm = 750;

    /// <summary>Room for a lever, mm: as said, else what the stance leaves.</summary>
    internal static double RoomMm(Length? room, Stance? stance) => room?.Millimeters ?? (stance is { IsCramped: true } ? CrampedMm : double.PositiveInfinity);

    /// <summary>Whether there is room to swing the lever.</summary>
    internal static bool Swings(LooseningRequest request) => ToolMm(request) is not { } tool
        || tool <= RoomMm(request.Room, request.Stance is { } stance ? Stance.Named(stance) : null);

    /// <summary>Whether a stance leaves no room to swing a long lever: on one's back, at arm's length.</summary>
    internal static bool IsCramped(string? stance) => stance is not null && Stance.Named(stance).IsCramped;

    private static void HeldNearItsEnd(LooseningRequest request)
    {
        if (request.HandsIn is { } held && ToolMm(request) is { } tool && held.Millimeters > tool / 3)
        {
            throw new InputException(
                "hands-in",
                string.Create(CultureInfo.InvariantCulture, $"{held.Millimeters:0.##} mm is more than a third of a lever of {tool:0.##} mm: give the length you use as its length."),
                new Cure("hands-in", string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(tool / 3):0}mm")));
        }
    }

    private static string? Drive(LooseningRequest request) => request is { Tool: null or ToolKind.Socket or ToolKind.Key, Drive: { } drive }
        ? RowLookup.Named("drive-squares", drive, "a drive square").Key
        : null;

    private static Bar BarOf(LooseningRequest request, Length length, string? drive, List<Assumption> assumed)
    {
        TableRow? row = drive is null ? null : RowLookup.Named("handles", drive, "a drive");
        ValueStatus status = row?.Status ?? ValueStatus.Judgement;
        Length? diameter = request.BarDiameter ?? (row is null ? null : Length.FromMillimeters(row.Number("diameter_mm")));
        Pressure yield = request.BarYield ?? Pressure.FromMegapascals(row?.Number("yield_mpa") ?? UsualValues.BarYieldMpa);
        if (request.BarDiameter is null && diameter is { } guess)
        {
            assumed.Add(new Assumption(AssumptionKind.BarDiameter, guess, status) { Name = drive });
        }
        else if (diameter is null)
        {
            assumed.Add(new Assumption(AssumptionKind.BarNotJudged));
        }

        if (request.BarYield is null && diameter is not null)
        {
            assumed.Add(new Assumption(AssumptionKind.BarYield, yield, status));
        }

        double share = row?.Number("straight_share") ?? UsualValues.StraightShare;
        return new Bar(length, diameter, yield, request.StraightHandle ?? share * length, request.Taper ?? Angle.Zero, Pin(request));
    }

    private static FlexPin? Pin(LooseningRequest request) => request.BarPin is not { } diameter ? null
        : request.BarPinPlanes is { } apart ? new FlexPin(diameter, apart)
        : throw new InputException("bar-pin", "is of no use without the thickness of the tang the pin runs through.", LooseningFields.BarPinPlanes.Cure);

    private static Tube TubeOf(LooseningRequest request, TubeText text, List<Assumption> assumed)
    {
        Pressure yield = request.TubeYield ?? Pressure.FromMegapascals(UsualValues.TubeYieldMpa);
        if (text is { Outside: { } outside, Wall: { } wall })
        {
            if (request.TubeYield is null)
            {
                assumed.Add(new Assumption(AssumptionKind.TubeYield, yield, ValueStatus.Memory));
            }

            return new Tube(text.Bore ?? outside - 2 * wall, wall, text.Length, yield) { UnknownSteel = request.TubeYield is null };
        }

        if (text.Bore is not { } bore)
        {
            throw new InputException("tube", "a jack handle's bore must be measured.", LooseningFields.Bore.Cure);
        }

        assumed.Add(new Assumption(AssumptionKind.JackHandle, Force.FromNewtons(Tube.JackHandleForceN)));
        assumed.Add(new Assumption(AssumptionKind.DentNotJudged));
        return new Tube(bore, null, text.Length, yield);
    }

    private static Length Overlap(LooseningRequest request, Bar bar, Tube tube, Stance stance, List<Assumption> assumed)
    {
        if (bar.Diameter is not { } diameter)
        {
            throw new InputException("tube", "whether the tube goes over the bar needs the bar's diameter; the drive will do too.", LooseningFields.BarDiameter.Cure);
        }

        if (tube.Bore < diameter)
        {
            throw new InputException("tube", string.Create(
                CultureInfo.InvariantCulture,
                $"it does not go over the bar: bore {tube.Bore.Millimeters:0.##} mm, bar {diameter.Millimeters:0.##} mm. Take a wider tube."));
        }

        Length room = tube.Length - Length.FromMillimeters(stance.GripOffsetMm + 1);
        Length most = bar.StraightHandle < room ? bar.StraightHandle : room;
        Length overlap = request.Overlap ?? most;
        if (request.Overlap is null)
        {
            bool measured = request.StraightHandle is not null || room < bar.StraightHandle;
            assumed.Add(new Assumption(
                AssumptionKind.Overlap, overlap, measured ? ValueStatus.Published : ValueStatus.Judgement));
        }

        else if (request.StraightHandle is null)
        {
            assumed.Add(new Assumption(AssumptionKind.StraightHandle, bar.StraightHandle, ValueStatus.Judgement));
        }

        Refuse(overlap, bar, tube);
        Length play = tube.Bore - diameter;
        Length straight = overlap < most ? overlap : most;
        return play <= straight
            ? overlap
            : throw new InputException("tube", string.Create(
                CultureInfo.InvariantCulture,
                $"it is far too loose: {play.Millimeters:0.##} mm of play on {straight.Millimeters:0.##} mm of overlap. Take a narrower tube."));
    }

    private static void Holdable(TubeText? tube, Stance stance)
    {
        if (tube?.Length is { } length && length.Millimeters <= stance.GripOffsetMm + 1)
        {
            throw new InputException("tube", string.Create(
                CultureInfo.InvariantCulture,
                $"{length.Millimeters:0.##} mm is too short: the middle of your hands is {stance.GripOffsetMm} mm from its end. Take a longer one."));
        }
    }

    private static void Refuse(Length overlap, Bar bar, Tube tube)
    {
        if (overlap > bar.Length)
        {
            throw new InputException("overlap", string.Create(
                CultureInfo.InvariantCulture,
                $"{overlap.Millimeters:0.##} mm is longer than the bar, {bar.Length.Millimeters:0.##} mm. It can be no more than the straight handle."));
        }

        if (overlap > tube.Length || overlap <= Length.Zero)
        {
            throw new InputException("overlap", string.Create(
                CultureInfo.InvariantCulture,
                $"{overlap.Millimeters:0.##} mm does not go with a tube of {tube.Length.Millimeters:0.##} mm. It must leave room for the hands."));
        }
    }
}
