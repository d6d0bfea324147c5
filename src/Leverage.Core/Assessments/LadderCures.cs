using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>What clears a stop, and what a step carries on from the one before.</summary>
internal static class LadderCures
{
    /// <summary>Best overlap nearer than this is the same, mm.</summary>
    private const double SameOverlapMm = 10;

    /// <summary>What could clear the stops of a set-up, first things first, each on top of those before.</summary>
    internal static IEnumerable<(string Key, LadderTool? Tool, LooseningRequest Request)> Of(LooseningRequest request, LooseningAssessment now, IReadOnlyList<HoldOption> holds)
    {
        LooseningRequest then = request;
        VerdictRules stops = now.Judgement.Ruling.Stops;
        VerdictRules harms = stops | now.Judgement.Ruling.Cares;
        if (stops.HasFlag(VerdictRules.OnStands))
        {
            then = OnItsWheels(then, now.Setup.Place);
            yield return ("on-its-wheels", null, then);
        }

        bool spins = now.Setup.Hold is { OnFlange: true, HalfShafts: HalfShafts.One };
        if (!spins && (harms.HasFlag(VerdictRules.WheelTurns) || then is { OnStands: false, HeldBy: not null } && stops.HasFlag(VerdictRules.OnStands)))
        {
            foreach (var (restraint, height, name, held) in Holds(then, now, holds))
            {
                then = held;
                yield return (restraint.ToString().ToLowerInvariant(), new LadderTool { Hold = restraint, Height = height, Name = name }, then);
            }
        }

        if ((harms & (VerdictRules.SlidesOff | VerdictRules.SlidesAsItTurns)) != VerdictRules.None && now is { Tube: { } tube, Setup.Overlap: var overlap })
        {
            foreach (var cure in Stays(then, tube, overlap))
            {
                then = cure.Request;
                yield return cure;
            }
        }

        if (stops.HasFlag(VerdictRules.CornersRound) || WantsRing(request, now))
        {
            then = then with { Points = 6, Engaged = 1 };
            if (request.Tool == ToolKind.Open && now.Setup.Fastener.AcrossFlats is { } flats && ShopTools.Ring(then, flats) is { } ring)
            {
                then = ring;
                yield return ("ring", new LadderTool { Kind = ToolKind.Ring, AcrossFlats = flats, Bar = ring.Bar }, then);
            }
            else if (stops.HasFlag(VerdictRules.CornersRound))
            {
                yield return ("seat-socket", null, then);
            }
        }
    }

    /// <summary>What a cure is to lower: the share of pulls that break something or let the tube slide, sooner or as the nut turns.</summary>
    internal static double Harm(Judgement judged) => judged.Breaks + judged.ComesLoose * judged.Shares.SlidesAsItTurns;

    /// <summary>Whether a cure mends a pull that was no stop: it lowers the harm by more than calls for care, off a jaw by anything, or brings the nut sooner.</summary>
    internal static bool Mends(Judgement before, Judgement after, bool jaw) =>
        jaw && after.Breaks < before.Breaks || Harm(after) <= Harm(before) - VerdictOf.HurtCare || after.ComesLoose >= before.ComesLoose + LadderRank.LeastGain;

    /// <summary>Whether an open jaw may round the corners off: a ring comes before it, stop or not (common practice).</summary>
    internal static bool WantsRing(LooseningRequest request, LooseningAssessment now) =>
        request.Tool == ToolKind.Open && (now.Judgement.Ruling.Stops | now.Judgement.Ruling.Cares).HasFlag(VerdictRules.CornersRound);

    /// <summary>The set-up with its wheels down: where the fastener turns a wheel, that wheel is free until something holds it.</summary>
    private static LooseningRequest OnItsWheels(LooseningRequest request, Place? place) => request.HeldBy is null && place is not { TurnsWheel: true }
        ? request with
        {
            OnStands = false,
            VehicleMass = null,
            WheelLoad = null,
            TyreRadius = null,
            ChockHeight = null,
            Ground = null,
            HalfShafts = null,
            StudBarDiameter = null,
            Side = null,
        }
        : request with
        {
            OnStands = false,
            HeldBy = request.HeldBy ?? [],
            VehicleMass = request.VehicleMass ?? (request.WheelLoad is null ? HoldDefaults.UsualVehicle : null),
        };

    /// <summary>What keeps a tube on: a clean bar, the best overlap, no start past square.</summary>
    private static IEnumerable<(string Key, LadderTool? Tool, LooseningRequest Request)> Stays(LooseningRequest request, TubeAssessment tube, Length overlap)
    {
        LooseningRequest then = request;
        if (then.Surface is not (null or HandleSurface.Usual) && then.SurfaceFriction is null)
        {
            then = then with { Surface = HandleSurface.Usual };
            yield return ("clean-bar", null, then);
        }

        if (Math.Abs((tube.BestOverlap - overlap).Millimeters) > SameOverlapMm)
        {
            then = then with { Overlap = tube.BestOverlap };
            yield return ("best-overlap", new LadderTool { Overlap = tube.BestOverlap }, then);
        }

        if (then.StartPastSquare > Angle.Zero)
        {
            yield return ("start-square", null, then with { StartPastSquare = null });
        }
    }

    /// <summary>The other set-up with what has been done so far: soaked, held, off its stands.</summary>
    internal static LooseningRequest Carried(LooseningRequest done, LooseningRequest other) => other with
    {
        Soaked = done.Soaked,
        OnStands = done.OnStands,
        HeldBy = done.HeldBy,
        ChockHeight = done.ChockHeight,
        VehicleMass = done.VehicleMass,
        WheelLoad = done.WheelLoad,
        TyreRadius = done.TyreRadius,
        Ground = done.Ground,
        HalfShafts = done.HalfShafts,
        StudBarDiameter = done.StudBarDiameter,
        Side = done.Side,
        Stance = other.Stance ?? done.Stance,
        People = done.People ?? other.People,
        Surface = done.Surface,
        StartPastSquare = done.StartPastSquare,
        Points = done.Points,
        Engaged = done.Engaged,
    };

    /// <summary>The stance of the same posture in which one pushes hardest, where the one said is weaker and nobody measured; null for none, and where one hardly reaches it.</summary>
    internal static string? BetterStance(LooseningRequest request)
    {
        return request is { Stance: { } stance, Force: null } && LeverDefaults.ToolMm(request) >= Stance.OneHandBelowMm ? Stance.Named(stance).Better : null;
    }

    /// <summary>What is missing of what the chest has, chock, helper and brake, each on top of the one before.</summary>
    private static IEnumerable<(Restraint By, Length? Height, string? Name, LooseningRequest Request)> Holds(
        LooseningRequest request, LooseningAssessment now, IReadOnlyList<HoldOption> holds)
    {
        LooseningRequest then = request;
        Length chock = HoldDefaults.UsualChock(now.Setup.Hold?.TyreRadius ?? Length.FromMillimeters(UsualValues.TyreRadiusMm));
        HoldOption[] anybody = [new(Restraint.Chock, chock, null, ""), new(Restraint.Helper, null, null, ""), new(Restraint.Brake, null, null, "")];
        foreach (HoldOption hold in holds.Concat(anybody))
        {
            if (then.HeldBy?.Contains(hold.By) == true || hold.By == Restraint.Brake && then.HeldBy?.Contains(Restraint.OldBrake) == true)
            {
                continue;
            }

            then = then with
            {
                HeldBy = [.. then.HeldBy ?? [], hold.By],
                VehicleMass = then.VehicleMass ?? (then.WheelLoad is null ? HoldDefaults.UsualVehicle : null),
                ChockHeight = hold.By == Restraint.Chock ? hold.Height ?? chock : then.ChockHeight,
                StudBarDiameter = hold.By == Restraint.Bar ? hold.Diameter : then.StudBarDiameter,
            };
            yield return (hold.By, hold.By == Restraint.Chock ? then.ChockHeight : null, hold.Name.Length > 0 ? hold.Name : null, then);
        }
    }
}
