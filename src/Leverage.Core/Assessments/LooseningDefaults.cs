using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills every blank of a request and tells what it filled it with.</summary>
public static class LooseningDefaults
{
    /// <summary>Grade taken for a bolt or stud when none is known.</summary>
    public const string Grade = "8.8";

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
        Grade? grade = GradeOf(request, assumed);
        StartTorque start = Start(request, place, assumed);
        Fastener fastener = Fasten(request, start, grade, assumed);
        Hands hands = Stand(request, assumed);
        if (request is { Tool: null or ToolKind.Socket, Drive: null })
        {
            assumed.Add(new Assumption("drive square not judged", null, "its size is not said"));
        }

        var lever = LeverDefaults.Complete(request, hands.Stance, assumed);
        return new LooseningSetup
        {
            Fastener = fastener,
            Place = place,
            Start = start,
            Corners = CornerDefaults.Complete(request, fastener, assumed),
            Count = request.Count ?? 1,
            StartPastSquare = request.StartPastSquare ?? Angle.Zero,
            Tool = new ToolHead(request.Tool ?? ToolKind.Socket, lever.Drive, request.Adapters) { Extension = request.Extension is null ? null : lever.Drive },
            Hands = hands,
            Bar = lever.Bar,
            BarAssumed = lever.BarAssumed,
            BarYieldAssumed = lever.YieldAssumed,
            Tube = lever.Tube,
            Overlap = lever.Overlap,
            GripFriction = GripDefaults.Friction(request, lever.Tube is not null, assumed),
            GripWords = GripDefaults.Words(request),
            PastSquare = GripDefaults.Swing(request, lever.Tube is not null, assumed),
            StandOff = request.Extension is { } extension ? extension + (request.StandOff ?? Length.Zero) : request.StandOff,
            Room = request.Room,
            Hold = HoldDefaults.Complete(request, assumed),
            Assumed = assumed,
        };
    }

    /// <summary>The fastener alone, as far as it is said.</summary>
    internal static Fastener Nut(LooseningRequest request, List<Assumption> assumed)
    {
        Grade? grade = GradeOf(request, assumed);
        return Fasten(request, Start(request, null, assumed), grade, assumed);
    }

    private static Fastener Fasten(LooseningRequest request, StartTorque start, Grade? grade, List<Assumption> assumed)
    {
        FrictionRange friction = FrictionRange.About(request.Friction ?? FrictionRange.Default);
        if (!request.LeftHand)
        {
            assumed.Add(new Assumption("right-hand thread"));
        }

        if (request.Friction is null)
        {
            assumed.Add(new Assumption("friction 0.14 at assembly", null, "0.10 to 0.20"));
        }

        if (request.Condition is null)
        {
            assumed.Add(new Assumption("condition used", null, "years in service, dry", Condition.Named("used").Status));
        }

        if (request.Thread is null)
        {
            assumed.Add(new Assumption("the common torque split", null, "no thread given: 10 % pitch, 40 % thread, 50 % face"));
        }
        else if (!HexagonCatalog.Bearing(request.Thread).FromTables)
        {
            assumed.Add(new Assumption("bearing face 1.25 × diameter", null, "not in the tables for this size"));
        }

        if (request is { Then: not null, Grip: null, Thread: { } turned })
        {
            assumed.Add(new Assumption("clamped length", Length.FromMillimeters(BoltedGrip.UsualDiameters * turned.DiameterMm), "three diameters", ValueStatus.Judgement));
        }

        return new Fastener
        {
            BookTorque = Torque.FromNewtonMillimeters(start.LikelyNmm),
            BookTorqueSigma = start.Sigma,
            Then = request.Then,
            HeldNmm = request.Held?.NewtonMillimeters ?? 0,
            CameNmm = [.. request.Came.Select(came => came.NewtonMillimeters)],
            Grip = request.Grip,
            Clamped = request.Clamped is { } clamped ? ClampedMaterial.Named(clamped) : null,
            Condition = Condition.Named(request.Condition ?? "used"),
            Friction = friction,
            Thread = request.Thread,
            Grade = grade,
            AcrossFlats = Hexagon(request, assumed),
            Prevailing = request.Prevailing ?? Torque.Zero,
            LeftHand = request.LeftHand,
            Soaked = request.Soaked,
            Heating = Heating(request),
        };
    }

    private static Grade? GradeOf(LooseningRequest request, List<Assumption> assumed)
    {
        if (request.Thread is null)
        {
            return null;
        }

        string name = request.Grade ?? (request.Thread.Family == ThreadFamily.Unified ? "SAE 5" : Grade);
        if (request.Grade is null)
        {
            assumed.Add(new Assumption($"grade {name}"));
        }

        return Of(LooseningFields.Grade, () => GradeCatalog.Bolt(name, request.Thread));
    }

    /// <summary>What a reader says, its refusal about a field.</summary>
    internal static T Of<T>(Field field, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e)
        {
            throw e.About(field.Name);
        }
    }

    private static Heating? Heating(LooseningRequest request) => request.Heat is not { } part ? null
        : request.HeatedBy is { } by ? new Heating(part, by.Kelvins)
        : throw new InputException("heat", "says nothing without how much hotter than the rest.", LooseningFields.By.Cure);

    /// <summary>What it was tightened to: as given, else by what can be seen.</summary>
    private static StartTorque Start(LooseningRequest request, Place? place, List<Assumption> assumed)
    {
        if (request.BookTorque is { } given)
        {
            return StartTorque.Given(given.NewtonMillimeters);
        }

        if (request.Then is not null)
        {
            throw new InputException("torque", "a turn follows it, and it is not said itself.", LooseningFields.Torque.Cure);
        }

        if (BySight.Start(place, request.AcrossFlats?.Millimeters, request.Thread) is not { } start)
        {
            string near = string.Join(", ", BySight.Nearest(place, request.AcrossFlats?.Millimeters).Select(row => row.Application));
            throw new InputException(
                "torque",
                $"nothing says how tight it is: the torque, or its hexagon or thread with where it sits. Nearest in the table: {near}.",
                LooseningFields.Torque.Cure);
        }

        assumed.Add(new Assumption(
            start.From == StartSource.Table ? "tightened as others of its kind" : "tightened by the size of its thread",
            Torque.FromNewtonMillimeters(start.LikelyNmm), null, ValueStatus.Judgement));
        return start;
    }

    private static Length? Hexagon(LooseningRequest request, List<Assumption> assumed)
    {
        if (request.AcrossFlats is { } given)
        {
            return given;
        }

        if (request.Thread is { } thread && request.Tool is not ToolKind.Key && HexagonCatalog.AcrossFlatsMm(thread) is { } flats)
        {
            Length width = Length.FromMillimeters(flats);
            assumed.Add(new Assumption("across flats", width, "standard nut of this thread"));
            return width;
        }

        assumed.Add(new Assumption("hexagon not judged", null, "its width is not said"));
        return null;
    }

    internal static Hands Stand(LooseningRequest request, List<Assumption> assumed)
    {
        Stance stance = request.Stance is { } named ? Stance.Named(named) : Stance.Usual(LeverDefaults.ToolMm(request));
        Person person = request.Person ?? Person.Man;
        if (request.Stance is null)
        {
            assumed.Add(new Assumption($"stance {stance.Key}", Status: stance.Status));
        }

        if (request.Person is null && request.Force is null)
        {
            assumed.Add(new Assumption("a man"));
        }

        Mass body = request.Body ?? Mass.FromKilograms(Stance.ReferenceKg(person));
        if (request.Body is null)
        {
            assumed.Add(new Assumption("body mass", body, "survey median"));
        }

        if (request.Force is { } force && force.Newtons > stance.CapN(body.Kilograms))
        {
            throw new InputException(
                "force",
                string.Create(CultureInfo.InvariantCulture, $"{force.Newtons:0} N down is more than the body weight of {body.Kilograms:0.#} kg."),
                LooseningFields.Force.Cure);
        }

        return new Hands(stance, person, body, request.Force);
    }
}
