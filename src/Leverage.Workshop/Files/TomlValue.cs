namespace Leverage.Workshop.Files;

/// <summary>A value of a TOML file and where it stands.</summary>
/// <param name="Place">Where it stands.</param>
public abstract record TomlValue(FilePlace Place);

/// <summary>A text, number or yes-or-no, as it was written.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Text">A quoted text without its quotes; anything else as it stands in the file.</param>
public sealed record TomlText(FilePlace Place, string Text) : TomlValue(Place);

/// <summary>A list, or the tables of one name.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Items">Its values in order.</param>
public sealed record TomlList(FilePlace Place, IReadOnlyList<TomlValue> Items) : TomlValue(Place);

/// <summary>A table as a value of another.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Section">Its keys.</param>
public sealed record TomlTable(FilePlace Place, TomlSection Section) : TomlValue(Place);
