using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Files;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>Reads somebody who pulls: column of the stance table, mass, and forces measured by stance.</summary>
internal static class PersonReading
{
    internal static ChestPerson Of(TomlSection s, string name)
    {
        Person column = s.NeedQuantity(LooseningFields.Person, "person");
        var forces = new Dictionary<string, Force>(StringComparer.Ordinal);
        if (s.Section("forces") is { } measured)
        {
            foreach (var (key, place) in measured.Keys)
            {
                forces[StanceKey(key, place)] = measured.NeedQuantity(LooseningFields.Force, key);
            }
        }

        return new ChestPerson(name, column, s.Quantity(LooseningFields.Body), forces);
    }

    private static string StanceKey(string key, FilePlace place)
    {
        try
        {
            return LooseningFields.Stance.Values.Read(key);
        }
        catch (InputException e)
        {
            throw place.Error("forces", e.Message);
        }
    }
}
