using Leverage.Reading;

namespace Leverage.Workshop.Files;

/// <summary>
/// One table of a TOML file. Whoever reads it asks for its keys by name; every key asked for is a known one, so
/// <see cref="Done"/> can refuse the rest and name the nearest known key.
/// </summary>
public sealed class TomlSection
{
    private readonly Dictionary<string, (FilePlace Key, TomlValue Value)> _values = new(StringComparer.Ordinal);
    private readonly List<string> _asked = [];
    private readonly HashSet<string> _spoilt = new(StringComparer.Ordinal);

    internal TomlSection(string name, FilePlace place) => (Name, Place) = (name, place);

    /// <summary>Where refusals are gathered, so that all can be told at once; null to throw the first.</summary>
    internal List<InputException>? Errors { get; set; }

    /// <summary>The key it stands under; empty for the whole file.</summary>
    public string Name { get; }

    /// <summary>Where it begins.</summary>
    public FilePlace Place { get; }

    /// <summary>Its keys in the order of the file, for tables whose keys are names of things.</summary>
    public IEnumerable<(string Key, FilePlace Place)> Keys => _values.Select(entry => (entry.Key, entry.Value.Key));

    /// <summary>Whether a key is there.</summary>
    /// <param name="key">Name of the key.</param>
    /// <returns>True if it is.</returns>
    public bool Has(string key) => Find(key) is not null || _spoilt.Contains(key);

    /// <summary>Gathers a refusal, or throws it where none are gathered.</summary>
    internal void Refuse(InputException error) => (Errors ?? throw error).Add(error);

    /// <summary>Gathers the refusal of a key whose value cannot be: it is there, and nothing can be read of it.</summary>
    internal void Spoil(string key, InputException error)
    {
        _spoilt.Add(key);
        Refuse(error);
    }

    /// <summary>The text of a key, read by one of our readers.</summary>
    /// <param name="key">Name of the key.</param>
    /// <param name="read">Reads the text; refuses with <see cref="InputException"/>.</param>
    /// <returns>What was read, or <typeparamref name="T"/>'s nothing when the key is not there.</returns>
    /// <exception cref="InputException">What stands there cannot be read; the error says where.</exception>
    public T? Value<T>(string key, Func<string, T> read) => Find(key) is { } value ? Gathered(key, () => ReadOne(key, value, read)) : default;

    /// <summary>The texts of a key that holds one text or a list of them, each read by one of our readers.</summary>
    /// <param name="key">Name of the key.</param>
    /// <param name="read">Reads one text.</param>
    /// <returns>What was read, each with its place; empty when the key is not there.</returns>
    /// <exception cref="InputException">One of them cannot be read; the error says where.</exception>
    public IReadOnlyList<(T Value, FilePlace Place)> Values<T>(string key, Func<string, T> read) => Find(key) switch
    {
        null => [],
        TomlList list => Gathered<IReadOnlyList<(T, FilePlace)>>(key, () => [.. list.Items.Select(item => (ReadOne(key, item, read), item.Place))]) ?? [],
        { } one => Gathered<IReadOnlyList<(T, FilePlace)>>(key, () => [(ReadOne(key, one, read), one.Place)]) ?? [],
    };

    /// <summary>The tables of a key: <c>[[bars]]</c>.</summary>
    /// <param name="key">Name of the key.</param>
    /// <returns>The tables in the order of the file; none when the key is not there.</returns>
    /// <exception cref="InputException">Something else stands there.</exception>
    public IReadOnlyList<TomlSection> Sections(string key) => Find(key) switch
    {
        null => [],
        TomlList list => [.. list.Items.Select(item => item is TomlTable table ? table.Section : throw NoTable(key, item))],
        TomlTable => throw _values[key].Key.Error(key, $"there may be several: write [[{key}]] with double brackets."),
        { } other => throw NoTable(key, other),
    };

    /// <summary>The one table of a key: <c>[vehicle]</c>, or <c>vehicle = { … }</c>.</summary>
    /// <param name="key">Name of the key.</param>
    /// <returns>The table, or null when the key is not there.</returns>
    /// <exception cref="InputException">Something else stands there.</exception>
    public TomlSection? Section(string key) => Find(key) switch
    {
        null => null,
        TomlTable table => table.Section,
        TomlList => throw _values[key].Key.Error(key, $"there is only one: write [{key}] with single brackets."),
        { } other => throw NoTable(key, other),
    };

    /// <summary>Where the value of a key stands; the table's own place when the key is not there.</summary>
    /// <param name="key">Name of the key.</param>
    /// <returns>The place.</returns>
    public FilePlace PlaceOf(string key) => Find(key)?.Place ?? Place;

    /// <summary>The refusal of a table that lacks a key: where one that is misspelt stands in its stead, the refusal of that.</summary>
    /// <param name="key">Name of the key.</param>
    /// <param name="example">A value as one might write it: <c>600mm</c>.</param>
    /// <returns>The error.</returns>
    public InputException Missing(string key, string example)
    {
        string? meant = _values.Keys.FirstOrDefault(there => !_asked.Contains(there) && NearestNames.Distance(there, key) <= (key.Length < 6 ? 1 : 2));
        if (meant is not null)
        {
            return _values[meant].Key.Error(meant, $"is no key known {Here}. Nearest: {key}. Write: {key} = \"{example}\"");
        }

        string message = $"{key} is missing. Write: {key} = \"{example}\"";
        return Name.Length > 0 ? Place.Error(Name, message) : Place.Error(message);
    }

    /// <summary>Refuses the keys nobody asked for; call it when everything of the table has been read.</summary>
    /// <exception cref="InputException">A key is not known here; the error names the nearest known one.</exception>
    public void Done()
    {
        foreach (var (key, (place, _)) in _values)
        {
            if (!_asked.Contains(key))
            {
                Refuse(Unknown(key, place));
            }
        }
    }

    internal bool TryAdd(string key, FilePlace place, TomlValue value) => _values.TryAdd(key, (place, value));

    internal TomlValue? Peek(string key) => _values.TryGetValue(key, out var entry) ? entry.Value : null;

    private TomlValue? Find(string key)
    {
        if (!_asked.Contains(key))
        {
            _asked.Add(key);
        }

        return Peek(key);
    }

    private string Here => Name.Length > 0 ? $"in {Name}" : "here";

    private InputException Unknown(string key, FilePlace place)
    {
        IReadOnlyList<string> near = NearestNames.Of(key, _asked, 1);
        string cure = near.Count > 0 ? $"Nearest: {near[0]}. " : "";
        return place.Error(key, $"is no key known {Here}. {cure}Known: {string.Join(", ", _asked)}.");
    }

    /// <summary>What was read, or nothing where it is refused and refusals are gathered.</summary>
    private T? Gathered<T>(string key, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e) when (Errors is not null)
        {
            Spoil(key, e);
            return default;
        }
    }

    private static T ReadOne<T>(string key, TomlValue value, Func<string, T> read)
    {
        if (value is not TomlText { Text: var text })
        {
            throw value.Place.Error(key, "a list or table stands where one value belongs.");
        }

        try
        {
            return read(PlainText.Checked(text));
        }
        catch (InputException e) when (!e.IsPlaced)
        {
            throw value.Place.Error(key, FilePlace.Told(e));
        }
    }

    private static InputException NoTable(string key, TomlValue value) =>
        value.Place.Error(key, $"a table belongs here: write its keys below a line [[{key}]] or [{key}].");
}
