using Leverage.Levers;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Workshop.Files;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>Reads somebody who pulls: column of the stance table, mass, and forces measured by stance.</summary>
internal static class PersonReading
{
    private const double MostBodyKg = 250;

    internal static ChestPerson Of(TomlSection s, string name)
    {
        Person column = s.Choice<Person?>("person", ("man", Person.Man), ("woman", Person.Woman))
            ?? throw s.Missing("person", "man");
        var forces = new Dictionary<string, Force>(StringComparer.Ordinal);
        if (s.Section("forces") is { } measured)
        {
            foreach (var (key, place) in measured.Keys)
            {
                forces[StanceKey(key, place)] = measured.Force(key)!.Value;
            }
        }

        return new ChestPerson(name, column, s.Mass("mass", MostBodyKg), forces);
    }

    private static string StanceKey(string key, FilePlace place)
    {
        try
        {
            return RowLookup.Named("stances", key, "a stance").Key;
        }
        catch (InputException e)
        {
            throw place.Error("forces", e.Message);
        }
    }
}
