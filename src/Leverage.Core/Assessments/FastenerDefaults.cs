using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>The fastener of a request: its blanks, and what it was tightened to.</summary>
internal static class FastenerDefaults
{
    /// <summary>The fastener, and what it was tightened to.</summary>
    internal static (Fastener Fastener, StartTorque Start) Complete(LooseningRequest request, Place? place, List<Assumption> assumed)
    {
        StartTorque start = Start(request, place, assumed);
        LooseningRequest known = WithThread(request, start, assumed);
        return (Fasten(known, start, place, GradeOf(known, place, assumed), assumed), start);
    }

    /// <summary>A thread that told the start torque is judged too: a bolt nobody measured twists off all the same.</summary>
    private static LooseningRequest WithThread(LooseningRequest request, StartTorque start, List<Assumption> assumed)
    {
        if (request.Thread is not null || start.Thread is not { } thread)
        {
            return request;
        }

        assumed.Add(new Assumption(AssumptionKind.ThreadBySight, null, ValueStatus.Judgement) { Name = thread.Printed });
        return request with { Thread = thread };
    }

    private static Fastener Fasten(LooseningRequest request, StartTorque start, Place? place, Grade? grade, List<Assumption> assumed)
    {
        var condition = Condition.Named(request.Condition ?? place?.Condition ?? Condition.Usual);
        FrictionRange friction = FrictionRange.About(request.Friction ?? FrictionRange.Default);
        if (!request.LeftHand)
        {
            assumed.Add(new Assumption(AssumptionKind.RightHandThread));
        }

        if (request.Friction is null)
        {
            assumed.Add(new Assumption(AssumptionKind.AssemblyFriction) { Friction = friction });
        }

        if (request.Condition is null)
        {
            assumed.Add(new Assumption(AssumptionKind.Condition, null, condition.Status) { Name = condition.Key, Words = condition.Key == Condition.Usual ? condition.Short : null });
        }

        if (request.Thread is null)
        {
            assumed.Add(new Assumption(AssumptionKind.TorqueSplit));
        }
        else if (!HexagonCatalog.Bearing(request.Thread).FromTables)
        {
            assumed.Add(new Assumption(AssumptionKind.BearingFace) { Share = HexagonCatalog.FaceOverDiameter });
        }

        if (request is { Then: not null, Grip: null, Thread: { } turned })
        {
            var usual = Length.FromMillimeters(BoltedGrip.UsualDiameters * turned.DiameterMm);
            assumed.Add(new Assumption(AssumptionKind.ClampedLength, usual, ValueStatus.Judgement) { Share = BoltedGrip.UsualDiameters });
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
            Condition = condition,
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

    private static Grade? GradeOf(LooseningRequest request, Place? place, List<Assumption> assumed)
    {
        if (request.Thread is null)
        {
            return null;
        }

        string name = request.Grade ?? Place.UsualGrade(place, request.Thread);
        if (request.Grade is null)
        {
            assumed.Add(new Assumption(AssumptionKind.Grade) { Name = name });
        }

        return InputException.About(LooseningFields.Grade.Name, () => GradeCatalog.Bolt(name, request.Thread));
    }

    private static Heating? Heating(LooseningRequest request) => request.Heat is not { } part ? null
        : request.HeatedBy is { } by ? new Heating(part, by.Kelvins)
        : throw new InputException("heat", "is of no use without how much hotter that part is than the rest.", LooseningFields.By.Cure);

    /// <summary>What it was tightened to: as given, else by what can be seen.</summary>
    private static StartTorque Start(LooseningRequest request, Place? place, List<Assumption> assumed)
    {
        if (request.BookTorque is { } given)
        {
            return StartTorque.Given(given.NewtonMillimeters);
        }

        if (request.Then is not null)
        {
            throw new InputException("torque", "a turn is given, but not the torque before it.", LooseningFields.Torque.Cure);
        }

        if (BySight.Start(place, request.AcrossFlats?.Millimeters, request.Thread, request.Tool == ToolKind.Key) is not { } start)
        {
            string near = string.Join(", ", BySight.Nearest(place, request.AcrossFlats?.Millimeters).Select(row => row.Application));
            throw new InputException(
                "torque",
                $"nothing says how tight the nut is. Give the torque, or hexagon or thread with where the nut sits. Nearest in the table: {near}.",
                LooseningFields.Torque.Cure);
        }

        assumed.Add(new Assumption(
            start.From == StartSource.Table ? AssumptionKind.StartAsOthers : AssumptionKind.StartByThread,
            Torque.FromNewtonMillimeters(start.LikelyNmm), ValueStatus.Judgement));
        return start;
    }

    private static Length? Hexagon(LooseningRequest request, List<Assumption> assumed)
    {
        ScrewThread? outside = request.Tool == ToolKind.Key ? null : request.Thread;
        double? usual = outside is null ? null : HexagonCatalog.AcrossFlatsMm(outside);
        if (request.AcrossFlats is { } given)
        {
            return !(given.Millimeters < outside?.DiameterMm) ? given : throw new InputException(
                LooseningFields.Hex.Name,
                $"the hexagon is smaller than its own thread {outside.Printed}.",
                usual is { } standard ? new Cure(LooseningFields.Hex.Name, FormattableString.Invariant($"{standard}mm")) : LooseningFields.Hex.Cure);
        }

        if (usual is { } flats)
        {
            Length width = Length.FromMillimeters(flats);
            assumed.Add(new Assumption(AssumptionKind.AcrossFlats, width));
            return width;
        }

        assumed.Add(new Assumption(AssumptionKind.HexagonNotJudged));
        return null;
    }
}
