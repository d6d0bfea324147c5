using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Tests.Picking;

/// <summary>Nuts and chests the tests of picking share.</summary>
internal static class Nuts
{
    internal static ToolChest Shared { get; } = ToolChest.Read("pickup/chest.toml");

    internal static PickRequest Request(ToolChest chest, params string[] stances) => new()
    {
        Nut = new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(460),
            Thread = ThreadCatalog.Named("M24x1.5"),
            Condition = "rusted",
            AcrossFlats = Length.FromMillimeters(36),
        },
        Chest = chest,
        Stances = stances,
    };

    internal static PickRequest Held(this PickRequest request, params Restraint[] by) => request with
    {
        Nut = request.Nut with
        {
            HeldBy = by,
            VehicleMass = Mass.FromKilograms(1250),
            ChockHeight = Length.FromMillimeters(100),
        },
    };

    internal static ToolChest Chest(string text) => ChestReader.Read("c", TomlFile.Parse("c", text));

    internal static string Bar(string name, string drive, int lengthMm, double diameterMm) => FormattableString.Invariant(
        $"[[bars]]\nname = \"{name}\"\ndrive = \"{drive}\"\nlength = \"{lengthMm}mm\"\ndiameter = \"{diameterMm}mm\"\n");

    internal static string Socket(string name, string drive) =>
        $"[[sockets]]\nname = \"{name}\"\ndrive = \"{drive}\"\nsize = \"36mm\"\n";

    internal static string Adapter(string name, string from, string to, int lengthMm = 40) => FormattableString.Invariant(
        $"[[adapters]]\nname = \"{name}\"\nfrom = \"{from}\"\nto = \"{to}\"\nlength = \"{lengthMm}mm\"\n");

    internal static string Extension(string name, string drive, int lengthMm) => FormattableString.Invariant(
        $"[[extensions]]\nname = \"{name}\"\ndrive = \"{drive}\"\nlength = \"{lengthMm}mm\"\n");

    internal static string Tube(string name, double outsideMm, double wallMm, int lengthMm) => FormattableString.Invariant(
        $"[[tubes]]\nname = \"{name}\"\noutside = \"{outsideMm}mm\"\nwall = \"{wallMm}mm\"\nlength = \"{lengthMm}mm\"\n");
}
