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

    /// <summary>Tubes.</summary>
    public IReadOnlyList<ChestTube> Tubes { get; init; } = [];

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

    /// <summary>The chest of a text.</summary>
    /// <param name="path">What errors call the file.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The chest.</returns>
    /// <exception cref="InputException">It says something that cannot be; the error says where.</exception>
    public static ToolChest Parse(string path, string text) => ChestReader.Read(path, TomlFile.Parse(path, text));

    /// <summary>The bar of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestBar Bar(string name) => Need(Bars, name, "a bar");

    /// <summary>The tube of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestTube Tube(string name) => Need(Tubes, name, "a tube");

    /// <summary>The person of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestPerson Person(string name) => Need(People, name, "a person");

    /// <summary>The hold of a name.</summary>
    /// <exception cref="InputException">There is none; the message gives the nearest names.</exception>
    public ChestHold Hold(string name) => Need(Holds, name, "something that holds");

    private T Need<T>(IReadOnlyList<T> shelf, string name, string what)
        where T : class, IPiece => shelf.Named(name) ?? throw Unknown(shelf, name, what);

    private InputException Unknown<T>(IReadOnlyList<T> shelf, string name, string what)
        where T : class, IPiece
    {
        IReadOnlyList<string> near = NearestNames.Of(name.Trim(), shelf.Select(piece => piece.Name), 3);
        string cure = near.Count > 0 ? $"Nearest: {string.Join(", ", near)}."
            : shelf.Count == 0 ? "It has none."
            : $"It has: {string.Join(", ", shelf.Select(piece => piece.Name).Take(6))}.";
        return new InputException($"'{name}' is not {what} of the chest {Path}. {cure}");
    }
}

/// <summary>Finds a piece among others of its kind.</summary>
public static class Shelf
{
    /// <summary>The piece of a name, or null.</summary>
    /// <param name="shelf">The pieces.</param>
    /// <param name="name">The name; case is ignored.</param>
    /// <returns>The piece, or null where there is none.</returns>
    public static T? Named<T>(this IReadOnlyList<T> shelf, string name)
        where T : class, IPiece
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(name);
        return shelf.FirstOrDefault(piece => piece.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
    }
}
