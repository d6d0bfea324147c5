using Leverage.Holding;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills the blanks of what holds the wheel.</summary>
internal static class HoldDefaults
{
    /// <summary>A vehicle nobody weighed.</summary>
    internal static Mass UsualVehicle => Mass.FromKilograms(UsualValues.VehicleMassKg);

    internal static Hold? Complete(LooseningRequest request, BreakLoose.Place? place, List<Assumption> assumed)
    {
        if (!request.IsHoldSaid)
        {
            assumed.Add(new Assumption(AssumptionKind.HoldNotJudged));
            return null;
        }

        string ground = request.Ground ?? "dry-concrete";
        if (request is { Ground: null, OnStands: false })
        {
            assumed.Add(new Assumption(AssumptionKind.Ground) { Name = ground });
        }

        Mass mass = VehicleMass(request, assumed);
        Force load = WheelLoad(request, assumed);
        Length radius = Radius(request, assumed);
        return new Hold
        {
            By = request.HeldBy ?? [],
            VehicleMass = mass,
            WheelLoad = load,
            TyreRadius = radius,
            ChockHeight = Chock(request, radius, assumed),
            GroundFriction = RowLookup.Named("ground", ground, "a ground").Number("friction"),
            HalfShafts = Shafts(request, assumed),
            StudBarDiameter = StudBar(request),
            Side = request.Side ?? Side.Unknown,
            OnStands = request.OnStands,
            OnFlange = place is { Turns: BreakLoose.TurnsWith.Flange },
            EngineRunning = request.EngineRunning,
            WholeRatio = request.Ratio ?? Hold.UsualRatio,
        };
    }

    private static Mass VehicleMass(LooseningRequest request, List<Assumption> assumed)
    {
        bool parking = Has(request, Restraint.Brake) || Has(request, Restraint.OldBrake);
        bool foot = request is { OnStands: true, WheelLoad: null } && Has(request, Restraint.Helper);
        if (request.VehicleMass is { } given)
        {
            return given;
        }

        if (parking || foot)
        {
            throw new InputException(
                "held-by", $"what a {(parking ? "parking" : "foot")} brake holds follows from the vehicle's mass.", LooseningFields.VehicleMass.Cure);
        }

        if (request is { OnStands: true, WheelLoad: null })
        {
            assumed.Add(new Assumption(AssumptionKind.VehicleMass, UsualVehicle, ValueStatus.Judgement));
            return UsualVehicle;
        }

        return Mass.FromKilograms(4 * (request.WheelLoad ?? Force.Zero).Newtons / HangingWeight.StandardGravity);
    }

    private static Force WheelLoad(LooseningRequest request, List<Assumption> assumed)
    {
        if (request.WheelLoad is { } given)
        {
            return given;
        }

        if (request.OnStands)
        {
            return Force.Zero;
        }

        if (request.VehicleMass is not { } mass)
        {
            return request.HeldBy is { Count: 0 } ? Force.Zero : throw new InputException("held-by", "how well the tyre grips needs the load on the wheel, or the vehicle's mass.", LooseningFields.WheelLoad.Cure);
        }

        Force quarter = Force.FromNewtons(mass.Kilograms * HangingWeight.StandardGravity / 4);
        assumed.Add(new Assumption(AssumptionKind.WheelLoad, quarter));
        return quarter;
    }

    private static Length Radius(LooseningRequest request, List<Assumption> assumed)
    {
        if (request.TyreRadius is { } given)
        {
            return given;
        }

        Length usual = Length.FromMillimeters(UsualValues.TyreRadiusMm);
        if (request is not { OnStands: true, HeldBy: null or [] })
        {
            assumed.Add(new Assumption(AssumptionKind.TyreRadius, usual));
        }

        return usual;
    }

    private static Length Chock(LooseningRequest request, Length radius, List<Assumption> assumed)
    {
        if (!Has(request, Restraint.Chock))
        {
            return Length.Zero;
        }

        if (request.ChockHeight is { } height)
        {
            return height <= radius ? height : throw new InputException("chock", "a chock cannot be higher than the middle of the wheel.");
        }

        Length usual = UsualChock(radius);
        assumed.Add(new Assumption(AssumptionKind.Chock, usual, ValueStatus.Judgement));
        return usual;
    }

    /// <summary>Height of a chock nobody measured: a third of the wheel's radius (judgement).</summary>
    internal static Length UsualChock(Length radius) => radius / 3;

    private static HalfShafts Shafts(LooseningRequest request, List<Assumption> assumed)
    {
        if (request.HalfShafts is null && Has(request, Restraint.Gear))
        {
            assumed.Add(new Assumption(AssumptionKind.HalfShafts));
        }

        return request.HalfShafts ?? HalfShafts.Both;
    }

    private static Length StudBar(LooseningRequest request) =>
        !Has(request, Restraint.Bar)
            ? Length.Zero
            : request.StudBarDiameter
                ?? throw new InputException("held-by", "what a bar across the studs holds follows from its diameter.", LooseningFields.HoldBar.Cure);

    private static bool Has(LooseningRequest request, Restraint restraint) => request.HeldBy?.Contains(restraint) == true;
}
