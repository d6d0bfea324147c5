using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Leverage.Reading;

namespace Leverage.Workshop.Files;

/// <summary>Things by their names: refuses a name given twice, and finds the nearest of one that is not there.</summary>
/// <typeparam name="T">What is named.</typeparam>
public sealed class NameIndex<T>
{
    private readonly Dictionary<string, (T Thing, FilePlace Place)> _things = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The names, in the order they were added.</summary>
    public IEnumerable<string> Names => _things.Keys;

    /// <summary>Adds a thing.</summary>
    /// <param name="name">Its name; case is ignored.</param>
    /// <param name="thing">The thing.</param>
    /// <param name="place">Where its name stands.</param>
    /// <exception cref="InputException">The name is there already.</exception>
    public void Add(string name, T thing, FilePlace place)
    {
        if (!_things.TryAdd(name, (thing, place)))
        {
            string line = _things[name].Place.Line.ToString(CultureInfo.InvariantCulture);
            throw place.Error("name", $"'{name}' is there already, on line {line}. Give each its own name.");
        }
    }

    /// <summary>Looks a name up.</summary>
    /// <param name="name">The name; case is ignored.</param>
    /// <param name="thing">What it names.</param>
    /// <returns>Whether it is there.</returns>
    public bool TryFind(string name, [MaybeNullWhen(false)] out T thing)
    {
        ArgumentNullException.ThrowIfNull(name);
        bool found = _things.TryGetValue(name.Trim(), out var entry);
        thing = entry.Thing;
        return found;
    }

    /// <summary>The thing of a name.</summary>
    /// <param name="name">The name; case is ignored.</param>
    /// <param name="what">What it should be, with its article: "a bar".</param>
    /// <returns>The thing.</returns>
    /// <exception cref="InputException">
    /// There is none; the message gives the nearest names. Say where with <see cref="InputException.About"/>.
    /// </exception>
    public T Find(string name, string what) => TryFind(name, out T? thing) ? thing : throw Unknown(name, what);

    private InputException Unknown(string name, string what)
    {
        IReadOnlyList<string> near = NearestNames.Of(name.Trim(), Names, 3);
        string cure = near.Count > 0 ? $"Nearest: {string.Join(", ", near)}."
            : _things.Count == 0 ? "There is none at all."
            : $"There are: {string.Join(", ", Names.Take(6))}.";
        return new InputException($"'{name}' is not {what} here. {cure}");
    }
}
