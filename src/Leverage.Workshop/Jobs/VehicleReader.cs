using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads the vehicle of a job file.</summary>
internal static class VehicleReader
{
    internal static Vehicle? Read(TomlSection? section)
    {
        if (section is null)
        {
            return null;
        }

        var vehicle = new Vehicle
        {
            Name = section.Text("name"),
            Mass = section.Quantity(LooseningFields.VehicleMass),
            FrontWheelLoad = section.Quantity(LooseningFields.WheelLoad, "wheel_load_front"),
            RearWheelLoad = section.Quantity(LooseningFields.WheelLoad, "wheel_load_rear"),
            TyreRadius = section.Quantity(LooseningFields.TyreRadius),
            Ground = section.Named(LooseningFields.Ground),
            Driven = Driven(section),
            ParkingBrakeOn = section.Value<Axle?>("parking_brake_on", text => AxleOf(text)) ?? Axle.Rear,
        };
        section.Done();
        return vehicle;
    }

    /// <summary>The driven axles; "none" for a trailer.</summary>
    private static Axle[] Driven(TomlSection section)
    {
        Axle?[] axles = [.. section.Values("driven", DrivenAxle).Select(item => item.Value)];
        return axles.Length > 1 && axles.Contains(null)
            ? throw section.PlaceOf("driven").Error("driven", "none stands beside an axle. Write one or the other.")
            : [.. axles.OfType<Axle>().Distinct()];
    }

    private static Axle? DrivenAxle(string text) =>
        text.Trim().Equals("none", StringComparison.OrdinalIgnoreCase) ? null : AxleOf(text);

    private static Axle AxleOf(string text) => text.Trim().ToLowerInvariant() switch
    {
        "front" => Axle.Front,
        "rear" => Axle.Rear,
        _ => throw new InputException($"'{text}' is no end of a vehicle: write front or rear."),
    };
}
