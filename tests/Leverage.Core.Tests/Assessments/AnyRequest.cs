using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>Any request a person could make, sensible or not, with many things left out; every part within what the reader accepts.</summary>
internal static class AnyRequest
{
    private static readonly ScrewThread[] Threads =
        [.. ThreadCatalog.Family(ThreadFamily.Metric), .. ThreadCatalog.Family(ThreadFamily.Unified)];

    private static readonly Restraint[] Restraints = Enum.GetValues<Restraint>();

    internal static LooseningRequest From(Draws draws)
    {
        ArgumentNullException.ThrowIfNull(draws);
        Func<Sized> next = draws.Reader();
        LooseningRequest request = Hands(Tube(Bar(Nut(next), next), next), next);
        return next().Upper(0.5) ? Hold(request, next) : request;
    }

    /// <summary>The names of a table.</summary>
    internal static string[] Names(string table) => [.. TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal)];

    private static LooseningRequest Nut(Func<Sized> next)
    {
        ScrewThread? thread = Maybe(next, 0.7, () => next().Of(Threads));
        bool heated = next().Upper(0.3) && thread is not null;
        return new LooseningRequest
        {
            BookTorque = Maybe(next, 0.8, () => (Torque?)Torque.FromNewtonMeters(next().Log(0.01, 50_000))),
            Thread = thread,
            Grade = Maybe(next, 0.4, () => thread is null ? null : next().Of(GradeCatalog.BoltsFor(thread)).Name),
            Friction = Maybe(next, 0.3, () => (double?)next().Log(0.02, 1)),
            Condition = Maybe(next, 0.8, () => next().Of(Names("conditions"))),
            Prevailing = Maybe(next, 0.2, () => (Torque?)Torque.FromNewtonMeters(next().Log(0.01, 500))),
            LeftHand = next().Upper(0.2),
            Soaked = next().Upper(0.3),
            Heat = heated ? next().Of(Enum.GetValues<HeatedPart>()) : null,
            HeatedBy = heated ? TemperatureDelta.FromKelvins(next().Log(1, 1000)) : null,
            AcrossFlats = Millimetres(next, 0.5, 1, 120),
            Tool = next().Of(Enum.GetValues<ToolKind>()),
            Drive = Maybe(next, 0.6, () => next().Of(ToolStrength.Drives())),
            Adapters = next().Upper(0.2) ? [next().Of(ToolStrength.Drives())] : [],
        };
    }

    private static LooseningRequest Bar(LooseningRequest request, Func<Sized> next)
    {
        bool pinned = next().Upper(0.1);
        return !next().Upper(0.85) ? request : request with
        {
            Bar = Length.FromMillimeters(next().Log(20, 10_000)),
            BarDiameter = Millimetres(next, 0.7, 1, 100),
            BarYield = Maybe(next, 0.3, () => (Pressure?)Pressure.FromMegapascals(next().Log(1, 5000))),
            StraightHandle = Millimetres(next, 0.2, 1, 5000),
            Taper = Maybe(next, 0.3, () => (Angle?)Angle.FromDegrees(next().Even(0, 20))),
            BarPin = pinned ? Length.FromMillimeters(next().Log(2, 20)) : null,
            BarPinPlanes = pinned ? Length.FromMillimeters(next().Log(5, 40)) : null,
        };
    }

    private static LooseningRequest Tube(LooseningRequest request, Func<Sized> next)
    {
        double outside = next().Log(8, 200);
        Length wall = Length.FromMillimeters(outside * next().Log(0.01, 0.49));
        Length length = Length.FromMillimeters(next().Log(20, 10_000));
        bool tubed = next().Upper(0.6) && request.Bar is not null;
        return request with
        {
            Tube = !tubed ? null
                : next().Upper(0.3) ? new TubeText(length, Bore: Length.FromMillimeters(outside))
                : new TubeText(length, Length.FromMillimeters(outside), wall),
            TubeYield = tubed ? Maybe(next, 0.3, () => (Pressure?)Pressure.FromMegapascals(next().Log(1, 5000))) : null,
            Overlap = tubed ? Millimetres(next, 0.5, 0.1, 2000) : null,
            Surface = Maybe(next, 0.5, () => next().Of(Names("handle-friction"))),
            SurfaceFriction = Maybe(next, 0.3, () => (double?)next().Log(0.01, 1)),
            PastSquare = Maybe(next, 0.5, () => (Angle?)Angle.FromDegrees(next().Even(0, 80))),
            StandOff = Millimetres(next, 0.2, 1, 300),
        };
    }

    private static LooseningRequest Hands(LooseningRequest request, Func<Sized> next) => request with
    {
        Stance = Maybe(next, 0.7, () => next().Of(Names("stances"))),
        Person = Maybe(next, 0.5, () => (Person?)next().Of([Person.Man, Person.Woman])),
        Body = Maybe(next, 0.5, () => (Mass?)Mass.FromKilograms(next().Log(25, 250))),
        Force = Maybe(next, 0.3, () => (Force?)Force.FromNewtons(next().Log(1, 100_000))),
    };

    private static LooseningRequest Hold(LooseningRequest request, Func<Sized> next) => request with
    {
        HeldBy = [.. Restraints.Where(_ => next().Upper(0.4))],
        VehicleMass = Maybe(next, 0.8, () => (Mass?)Mass.FromKilograms(next().Log(1, 60_000))),
        WheelLoad = Maybe(next, 0.6, () => (Force?)Force.FromNewtons(next().Log(1, 100_000))),
        TyreRadius = Millimetres(next, 0.5, 50, 2000),
        ChockHeight = Millimetres(next, 0.9, 1, 1000),
        Ground = Maybe(next, 0.5, () => next().Of(Names("ground"))),
        HalfShafts = Maybe(next, 0.5, () => (HalfShafts?)next().Of([HalfShafts.Both, HalfShafts.One])),
        StudBarDiameter = Millimetres(next, 0.8, 1, 100),
        Side = Maybe(next, 0.7, () => (Side?)next().Of([Side.Left, Side.Right])),
        OnStands = next().Upper(0.2),
    };

    private static T? Maybe<T>(Func<Sized> next, double share, Func<T?> value)
    {
        bool given = next().Upper(share);
        T? drawn = value();
        return given ? drawn : default;
    }

    private static Length? Millimetres(Func<Sized> next, double share, double from, double to) =>
        Maybe(next, share, () => (Length?)Length.FromMillimeters(next().Log(from, to)));
}
