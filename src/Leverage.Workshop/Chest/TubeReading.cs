using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Workshop.Files;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>Reads a tube of a chest: a tube by outside and wall, or a jack's handle by its measured bore.</summary>
internal static class TubeReading
{
    internal static ChestTube Of(TomlSection s, string name)
    {
        Length length = PieceKeys.TubeLength.Need(s);
        TubeText tube = (PieceKeys.Outside.Of(s), PieceKeys.Wall.Of(s), s.Quantity(LooseningFields.Bore)) switch
        {
            ({ } outside, { } wall, var bore) => Tube(s, new TubeText(length, outside, wall, bore)),
            (null, null, { } bore) => new TubeText(length, Bore: bore),
            ({ } outside, null, { } bore) => Tube(s, new TubeText(length, outside, (outside - bore) / 2, bore)),
            (null, null, null) or (null, not null, null) => throw NoBore(s),
            (_, null, _) => throw s.Missing(PieceKeys.Wall.Name, PieceKeys.Wall.Values.Example),
            _ => throw s.Missing(PieceKeys.Outside.Name, PieceKeys.Outside.Values.Example),
        };
        return new ChestTube(name, tube, Yield(s));
    }

    private static TubeText Tube(TomlSection s, TubeText tube)
    {
        Length bore = tube.Outside!.Value - 2 * tube.Wall!.Value;
        return bore > Length.Zero && tube.Wall > Length.Zero && !(tube.Bore > tube.Outside)
            ? tube
            : throw s.Place.Error("tubes", "the wall leaves no bore: outside must be more than twice the wall, and wider than the bore.");
    }

    private static InputException NoBore(TomlSection s) => s.Place.Error(
        "tubes", "nothing says what bar it goes over. Give outside and wall, or a jack handle's measured bore. Write: bore = \"30mm\"");

    private static Pressure? Yield(TomlSection s)
    {
        Pressure? yield = s.Quantity(LooseningFields.TubeYield, "yield");
        Pressure? listed = s.Value<Pressure?>("material", Material);
        return yield is null || listed is null
            ? yield ?? listed
            : throw s.PlaceOf("yield").Error("yield", "material gives the yield already. Give one of the two.");
    }

    private static Pressure? Material(string name)
    {
        TableRow row = RowLookup.Named("tube-steels", name, "a tube steel");
        return row.OptionalNumber("yield_mpa") is { } yield
            ? Pressure.FromMegapascals(yield)
            : throw new InputException($"the table has no yield of '{row.Key}'. Give yield instead, such as yield = \"355MPa\".");
    }
}
