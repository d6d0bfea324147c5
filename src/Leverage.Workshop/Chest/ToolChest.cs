using Leverage.Reading;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Chest;

/// <summary>Everything a person has, every piece under a name of its own.</summary>
public sealed record ToolChest
{
    /// <summary>The file it was read from; errors name it.</summary>
    public required string Path { get; init; }

    /// <summary>Bars, in the order of the file.</summary>
    public IReadOnlyList<ChestBar> Bars { get; init; } = [];

    /// <summary>Sockets, keys and spanners.</summary>
    public IReadOnlyList<NutTool> NutTools { get; init; } = [];

    /// <summary>Adapters and extensions.</summary>
    public IReadOnlyList<ChestAdapter> Adapters { get; init; } = [];

    /// <summary>Sleeves.</summary>
    public IReadOnlyList<ChestSleeve> Sleeves { get; init; } = [];

    /// <summary>Torque wrenches.</summary>
    public IReadOnlyList<TorqueWrench> TorqueWrenches { get; init; } = [];

    /// <summary>The people who pull.</summary>
    public IReadOnlyList<ChestPerson> People { get; init; } = [];

    /// <summary>What can hold the vehicle.</summary>
    public IReadOnlyList<ChestHold> Holds { get; init; } = [];

    /// <summary>The chest of a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The chest.</returns>
    /// <exception cref="InputException">The file cannot be read or says something that cannot be; the error says where.</exception>
    public static ToolChest Read(string path) => ChestReader.Read(path, TomlFile.Read(path));

    /// <summary>The bar of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestBar Bar(string name) => Find(Bars, bar => bar.Name, name, "a bar");

    /// <summary>The sleeve of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestSleeve Sleeve(string name) => Find(Sleeves, sleeve => sleeve.Name, name, "a sleeve");

    /// <summary>The person of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestPerson Person(string name) => Find(People, person => person.Name, name, "a person");

    /// <summary>The hold of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestHold Hold(string name) => Find(Holds, hold => hold.Name, name, "a thing that holds");

    private T Find<T>(IReadOnlyList<T> things, Func<T, string> nameOf, string name, string what)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(name);
        string wanted = name.Trim();
        foreach (T thing in things)
        {
            if (nameOf(thing).Equals(wanted, StringComparison.OrdinalIgnoreCase))
            {
                return thing;
            }
        }

        IReadOnlyList<string> near = NearestNames.Of(wanted, things.Select(nameOf), 3);
        string cure = near.Count > 0 ? $"Nearest: {string.Join(", ", near)}."
            : things.Count == 0 ? "It has none."
            : $"It has: {string.Join(", ", things.Select(nameOf).Take(6))}.";
        throw new InputException($"'{name}' is not {what} of the chest {Path}. {cure}");
    }
}
