using Leverage.Reading;
using UnitsNet;

namespace Leverage.Workshop.Files;

/// <summary>Quantities and names out of a table, written as on the command line.</summary>
public static class SectionQuantities
{
    /// <summary>A text that must be there and not be blank.</summary>
    public static string NeedText(this TomlSection section, string key, string example) =>
        Value(section, key, NotBlank) ?? throw section.Missing(key, example);

    /// <summary>A text, or null.</summary>
    public static string? Text(this TomlSection section, string key) => Value(section, key, NotBlank);

    /// <summary>The name of a thing: one line, so that an answer can quote it.</summary>
    public static string Name(this TomlSection section, string example) =>
        Value(section, "name", OneLine) ?? throw section.Missing("name", example);

    /// <summary>A text on one line, or null.</summary>
    internal static string? OneLine(this TomlSection section, string key) => Value(section, key, OneLine);

    /// <summary>A length, such as <c>600mm</c>, or null.</summary>
    public static Length? Length(this TomlSection section, string key) =>
        Value<Length?>(section, key, text => QuantityReader.Length(text));

    /// <summary>A length that must be there.</summary>
    public static Length NeedLength(this TomlSection section, string key, string example) =>
        section.Length(key) ?? throw section.Missing(key, example);

    /// <summary>A torque, such as <c>85Nm</c>, or null.</summary>
    public static Torque? Torque(this TomlSection section, string key) =>
        Value<Torque?>(section, key, text => QuantityReader.Torque(text));

    /// <summary>A torque that must be there.</summary>
    public static Torque NeedTorque(this TomlSection section, string key, string example) =>
        section.Torque(key) ?? throw section.Missing(key, example);

    /// <summary>A force, such as <c>450N</c>, or null.</summary>
    public static Force? Force(this TomlSection section, string key) =>
        Value<Force?>(section, key, text => QuantityReader.Force(text));

    /// <summary>A mass, such as <c>82kg</c>, or null.</summary>
    public static Mass? Mass(this TomlSection section, string key, double mostKg) =>
        Value<Mass?>(section, key, text => QuantityReader.Mass(text, mostKg));

    /// <summary>A stress, such as <c>355MPa</c>, or null.</summary>
    public static Pressure? Stress(this TomlSection section, string key) =>
        Value<Pressure?>(section, key, text => QuantityReader.Stress(text));

    /// <summary>An angle, such as <c>0.5deg</c>, or null.</summary>
    public static Angle? Angle(this TomlSection section, string key, double mostDegrees) =>
        Value<Angle?>(section, key, text => QuantityReader.Angle(text, mostDegrees));

    /// <summary>A share, such as <c>4%</c>, or null.</summary>
    public static double? Share(this TomlSection section, string key) =>
        Value<double?>(section, key, text => QuantityReader.Share(text));

    /// <summary>A plain number, or null.</summary>
    public static double? Number(this TomlSection section, string key, double least, double most) =>
        Value<double?>(section, key, text => QuantityReader.Number(text, least, most));

    /// <summary>Yes or no: <c>true</c> or <c>false</c>; false when it is not there.</summary>
    public static bool Flag(this TomlSection section, string key) => Value(section, key, text => text switch
    {
        "true" => true,
        "false" => false,
        _ => throw new InputException($"'{text}' is neither true nor false."),
    });

    /// <summary>One of a few words, each standing for a value, or <typeparamref name="T"/>'s nothing.</summary>
    public static T? Choice<T>(this TomlSection section, string key, params (string Word, T Value)[] choices) =>
        Value(section, key, text =>
        {
            int found = Array.FindIndex(choices, choice => choice.Word.Equals(text, StringComparison.OrdinalIgnoreCase));
            return found >= 0
                ? choices[found].Value
                : throw new InputException($"'{text}' is not accepted here: write {Words(choices)}.");
        });

    private static T? Value<T>(TomlSection section, string key, Func<string, T> read)
    {
        ArgumentNullException.ThrowIfNull(section);
        return section.Value(key, read);
    }

    private static string Words<T>((string Word, T Value)[] choices) =>
        string.Join(" or ", choices.Select(choice => choice.Word));

    private static string NotBlank(string text) =>
        text.Trim().Length > 0 ? text.Trim() : throw new InputException("is blank.");

    private static string OneLine(string text) => text.AsSpan().IndexOfAny('\n', '\r', '\t') < 0
        ? NotBlank(text)
        : throw new InputException("a name stands on one line.");
}
