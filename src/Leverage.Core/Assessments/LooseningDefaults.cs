using System.Globalization;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Levers;
using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills every blank of a request and tells what it filled it with.</summary>
public static class LooseningDefaults
{
    /// <summary>Share of proof load a fastener is taken to be tightened to when no torque is known (common practice).</summary>
    public const double ProofShare = 0.75;

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
        Fastener fastener = Fasten(request, assumed);
        Hands hands = Stand(request, assumed);
        if (request is { Tool: null or ToolKind.Socket, Drive: null })
        {
            assumed.Add(new Assumption("drive square not judged", null, "its size is not said"));
        }

        var lever = LeverDefaults.Complete(request, hands.Stance, assumed);
        return new LooseningSetup
        {
            Fastener = fastener,
            Tool = new ToolHead(request.Tool ?? ToolKind.Socket, lever.Drive, request.Adapters),
            Hands = hands,
            Bar = lever.Bar,
            BarAssumed = lever.BarAssumed,
            BarYieldAssumed = lever.YieldAssumed,
            Tube = lever.Tube,
            Overlap = lever.Overlap,
            GripFriction = GripDefaults.Friction(request, lever.Tube is not null, assumed),
            GripWords = GripDefaults.Words(request),
            BelowLevel = GripDefaults.Swing(request, lever.Tube is not null, assumed),
            StandOff = request.StandOff,
            Hold = HoldDefaults.Complete(request, assumed),
            Assumed = assumed,
        };
    }

    private static Fastener Fasten(LooseningRequest request, List<Assumption> assumed)
    {
        FrictionRange friction = FrictionRange.About(request.Friction ?? FrictionRange.Default);
        Grade? grade = GradeOf(request, assumed);
        Torque book = request.BookTorque ?? FromProof(request, grade, friction, assumed);
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

        return new Fastener
        {
            BookTorque = book,
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

    private static Torque FromProof(
        LooseningRequest request, Grade? grade, FrictionRange friction, List<Assumption> assumed)
    {
        if (request.Thread is not { } thread || grade is null)
        {
            throw new InputException(
                "torque", "nothing says how tight it is: give the torque it was tightened to, or its thread and grade.", LooseningFields.Torque.Cure);
        }

        double preload = ProofShare * ProofLoad.Force(grade.UsableProofMpa, thread.StressAreaMm2);
        double torque = JointTorque.Tightening(
            preload, thread.Joint(HexagonCatalog.Bearing(thread).BearingMm), JointFriction.Same(friction.Likely));
        Torque book = Torque.FromNewtonMillimeters(torque);
        assumed.Add(new Assumption("tightened to 75 % of proof load", book, "common practice; no torque given"));
        return book;
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
            throw new InputException("force", string.Create(
                CultureInfo.InvariantCulture,
                $"{force.Newtons:0} N down is more than the body weight of {body.Kilograms:0.#} kg. Give a smaller --force, or --body for a heavier person."));
        }

        return new Hands(stance, person, body, request.Force);
    }
}
