using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Workshop.Files;

/// <summary>Values of fields, and texts, out of a table: read, ranged and refused as at every other door.</summary>
internal static class SectionFields
{
    /// <summary>The value of a field, or null; its key is the field's own unless another is given.</summary>
    internal static T? Quantity<TRequest, T>(this TomlSection section, Field<TRequest, T> field, string? key = null)
        where T : struct => section.Quantity(key ?? field.Key, field.Values);

    /// <summary>A value of a kind, or null.</summary>
    internal static T? Quantity<T>(this TomlSection section, string key, FieldKind<T> kind)
        where T : struct => section.Value<T?>(key, text => kind.Read(text));

    /// <summary>A value that must be there.</summary>
    internal static T NeedQuantity<TRequest, T>(this TomlSection section, Field<TRequest, T> field, string key)
        where T : struct => section.Quantity(field, key) ?? throw section.Missing(key, field.Kind.Example);

    /// <summary>A value of a kind that must be there.</summary>
    internal static T NeedQuantity<T>(this TomlSection section, string key, FieldKind<T> kind)
        where T : struct => section.Quantity(key, kind) ?? throw section.Missing(key, kind.Example);

    /// <summary>The name that a field takes, or null.</summary>
    internal static T? Named<TRequest, T>(this TomlSection section, Field<TRequest, T> field, string? key = null)
        where T : class => section.Value(key ?? field.Key, field.Values.Read);

    /// <summary>The key of a field within the table of a piece: <c>bar-diameter</c> of a bar is <c>diameter</c>, <c>bar</c> itself its <c>length</c>.</summary>
    internal static string KeyOf(string piece, Field field) => field.Name == piece ? "length"
        : field.Name.StartsWith($"{piece}-", StringComparison.Ordinal) ? field.Key[(piece.Length + 1)..]
        : field.Key;

    /// <summary>Whether a field that is there or not is there.</summary>
    internal static bool Flag<TRequest>(this TomlSection section, Field<TRequest, bool> field) => section.Quantity(field) ?? false;

    /// <summary>Whether a key says yes.</summary>
    internal static bool Flag(this TomlSection section, string key) => section.Quantity(key, Kinds.Flag) ?? false;

    /// <summary>A text, or null.</summary>
    internal static string? Text(this TomlSection section, string key) => section.Value(key, NotBlank);

    /// <summary>The name of a thing: one line, so that an answer can quote it.</summary>
    internal static string Name(this TomlSection section, string example) =>
        section.Value("name", OneLine) ?? throw section.Missing("name", example);

    /// <summary>A text on one line, or null.</summary>
    internal static string? OneLine(this TomlSection section, string key) => section.Value(key, OneLine);

    private static string NotBlank(string text) =>
        text.Trim().Length > 0 ? text.Trim() : throw new InputException("is blank.");

    private static string OneLine(string text) => text.AsSpan().IndexOfAny('\n', '\r', '\t') < 0
        ? NotBlank(text)
        : throw new InputException("a name stands on one line.");
}
