using Leverage.Reading;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads the vehicle of a job file.</summary>
internal static class VehicleReader
{
    private const double MostKg = 60_000;

    internal static Vehicle? Read(TomlSection? section)
    {
        if (section is null)
        {
            return null;
        }

        var vehicle = new Vehicle
        {
            Name = section.Text("name"),
            Mass = section.Mass("mass", MostKg),
            FrontWheelLoad = section.Force("wheel_load_front"),
            RearWheelLoad = section.Force("wheel_load_rear"),
            TyreRadius = section.Length("tyre_radius"),
            Ground = section.Row("ground", "ground", "a ground"),
            Driven = [.. section.Values("driven", AxleOf).Select(item => item.Value).Distinct()],
            ParkingBrakeOn = section.Value<Axle?>("parking_brake_on", text => AxleOf(text)) ?? Axle.Rear,
        };
        section.Done();
        return vehicle;
    }

    private static Axle AxleOf(string text) => text.Trim().ToLowerInvariant() switch
    {
        "front" => Axle.Front,
        "rear" => Axle.Rear,
        _ => throw new InputException($"'{text}' is no end of a vehicle: write front or rear."),
    };
}
