using System.Collections.Concurrent;
using System.Reflection;
using Leverage.Reading;

namespace Leverage.Tables;

/// <summary>
/// The tables the program carries, by name. Nothing is read before it is asked for, and each table is read once.
/// </summary>
public sealed class TableCatalog
{
    private static readonly Assembly Core = typeof(TableCatalog).Assembly;
    private readonly ConcurrentDictionary<string, Table> _read = new(StringComparer.Ordinal);
    private readonly Lazy<string[]> _names;
    private readonly string _folder;

    private TableCatalog(string folder)
    {
        _folder = folder;
        _names = new Lazy<string[]>(ReadNames);
    }

    /// <summary>The tables of published values, from the folder <c>tables</c>.</summary>
    public static TableCatalog Tables { get; } = new("tables/");

    /// <summary>The published values the mechanics is checked against, from the folder <c>shared/checks</c>.</summary>
    public static TableCatalog Checks { get; } = new("checks/");

    /// <summary>Measured and stated loosening figures, from the folder <c>shared/measured</c>.</summary>
    public static TableCatalog Measured { get; } = new("measured/");

    /// <summary>Names of all tables, in alphabetical order.</summary>
    public IReadOnlyList<string> Names => _names.Value;

    /// <summary>The table of this name; read when first asked for.</summary>
    /// <param name="name">Name of the table, such as <c>friction</c>.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">There is no table of this name; the message gives the nearest.</exception>
    /// <exception cref="TableFormatException">The table holds something that cannot be read.</exception>
    public Table this[string name]
    {
        get
        {
            ArgumentNullException.ThrowIfNull(name);
            return _read.TryGetValue(name, out var table) ? table : _read.GetOrAdd(name, Read(name));
        }
    }

    /// <summary>
    /// Names of the tables a person may mean: the one of exactly this name, or else all whose names start with it.
    /// </summary>
    /// <param name="prefix">Beginning of a name, such as <c>threads</c>; case is ignored.</param>
    /// <returns>The names, in alphabetical order; none when nothing starts with it.</returns>
    public IReadOnlyList<string> Find(string prefix)
    {
        ArgumentNullException.ThrowIfNull(prefix);
        var found = new List<string>();
        foreach (var name in _names.Value)
        {
            if (name.Equals(prefix, StringComparison.OrdinalIgnoreCase))
            {
                return [name];
            }

            if (name.StartsWith(prefix, StringComparison.OrdinalIgnoreCase))
            {
                found.Add(name);
            }
        }

        return found;
    }

    /// <summary>Names of the tables whose spelling is nearest to a name that is none of them.</summary>
    /// <param name="name">The name that was not found.</param>
    /// <returns>At most three names, nearest first.</returns>
    public IReadOnlyList<string> Nearest(string name) => NearestNames.Of(name, _names.Value, 3);

    private Table Read(string name)
    {
        using var stream = Core.GetManifestResourceStream($"{_folder}{name}.csv") ?? throw new ArgumentException(Unknown(name), nameof(name));
        using var text = new StreamReader(stream);
        return TableReader.Read($"{_folder}{name}.csv", text);
    }

    private string Unknown(string name)
    {
        var nearest = Nearest(name);
        return nearest.Count > 0
            ? $"there is no table '{name}'; the nearest names are {string.Join(", ", nearest)}"
            : $"there is no table '{name}'; the tables are {string.Join(", ", _names.Value)}";
    }

    private string[] ReadNames()
    {
        var names = new List<string>();
        foreach (var resource in Core.GetManifestResourceNames())
        {
            if (resource.StartsWith(_folder, StringComparison.Ordinal))
            {
                names.Add(resource[_folder.Length..^".csv".Length]);
            }
        }

        names.Sort(StringComparer.Ordinal);
        return [.. names];
    }
}
