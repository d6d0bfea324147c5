using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills every blank of a request and tells what it filled it with.</summary>
public static class LooseningDefaults
{
    /// <summary>The complete set-up of a request.</summary>
    /// <param name="request">What the person said.</param>
    /// <returns>The set-up, with everything it took for granted.</returns>
    /// <exception cref="InputException">Something needed is missing, or two things do not fit.</exception>
    public static LooseningSetup Complete(LooseningRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        LooseningFields.All.Check(request);
        var assumed = new List<Assumption>();
        Place? place = request.On is { } on ? Place.Named(on) : null;
        var (fastener, start) = FastenerDefaults.Complete(request, place, assumed);
        Hands hands = Stand(request, assumed);
        if (request is { Tool: null or ToolKind.Socket, Drive: null })
        {
            assumed.Add(new Assumption(AssumptionKind.DriveNotJudged));
        }

        var lever = LeverDefaults.Complete(request, hands.Stance, assumed);
        return new LooseningSetup
        {
            Fastener = fastener,
            Place = place,
            Start = start,
            ThreadBySight = request.Thread is null && fastener.Thread is not null,
            Corners = CornerDefaults.Complete(request, fastener, assumed),
            RecessWorn = request is { Tool: ToolKind.Key, Worn: not (null or "new") },
            Count = request.Count ?? 1,
            StartPastSquare = request.StartPastSquare ?? Angle.Zero,
            Tool = new ToolHead(request.Tool ?? ToolKind.Socket, lever.Drive, request.Adapters) { Extension = request.Extension is null ? null : lever.Drive, Size = CornerDefaults.Size(request) },
            Hands = hands,
            Bar = lever.Bar,
            BarAssumed = lever.BarAssumed,
            BarYieldAssumed = lever.YieldAssumed,
            Tube = lever.Tube,
            Overlap = lever.Overlap,
            Surface = GripDefaults.Surface(request, lever.Tube is not null, assumed),
            PastSquare = GripDefaults.Swing(request, lever.Tube is not null, assumed),
            StandOff = request.Extension is { } extension ? extension + (request.StandOff ?? Length.Zero) : request.StandOff,
            Room = request.Room,
            Hold = HoldDefaults.Complete(request, place, assumed),
            Assumed = assumed,
        };
    }

    internal static Hands Stand(LooseningRequest request, List<Assumption> assumed)
    {
        Stance usual = request.Stance is { } named ? Stance.Named(named) : Stance.Usual(LeverDefaults.ToolMm(request));
        Stance stance = request.HandsIn is { } held ? usual with { GripOffsetMm = held.Millimeters } : usual;
        Person person = request.Person ?? Person.Man;
        if (request.Stance is null)
        {
            assumed.Add(new Assumption(AssumptionKind.Stance, null, stance.Status) { Words = stance.Short });
        }

        if (request.Person is null && request.Force is null)
        {
            assumed.Add(new Assumption(AssumptionKind.Man));
        }

        Mass body = request.Body ?? Mass.FromKilograms(Stance.ReferenceKg(person));
        if (request.Body is null)
        {
            assumed.Add(new Assumption(AssumptionKind.BodyMass, body));
        }

        if (request.Force is { } force && force.Newtons > stance.CapN(body.Kilograms))
        {
            throw new InputException(
                "force",
                string.Create(CultureInfo.InvariantCulture, $"{force.Newtons:0} N down is more than the body weight of {body.Kilograms:0.#} kg."),
                LooseningFields.Force.Cure);
        }

        if (request.People == 2)
        {
            assumed.Add(new Assumption(AssumptionKind.TwoPull, null, ValueStatus.Judgement));
        }

        return new Hands(stance, person, body, request.Force, request.People == 2);
    }
}
